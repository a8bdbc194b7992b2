// Photographs, attachments and issued reports are removed, altered, cut short and exchanged on the
// disk: verify names each record that shows such a file, with its job, and no other. What a folder
// holds of them under any name is put back by its digest, what is damaged there too is not, and
// from a whole backup everything is as it was.
#include <map>
#include <set>

#include "core/record/safe_keeping.h"
#include "db/workshop.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"

namespace headcap::test {
namespace {

namespace fs = std::filesystem;
using Shelf = core::FileStore::Shelf;

constexpr int kJobs = 6;
constexpr int kFiles = 60;

// A file on its shelf, and the records that show it, each with the number of its job.
struct Kept {
    fs::path path;
    std::string bytes;
    std::map<core::Uuid, std::string> shownIn{};
};

struct Scene {
    FaultProgram& program;
    fs::path root;
    core::Stores stores;
    std::vector<Kept> files{};
    std::map<std::string, std::string> whole{};
    std::mt19937_64 chance{1710};
    int missing = 0;
    int altered = 0;
    int putBack = 0;

    [[nodiscard]] fs::path folder() const { return root / "workshop"; }
    std::size_t upTo(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>{0, n - 1}(chance);
    }
};

std::vector<core::Job> setUpJobs(core::Stores stores, core::IdSource& ids,
                                 const core::Clock& clock) {
    const Bench bench = setUpBench(stores, ids, clock);
    std::vector<core::Job> jobs{find(stores.records, bench.job)->record};
    core::Change change{.sentence = "Jobs received"};
    for (int i = 1; i < kJobs; ++i) {
        core::Job job = jobs[0];
        job.id = ids.next<core::Job>();
        job.number = "2031-00" + std::to_string(i + 1);
        change.add(job);
        jobs.push_back(job);
    }
    mustApply(stores.records, change);
    return jobs;
}

std::string nameOf(Shelf shelf) {
    return shelf == Shelf::attachment ? "letter.jpg"
           : shelf == Shelf::report   ? "report.jpg"
                                      : "IMG.jpg";
}

// A record of this kind that shows the file.
template <class Record>
void show(const core::Job& job, Shelf shelf, const core::Digest& digest, Kept& kept,
          core::Change& change, Record record) {
    record.job = job.id;
    record.digest = digest;
    record.fileName = nameOf(shelf);
    record.bytes = static_cast<std::int64_t>(kept.bytes.size());
    change.add(record);
    kept.shownIn[record.id.uuid()] = job.number;
}

// Photographs for the most part, half of them shown twice, letters and reports.
void setUpFiles(Scene& scene, core::IdSource& ids, const core::Clock& clock,
                const std::vector<core::Job>& jobs) {
    for (int i = 0; i < kFiles; ++i) {
        const Shelf shelf = i % 6 == 4   ? Shelf::attachment
                            : i % 6 == 5 ? Shelf::report
                                         : Shelf::photograph;
        const std::string bytes =
            std::string(40 + scene.upTo(3'000), static_cast<char>('a' + i % 26)) +
            ids.nextUuid().text();
        const auto digest = scene.stores.files.put(shelf, std::as_bytes(std::span{bytes}), ".jpg");
        Kept kept{scene.stores.files.pathOf(shelf, digest), bytes};
        core::Change change{.sentence = "Kept"};
        const core::Job& job = jobs[scene.upTo(jobs.size())];
        if (shelf == Shelf::attachment) {
            show(job, shelf, digest, kept, change,
                 core::Attachment{
                     .id = ids.next<core::Attachment>(), .job = job.id, .subject = refOf(job.id)});
        } else if (shelf == Shelf::report) {
            show(job, shelf, digest, kept, change,
                 core::IssuedReport{.id = ids.next<core::IssuedReport>(),
                                    .job = job.id,
                                    .version = i,
                                    .issuedAt = clock.now()});
        } else {
            for (std::size_t n = 1 + scene.upTo(2); n > 0; --n) {
                show(jobs[scene.upTo(jobs.size())], shelf, digest, kept, change,
                     core::Photograph{.id = ids.next<core::Photograph>(),
                                      .job = job.id,
                                      .addedAt = clock.now()});
            }
        }
        mustApply(scene.stores.records, change);
        scene.files.push_back(std::move(kept));
    }
}

// True: it is missing; false: it is there and altered.
bool harm(Scene& scene, const Kept& kept) {
    std::string bytes = kept.bytes;
    switch (scene.upTo(5)) {
    case 0:
        fs::remove(kept.path);
        return true;
    case 1:
        bytes.resize(scene.upTo(bytes.size()));
        break;
    case 2:
        bytes[scene.upTo(bytes.size())] ^= 1;
        break;
    case 3:
        bytes += '\0';
        break;
    default: // another picture in its place
        bytes = scene
                    .files[(static_cast<std::size_t>(&kept - scene.files.data()) + 1) %
                           scene.files.size()]
                    .bytes;
    }
    writeBytes(kept.path, bytes);
    return false;
}

// That just these files are told of: each record that shows one, with its job and what is wrong.
void expectTold(Scene& scene, const std::vector<core::VerifyFinding>& findings,
                const std::map<const Kept*, bool>& harmed, const std::string& when) {
    std::map<core::Uuid, std::string> told;
    for (const auto& finding : findings) {
        if (!finding.record) {
            scene.program.lost("sense, " + when + ": " + finding.sentence);
            continue;
        }
        told[finding.record->id] = finding.sentence;
    }
    std::size_t expected = 0;
    for (const auto& [kept, isMissing] : harmed) {
        for (const auto& [id, job] : kept->shownIn) {
            ++expected;
            const std::string words =
                "of job " + job + (isMissing ? " is missing." : " is not what was kept.");
            if (!told.contains(id) || told[id].find(words) == std::string::npos) {
                scene.program.lost("word of a record " + words + ", " + when + ": " +
                                   (told.contains(id) ? told[id] : "nothing"));
            }
        }
    }
    if (told.size() != expected || findings.size() != expected) {
        scene.program.lost("count, " + when + ": " + std::to_string(findings.size()) + " for " +
                           std::to_string(expected));
    }
}

// A memory card on which some of the harmed files lie under the camera's names, some of them
// damaged, between others that are as long. Those that can be had from it.
std::set<const Kept*> makeCard(Scene& scene, const std::map<const Kept*, bool>& harmed) {
    const fs::path card = scene.root / "card";
    fs::remove_all(card);
    fs::create_directories(card / "DCIM" / "100");
    std::set<const Kept*> good;
    int number = 0;
    for (const auto& [kept, isMissing] : harmed) {
        const fs::path place = card / (number % 2 == 0 ? "DCIM/100" : "");
        std::string decoy = kept->bytes;
        decoy[scene.upTo(decoy.size())] ^= 2;
        writeBytes(place / ("DSC" + std::to_string(number++) + ".JPG"), decoy);
        if (scene.upTo(3) != 0) {
            writeBytes(place / ("DSC" + std::to_string(number++)), kept->bytes);
            good.insert(kept);
        }
    }
    return good;
}

void harmAndMend(Scene& scene) {
    std::map<const Kept*, bool> harmed;
    for (std::size_t n = 1 + scene.upTo(12); n > 0; --n) {
        const Kept& kept = scene.files[scene.upTo(scene.files.size())];
        if (!harmed.contains(&kept)) {
            harmed[&kept] = harm(scene, kept);
            ++(harmed[&kept] ? scene.missing : scene.altered);
        }
    }
    expectTold(scene, scene.stores.upkeep.verify(kGoOn).findings, harmed, "on looking");
    core::SafeKeeping& keeping = *safeKeepingOf(scene.stores.upkeep);
    const auto good = makeCard(scene, harmed);
    const auto fromCard = keeping.mendFiles(scene.root / "card", kGoOn);
    std::map<const Kept*, bool> mended;
    for (const Kept* kept : good) {
        mended.insert(harmed.extract(kept));
    }
    expectTold(scene, fromCard.mended, mended, "put back from a card");
    expectTold(scene, fromCard.left, harmed, "not on the card");
    expectTold(scene, scene.stores.upkeep.verify(kGoOn).findings, harmed, "after the card");
    const auto fromBackup = keeping.mendFiles(scene.root / "backup", kGoOn);
    expectTold(scene, fromBackup.mended, harmed, "put back from the backup");
    scene.putBack += static_cast<int>(mended.size() + harmed.size());
    for (const char* shelf : {"photos", "attachments", "reports"}) {
        for (const auto& [name, bytes] : everythingIn(scene.folder() / shelf)) {
            const auto was = scene.whole.find((fs::path(shelf) / name).string());
            if (was == scene.whole.end() || was->second != bytes) {
                scene.program.lost("the file " + name);
            }
        }
    }
    if (const std::string found = findings(scene.stores); !found.empty()) {
        scene.program.lost("soundness in the end:\n" + found);
    }
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 15, 500);
    const headcap::core::SystemClock clock;
    const TempFolder temp;
    headcap::core::IdSource ids(clock);
    headcap::db::SqliteWorkshops workshops(clock, {.makesBackups = false});
    const auto open = workshops.create(temp.path() / "workshop");
    Scene scene{program, temp.path(), open->stores()};
    setUpFiles(scene, ids, clock, setUpJobs(scene.stores, ids, clock));
    scene.whole = everythingIn(scene.folder());
    (void)scene.stores.upkeep.backup(temp.path() / "backup", kGoOn);
    program.control("a harmed file of which nobody was told", [&] {
        const Kept& kept = scene.files[0];
        fs::remove(kept.path);
        expectTold(scene, scene.stores.upkeep.verify(kGoOn).findings, {}, "unasked");
        writeBytes(kept.path, kept.bytes);
    });
    for (int i = 0; program.goesOn(i); ++i) {
        harmAndMend(scene);
    }
    return program.close("files harmed " + program.tried() + " times, " +
                         std::to_string(scene.missing) + " missing, " +
                         std::to_string(scene.altered) + " altered, " +
                         std::to_string(scene.putBack) + " put back");
}
