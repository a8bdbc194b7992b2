// Every reader of files over what cameras and the program wrote, changed by chance: photographs
// and what is written in them, a workshop's database. A file is read, or refused with a reason;
// never a crash, never a hang. A few seconds for each; with --minutes N, N minutes in all.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <functional>

#include <QBuffer>
#include <QGuiApplication>
#include <QImage>
#include <exiv2/exiv2.hpp>

#include "app/photo/exif.h"
#include "app/print/photo_reader.h"
#include "core/record/job_file.h"
#include "db/workshop.h"
#include "tests/db/workshop_fixture.h"
#include "tests/fuzz/mutator.h"

namespace headcap::fuzz {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr std::chrono::seconds kHang{60};
constexpr std::int64_t kLargestRead = 60;

const core::Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

void write(const fs::path& path, const std::string& bytes) {
    std::ofstream{path, std::ios::binary | std::ios::trunc} << bytes;
}

std::string read(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

class Photographs {
public:
    explicit Photographs(const fs::path& folder) : m_file(folder / "a.jpg") {
        QImage image(120, 90, QImage::Format_RGB32);
        image.fill(QColor(90, 60, 30));
        for (const char* kind : {"JPEG", "PNG"}) {
            QByteArray bytes;
            QBuffer buffer(&bytes);
            buffer.open(QIODevice::WriteOnly);
            image.save(&buffer, kind);
            write(m_file, bytes.toStdString());
            const auto opened = Exiv2::ImageFactory::open(m_file.string());
            Exiv2::ExifData data;
            data["Exif.Photo.DateTimeOriginal"] = std::string{"2031:03:05 10:00:00"};
            data["Exif.Photo.OffsetTimeOriginal"] = std::string{"-03:30"};
            data["Exif.Image.Orientation"] = std::uint16_t{6};
            opened->setExifData(data);
            opened->writeMetadata();
            m_seeds.push_back(read(m_file));
        }
    }
    void tryOne(Mutator& mutator) {
        m_turn = !m_turn;
        const std::string& seed = m_seeds[m_turn ? 0 : 1];
        write(m_file, m_turn ? mutator.written(seed) : mutator.next(m_seeds, 2 * seed.size()));
        const QString path = QString::fromStdString(m_file.string());
        (void)app::photo::captureTime(path);
        (void)app::print::inspectPhoto(path);
        (void)app::print::readPhoto(path, {kLargestRead, kLargestRead});
    }

private:
    fs::path m_file;
    std::vector<std::string> m_seeds;
    bool m_turn = false;
};

// A workshop of a few records of which some were changed and undone.
void makeWorkshop(const fs::path& folder, const core::Clock& clock) {
    core::IdSource ids(clock, 1612);
    db::SqliteWorkshops workshops(clock, {.makesBackups = false});
    const auto open = workshops.create(folder);
    auto& records = open->stores().records;
    const core::Owner owner{.id = ids.next<core::Owner>(), .name = "Kell Chapel"};
    const core::Person person{.id = ids.next<core::Person>(), .name = "Una Thole"};
    const core::Item item{
        .id = ids.next<core::Item>(), .owner = owner.id, .title = "A Hymnal for the Use of Kell"};
    const core::Job job{.id = ids.next<core::Job>(),
                        .number = "2031-001",
                        .item = item.id,
                        .owner = owner.id,
                        .receivedOn = clock.today()};
    (void)records.apply(
        core::Change{.sentence = "Received"}.add(owner).add(person).add(item).add(job));
    for (int i = 0; i < 30; ++i) {
        const core::Step step{.id = ids.next<core::Step>(),
                              .job = job.id,
                              .at = clock.now(),
                              .who = person.id,
                              .description = "guarded on the fold " + std::to_string(i)};
        const core::Finding finding{
            .id = ids.next<core::Finding>(), .job = job.id, .observed = "joint split"};
        (void)records.apply(
            core::Change{.sentence = "Step", .who = person.id}.add(step).add(finding));
        if (i % 5 == 0) {
            (void)open->stores().journal.undo(person.id);
        }
    }
}

class Databases {
public:
    Databases(const fs::path& folder, const core::Clock& clock)
        : m_clock(clock), m_whole(folder / "whole"), m_tried(folder / "tried") {
        makeWorkshop(m_whole, clock);
        m_bytes = read(m_whole / "workshop.sqlite");
        fs::create_directories(m_tried);
    }
    void tryOne(Mutator& mutator) {
        for (const auto& entry : fs::directory_iterator(m_tried)) {
            fs::remove_all(entry.path());
        }
        write(m_tried / "workshop.sqlite", mutator.written(m_bytes));
        db::SqliteWorkshops workshops(m_clock, {.makesBackups = false});
        try {
            const auto open = workshops.open(m_tried);
            readAll(open->stores());
        } catch (const core::StoreError&) {
            // Refused, with its reason.
        }
    }

private:
    // Each reading by itself: what one refuses does not keep the next from being tried.
    static void readAll(core::Stores stores) {
        const auto tryRead = [](const std::function<void()>& work) {
            try {
                work();
            } catch (const core::StoreError&) {
            }
        };
        tryRead([&] { (void)stores.upkeep.verify(kGoOn); });
        for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
            tryRead([&] { (void)stores.records.all(static_cast<core::RecordKind>(i)); });
        }
        tryRead([&] {
            for (const core::JobLine& line : stores.jobs.inTheHouse()) {
                (void)core::loadJobFile(stores.records, line.id);
            }
        });
        tryRead([&] { (void)stores.search.find("guarded fold", 20); });
        tryRead([&] { (void)stores.journal.latest(50); });
        tryRead([&] { (void)stores.journal.undo(std::nullopt); });
    }

    const core::Clock& m_clock;
    fs::path m_whole;
    fs::path m_tried;
    std::string m_bytes;
};

template <class Reader>
void run(const char* name, Reader reader, std::chrono::milliseconds span, std::uint64_t seed) {
    Mutator mutator(seed);
    long long tried = 0;
    for (const auto end = Clock::now() + span; Clock::now() < end; ++tried) {
        const auto begun = Clock::now();
        reader.tryOne(mutator);
        if (Clock::now() - begun > kHang) {
            std::fprintf(stderr, "%s: too slow at trial %lld of seed %llu\n", name, tried,
                         static_cast<unsigned long long>(seed));
            std::abort();
        }
    }
    std::printf("%-14s %lld tried\n", name, tried);
    std::fflush(stdout);
}

} // namespace
} // namespace headcap::fuzz

int main(int argc, char** argv) {
    using namespace headcap;
    const QGuiApplication application(argc, argv);
    double minutes = 0;
    std::uint64_t seed = 1612;
    for (int i = 1; i + 1 < argc; ++i) {
        if (std::strcmp(argv[i], "--minutes") == 0) {
            minutes = std::strtod(argv[i + 1], nullptr);
            seed = std::random_device{}();
        }
    }
    const auto each = minutes > 0
                          ? std::chrono::milliseconds{static_cast<long long>(minutes * 30'000)}
                          : std::chrono::milliseconds{1'500};
    std::printf("seed %llu\n", static_cast<unsigned long long>(seed));
    const core::SystemClock clock;
    const test::TempFolder temp;
    fuzz::run("photographs", fuzz::Photographs(temp.path()), each, seed);
    fuzz::run("databases", fuzz::Databases(temp.path(), clock), each, seed);
    return 0;
}
