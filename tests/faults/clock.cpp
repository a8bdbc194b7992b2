// The clock is set back and forth and the time zone changes, between the days of work and in the
// midst of them: every record is as it was written, in every zone after, the journal is whole, and
// the automatic backups go on. And a workshop on a file system of a network is refused, untouched.
#include <array>
#include <cstdlib>
#include <ctime>

#include "core/record/safe_keeping.h"
#include "db/workshop.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"

namespace headcap::test {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

constexpr int kDaysOfOneWorkshop = 40;
constexpr std::size_t kMostCopies = 10;

// Whole hours from UTC and not, summer time of an hour, of half an hour and none, a day that was
// left out (Apia, 30 December 2011).
constexpr std::array kZones{"UTC",
                            "Europe/Berlin",
                            "America/New_York",
                            "America/St_Johns",
                            "Asia/Kathmandu",
                            "Australia/Lord_Howe",
                            "Pacific/Apia",
                            "Pacific/Kiritimati",
                            "Pacific/Marquesas"};

// Goes on by a second when it is asked, and where it is put; the days are those of the zone.
class RoughClock final : public core::Clock {
public:
    [[nodiscard]] core::Instant now() const override { return m_now += 1s; }
    [[nodiscard]] core::Day today() const override { return dayOf(m_now); }
    [[nodiscard]] core::Day dayOf(core::Instant instant) const override {
        return core::SystemClock{}.dayOf(instant);
    }
    void move(std::chrono::minutes by) { m_now += by; }

private:
    mutable core::Instant m_now = *core::instantFromIso("2031-10-20T09:00:00Z");
};

struct Scene {
    FaultProgram& program;
    fs::path folder;
    RoughClock clock{};
    std::mt19937_64 chance{1582};
    std::map<core::RecordRef, core::AnyRecord> written{};
    int jumps = 0;
    std::int64_t records = 0;

    std::size_t upTo(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>{0, n - 1}(chance);
    }
};

void jump(Scene& scene) {
    static constexpr std::array<std::chrono::minutes, 8> kJumps{
        -24h * 365 * 3, -24h * 40, -25h, -1h, 1h, 25h, 24h * 40, 24h * 365 * 4};
    scene.clock.move(kJumps[scene.upTo(kJumps.size())]);
    ::setenv("TZ", kZones[scene.upTo(kZones.size())], 1);
    ::tzset();
    ++scene.jumps;
}

void expectAsWritten(Scene& scene, core::Stores stores) {
    for (const auto& [ref, record] : scene.written) {
        const auto found = stores.records.find(ref);
        if (!found || found->record != record) {
            scene.program.lost("a " + std::string{core::nameOf(ref.kind)} + " as it was written");
        }
    }
    std::int64_t next = 0;
    for (const auto& entry : stores.journal.latest(1'000)) {
        if (next != 0 && entry.sequence != next) {
            scene.program.lost("the order of the journal at entry " + std::to_string(next));
        }
        next = entry.sequence - 1;
    }
    if (const std::string found = findings(stores); !found.empty()) {
        scene.program.lost("soundness:\n" + found);
    }
}

void begin(Scene& scene) {
    fs::remove_all(scene.folder);
    scene.written.clear();
    core::IdSource ids(scene.clock);
    db::SqliteWorkshops workshops(scene.clock);
    (void)setUpBench(workshops.create(scene.folder)->stores(), ids, scene.clock);
}

void workADay(Scene& scene) {
    jump(scene);
    core::IdSource ids(scene.clock);
    db::SqliteWorkshops workshops(scene.clock);
    const auto open = workshops.open(scene.folder);
    const auto stores = open->stores();
    expectAsWritten(scene, stores);
    DayOfWork work(stores, ids, scene.clock, *benchOf(stores), scene.chance());
    for (std::size_t n = 4 + scene.upTo(8); n > 0; --n) {
        if (scene.upTo(4) == 0) {
            jump(scene);
        }
        if (const auto ref = work.next()) {
            scene.written.insert({*ref, stores.records.find(*ref)->record});
            ++scene.records;
        }
    }
    expectAsWritten(scene, stores);
}

// One is made at every opening at which the newest is a day old, or of a day to come.
void expectBackups(Scene& scene) {
    const auto countCopies = [&] {
        const fs::directory_iterator copies(scene.folder / "backups");
        return static_cast<std::size_t>(std::distance(begin(copies), end(copies)));
    };
    scene.clock.move(25h);
    const auto now = scene.clock.now();
    // It is made aside, and is there when the window is closed.
    (void)db::SqliteWorkshops(scene.clock).open(scene.folder);
    db::SqliteWorkshops others(scene.clock, {.makesBackups = false});
    const auto last = safeKeepingOf(others.open(scene.folder)->stores().upkeep)->lastInsideBackup();
    if (!last || *last < now - 24h || *last > now + 24h) {
        scene.program.lost("the backup of the day, at " + core::isoText(now) + ": " +
                           (last ? core::isoText(*last) : "none"));
    }
    if (countCopies() > kMostCopies) {
        scene.program.lost("room: " + std::to_string(countCopies()) + " backups are kept");
    }
}

void expectNetworksRefused(Scene& scene) {
    const auto before = everythingIn(scene.folder);
    for (const char* type : {"nfs", "nfs4", "cifs", "smb3", "afs", "ceph", "fuse.sshfs",
                             "fuse.gvfsd-fuse", "fuse.kio-fuse", "vboxsf"}) {
        db::SqliteWorkshops far(
            scene.clock,
            {.makesBackups = false, .fileSystemOf = [type](const auto&) { return type; }});
        try {
            (void)far.open(scene.folder);
            scene.program.lost(std::string{"the refusal of "} + type);
        } catch (const core::StoreError& error) {
            if (error.code() != core::StoreError::Code::networkFolder ||
                std::string{error.what()}.find(type) == std::string::npos) {
                scene.program.lost("the reason: " + std::string{error.what()});
            }
        }
    }
    if (everythingIn(scene.folder) != before) {
        scene.program.lost("the workshop as it was, refused on a network");
    }
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 30, 600);
    const TempFolder temp;
    Scene scene{program, temp.path() / "workshop"};
    for (int i = 0; program.goesOn(i); ++i) {
        try {
            if (i % kDaysOfOneWorkshop == 0) {
                begin(scene);
            }
            workADay(scene);
            expectBackups(scene);
        } catch (const std::exception& error) {
            program.lost(std::string{"a day: "} + error.what());
        }
    }
    expectNetworksRefused(scene);
    return program.close(program.tried() + " days, " + std::to_string(scene.jumps) +
                         " jumps of the clock and the zone, " + std::to_string(scene.records) +
                         " records looked at after each");
}
