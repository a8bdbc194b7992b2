// A workshop is damaged in every way a disk and its people know: cut short, pages overwritten,
// bytes flipped, the WAL thrown away. What is salvaged is sound, has all that the backup had, and
// where it says that everything was saved, everything was.
#include "db/workshop.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"

namespace headcap::test {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kPage = 4096;
constexpr const char* kDatabase = "workshop.sqlite";

struct Scene {
    FaultProgram& program;
    db::SqliteWorkshops& workshops;
    fs::path folder;
    fs::path saved;
    std::map<std::string, std::string> truth;
    std::string whole; // the database, its WAL written back
    std::string early; // as it was before the last day's work
    std::vector<core::RecordRef> backedUp;
    std::mt19937_64 chance{1666};
    int wholly = 0;
    int partly = 0;

    std::size_t upTo(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>{0, n - 1}(chance);
    }
};

std::string cutShort(Scene& scene) {
    return scene.whole.substr(0, scene.upTo(scene.whole.size()));
}

std::string pagesOverwritten(Scene& scene) {
    std::string bytes = scene.whole;
    for (std::size_t n = 1 + scene.upTo(4); n > 0; --n) {
        const std::size_t page = scene.upTo(bytes.size() / kPage);
        for (std::size_t i = 0; i < kPage; ++i) {
            bytes[page * kPage + i] = static_cast<char>(scene.chance());
        }
    }
    return bytes;
}

std::string bytesFlipped(Scene& scene) {
    std::string bytes = scene.whole;
    for (std::size_t n = 1 + scene.upTo(20); n > 0; --n) {
        bytes[scene.upTo(bytes.size())] ^= 0x10;
    }
    return bytes;
}

std::string walLost(Scene& scene) {
    return scene.early;
}

void trySalvage(Scene& scene, const std::string& damaged, const std::string& how) {
    for (const char* suffix : {"-wal", "-shm"}) {
        fs::remove((scene.folder / kDatabase).string() + suffix);
    }
    writeBytes(scene.folder / kDatabase, damaged);
    fs::remove_all(scene.saved);
    const auto report = scene.workshops.salvage(scene.folder, scene.saved, {}, kGoOn);
    std::string found;
    for (const auto& finding : report.check.findings) {
        // Where entries are lost the ledger can't balance, and says so.
        if (report.isWhole() || finding.what != "ledger") {
            found += "  " + finding.sentence + "\n";
        }
    }
    if (!found.empty()) {
        scene.program.lost("soundness of what was salvaged, " + how + ":\n" + found);
    }
    const auto open = scene.workshops.open(scene.saved);
    for (const core::RecordRef& ref : scene.backedUp) {
        if (!open->stores().records.find(ref)) {
            scene.program.lost("a record that was in the backup, " + how);
        }
    }
    ++(report.isWhole() ? scene.wholly : scene.partly);
    if (report.isWhole() && recordTables(scene.saved) != scene.truth) {
        scene.program.lost("the truth: it says that everything was saved, " + how);
    }
}

std::vector<core::RecordRef> recordsOf(core::Stores stores) {
    std::vector<core::RecordRef> refs;
    for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
        for (const auto& found : stores.records.all(static_cast<core::RecordKind>(i))) {
            refs.push_back(core::refOf(found.record));
        }
    }
    return refs;
}

void workADay(Scene& scene, const core::Clock& clock, std::uint64_t seed, int pieces) {
    core::IdSource ids(clock);
    const auto open = scene.workshops.open(scene.folder);
    DayOfWork work(open->stores(), ids, clock, *benchOf(open->stores()), seed);
    for (int i = 0; i < pieces; ++i) {
        (void)work.next();
    }
}

void setUp(Scene& scene, const core::Clock& clock) {
    core::IdSource ids(clock);
    (void)setUpBench(scene.workshops.create(scene.folder)->stores(), ids, clock);
    workADay(scene, clock, 1, 40);
    {
        const auto open = db::SqliteWorkshops(clock, {}).open(scene.folder);
        scene.backedUp = recordsOf(open->stores());
    }
    workADay(scene, clock, 2, 40);
    scene.early = bytesOf(scene.folder / kDatabase);
    workADay(scene, clock, 3, 20);
    scene.whole = bytesOf(scene.folder / kDatabase);
    scene.truth = recordTables(scene.folder);
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 15, 400);
    const headcap::core::SystemClock clock;
    const TempFolder temp;
    headcap::db::SqliteWorkshops workshops(clock, {.makesBackups = false});
    Scene scene{program, workshops, temp.path() / "workshop", temp.path() / "saved", {}, {},
                {},      {}};
    setUp(scene, clock);
    program.control("an empty database without a backup", [&] {
        fs::rename(scene.folder / "backups", temp.path() / "away");
        try {
            trySalvage(scene, std::string(kPage, '\0'), "");
        } catch (const headcap::core::StoreError&) {
            program.lost("everything");
        }
        fs::rename(temp.path() / "away", scene.folder / "backups");
    });
    using Damage = std::string (*)(Scene&);
    const std::pair<const char*, Damage> kDamages[] = {{"cut short", cutShort},
                                                       {"pages overwritten", pagesOverwritten},
                                                       {"bytes flipped", bytesFlipped},
                                                       {"the WAL lost", walLost}};
    for (int i = 0; program.goesOn(i); ++i) {
        for (const auto& [how, damage] : kDamages) {
            try {
                trySalvage(scene, damage(scene), how);
            } catch (const std::exception& error) {
                program.lost(std::string{"everything, "} + how + ": " + error.what());
            }
        }
    }
    return program.close("damaged in four ways, " + program.tried() + " times each, " +
                         std::to_string(scene.wholly) + " saved whole, " +
                         std::to_string(scene.partly) + " in part, as they said");
}
