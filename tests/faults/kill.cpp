// A process that works in a workshop is killed at random moments: all it reported as saved is
// there, and the workshop is sound. Also while it backs up, restores, salvages and changes the
// schema: there is a whole workshop afterwards, or the one that was. One workshop is killed a
// hundred times over, and all that was ever reported in it is looked for at its end; then a new one
// is begun, for a check of the whole costs as much as the whole is large.
#include <chrono>
#include <cstdio>
#include <map>
#include <thread>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

#include "db/sqlite/open_workshop.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"

namespace headcap::test {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kUuidLength = 36;
constexpr int kKillsOfOneWorkshop = 100;

struct Scene {
    fs::path folder;
    fs::path backup;
    const core::Clock& clock;
    std::mt19937_64& chance;
    std::vector<core::RecordRef> acknowledged{};

    [[nodiscard]] db::SqliteWorkshops workshops() const {
        return db::SqliteWorkshops(clock, {.makesBackups = false});
    }
};

// Runs `work` in a process of its own and kills it after a while; what it wrote to the pipe.
std::string killed(const std::function<void(int pipe)>& work, std::chrono::microseconds after) {
    int ends[2];
    if (::pipe(ends) != 0) {
        throw std::runtime_error("no pipe");
    }
    const ::pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        try {
            work(ends[1]);
        } catch (const std::exception& error) {
            std::fprintf(stderr, "the worker failed: %s\n", error.what());
        }
        ::_exit(0);
    }
    ::close(ends[1]);
    std::thread reaper([&] {
        std::this_thread::sleep_for(after);
        ::kill(child, SIGKILL);
    });
    std::string said;
    char piece[4096];
    for (::ssize_t count = 0; (count = ::read(ends[0], piece, sizeof piece)) > 0;) {
        said.append(piece, static_cast<std::size_t>(count));
    }
    ::close(ends[0]);
    reaper.join();
    ::waitpid(child, nullptr, 0);
    return said;
}

std::chrono::microseconds some(Scene& scene, int mostMilliseconds) {
    return std::chrono::microseconds{
        std::uniform_int_distribution{2'000, mostMilliseconds * 1'000}(scene.chance)};
}

void workAndReport(const Scene& scene, std::uint64_t seed, int pipe) {
    auto workshops = scene.workshops();
    const auto open = workshops.open(scene.folder);
    core::IdSource ids(scene.clock);
    const auto bench = benchOf(open->stores());
    DayOfWork work(open->stores(), ids, scene.clock, *bench, seed);
    for (int i = 0;; ++i) {
        if (const auto ref = work.next()) {
            const std::string line =
                std::string{core::nameOf(ref->kind)} + ' ' + ref->id.text() + '\n';
            if (::write(pipe, line.data(), line.size()) < 0) {
                return;
            }
        }
        if (i % 40 == 39) {
            (void)open->stores().upkeep.backup(scene.backup, kGoOn);
        }
        if (i % 90 == 89) {
            open->stores().upkeep.rebuildSearch();
        }
    }
}

// The records of the whole lines that were read.
std::vector<core::RecordRef> reported(const std::string& said) {
    std::vector<core::RecordRef> refs;
    for (std::size_t at = 0; at < said.size();) {
        const std::size_t end = said.find('\n', at);
        if (end == std::string::npos) {
            break;
        }
        const std::string line = said.substr(at, end - at);
        const std::size_t space = line.find(' ');
        const auto kind = core::recordKindNamed(line.substr(0, space));
        const auto id = core::Uuid::fromText(line.substr(space + 1, kUuidLength));
        if (kind && id) {
            refs.push_back({*kind, *id});
        }
        at = end + 1;
    }
    return refs;
}

void killWork(FaultProgram& program, Scene& scene) {
    const auto seed = scene.chance();
    const auto said = killed([&](int pipe) { workAndReport(scene, seed, pipe); }, some(scene, 400));
    auto workshops = scene.workshops();
    const auto open = workshops.open(scene.folder);
    for (const core::RecordRef& ref : reported(said)) {
        if (!isKept(open->stores(), ref)) {
            program.lost("a " + std::string{core::nameOf(ref.kind)} + " reported as saved");
        }
        scene.acknowledged.push_back(ref);
    }
    if (const std::string found = findings(open->stores()); !found.empty()) {
        program.lost("soundness:\n" + found);
    }
}

// A backup cut off leaves the one before it, or itself: a whole workshop comes of either.
void killBackup(FaultProgram& program, Scene& scene, const fs::path& target) {
    {
        auto workshops = scene.workshops();
        core::IdSource ids(scene.clock);
        const auto open = workshops.open(scene.folder);
        DayOfWork work(open->stores(), ids, scene.clock, *benchOf(open->stores()), scene.chance());
        for (int i = 0; i < 3; ++i) {
            (void)work.next();
        }
        (void)open->stores().upkeep.backup(scene.backup, kGoOn);
        for (int i = 0; i < 3; ++i) {
            (void)work.next();
        }
    }
    killed(
        [&](int) {
            auto workshops = scene.workshops();
            const auto open = workshops.open(scene.folder);
            for (;;) {
                (void)open->stores().upkeep.backup(scene.backup, kGoOn);
            }
        },
        some(scene, 150));
    auto workshops = scene.workshops();
    (void)workshops.restore(scene.backup, target, kGoOn);
    const auto open = workshops.open(target);
    if (const std::string found = findings(open->stores()); !found.empty()) {
        program.lost("soundness of a backup that was cut off:\n" + found);
    }
    fs::remove_all(target);
}

// A salvaging cut off leaves the damaged workshop as it was, and can be begun again.
void killSalvage(FaultProgram& program, Scene& scene, const fs::path& target) {
    killed([&](int) { (void)scene.workshops().salvage(scene.folder, target, {}, kGoOn); },
           some(scene, 150));
    if (!fs::exists(target / "workshop.sqlite")) {
        fs::remove_all(target);
        if (!scene.workshops().salvage(scene.folder, target, {}, kGoOn).isWhole()) {
            program.lost("something, in a second salvaging of a sound workshop");
        }
    }
    auto workshops = scene.workshops();
    const auto open = workshops.open(target);
    if (const std::string found = findings(open->stores()); !found.empty()) {
        program.lost("soundness of what was salvaged:\n" + found);
    }
    fs::remove_all(target);
}

void killRestore(FaultProgram& program, Scene& scene, const fs::path& target) {
    if (!fs::exists(scene.backup / "backup.sqlite")) {
        auto workshops = scene.workshops();
        const auto open = workshops.open(scene.folder);
        (void)open->stores().upkeep.backup(scene.backup, kGoOn);
    }
    killed([&](int) { (void)scene.workshops().restore(scene.backup, target, kGoOn); },
           some(scene, 60));
    if (fs::exists(target / "workshop.sqlite")) {
        auto workshops = scene.workshops();
        const auto open = workshops.open(target);
        if (const std::string found = findings(open->stores()); !found.empty()) {
            program.lost("soundness of what was restored:\n" + found);
        }
    }
    fs::remove_all(target);
}

void killMigration(FaultProgram& program, Scene& scene, const fs::path& target) {
    fs::copy(scene.folder, target, fs::copy_options::recursive);
    auto steps = db::migrations();
    const int newest = db::newestVersion(steps);
    steps.push_back({newest + 1, "next",
                     "CREATE TABLE shelf(id INTEGER PRIMARY KEY, note TEXT) STRICT;"
                     "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < "
                     "50000) INSERT INTO shelf SELECT i, hex(randomblob(40)) FROM n;"});
    const db::WorkshopSettings settings{.makesBackups = false};
    killed([&](int) { (void)db::openWorkshop(target, scene.clock, settings, steps); },
           some(scene, 200));
    const auto open = db::openWorkshop(target, scene.clock, settings, steps);
    if (const std::string found = findings(open->stores()); !found.empty()) {
        program.lost("soundness after a change of schema:\n" + found);
    }
    fs::remove_all(target);
}

void begin(Scene& scene) {
    fs::remove_all(scene.folder);
    fs::remove_all(scene.backup);
    scene.acknowledged.clear();
    auto workshops = scene.workshops();
    core::IdSource ids(scene.clock);
    (void)setUpBench(workshops.create(scene.folder)->stores(), ids, scene.clock);
}

// All that was ever reported in this workshop, counted by kind. Where a kill came between an undo
// and the redo that follows, the undo is the last that the journal says of the record.
void closeWorkshop(FaultProgram& program, const Scene& scene, std::map<std::string, int>& done) {
    auto workshops = scene.workshops();
    const auto open = workshops.open(scene.folder);
    for (const core::RecordRef& ref : scene.acknowledged) {
        ++done["acknowledged " + std::string{core::nameOf(ref.kind)}];
        if (!open->stores().records.find(ref)) {
            const auto history = open->stores().journal.historyOf(ref);
            if (history.empty() || history.front().kind != core::EntryKind::undo) {
                program.lost("a " + std::string{core::nameOf(ref.kind)} + " saved long ago");
            }
        }
    }
}

void killOnce(FaultProgram& program, Scene& scene, int round, const fs::path& elsewhere,
              std::map<std::string, int>& done) {
    switch (round % 12) {
    case 2:
        killBackup(program, scene, elsewhere / "restored");
        ++done["backups"];
        return;
    case 5:
        killRestore(program, scene, elsewhere / "restored");
        ++done["restorings"];
        return;
    case 8:
        killSalvage(program, scene, elsewhere / "salvaged");
        ++done["salvagings"];
        return;
    case 11:
        killMigration(program, scene, elsewhere / "moved");
        ++done["changes of schema"];
        return;
    default:
        killWork(program, scene);
        ++done["windows at work"];
    }
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 60, 1'000);
    const headcap::core::SystemClock clock;
    const TempFolder temp;
    std::mt19937_64 chance(1612);
    Scene scene{temp.path() / "workshop", temp.path() / "backup", clock, chance};
    std::map<std::string, int> done; // what was killed, and what had been acknowledged by then
    const auto attempt = [&](const std::function<void()>& work) {
        try {
            work();
        } catch (const std::exception& error) {
            program.lost(std::string{"a workshop that opens: "} + error.what());
        }
    };
    for (int i = 0; program.goesOn(i); ++i) {
        if (i % kKillsOfOneWorkshop == 0) {
            attempt([&] { i > 0 ? closeWorkshop(program, scene, done) : void(); });
            begin(scene);
        }
        attempt([&] { killOnce(program, scene, i, temp.path(), done); });
    }
    attempt([&] { closeWorkshop(program, scene, done); });
    std::string tried = "killed " + program.tried() + " times";
    for (const auto& [what, count] : done) {
        tried += ", " + std::to_string(count) + " " + what;
    }
    return program.close(tried);
}
