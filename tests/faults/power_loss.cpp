// The power fails at random points of a day's work: what was acknowledged before is there, and the
// workshop is sound.
#include <algorithm>

#include "db/workshop.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"
#include "tests/faults/fault_vfs.h"

namespace headcap::test {
namespace {

constexpr int kPiecesOfWork = 250;

struct Day {
    DiskImage before;
    std::vector<DiskOp> log;
    std::vector<core::RecordRef> done; // by the number that was acknowledged
};

DiskImage databaseIn(const std::filesystem::path& folder) {
    DiskImage image;
    for (const char* name : {"workshop.sqlite", "workshop.sqlite-wal"}) {
        if (std::filesystem::exists(folder / name)) {
            image[name] = bytesOf(folder / name);
        }
    }
    return image;
}

Day work(const std::filesystem::path& folder, const core::Clock& clock) {
    core::IdSource ids(clock);
    Day day;
    std::optional<Bench> bench;
    {
        db::SqliteWorkshops plain(clock, {.makesBackups = false});
        bench = setUpBench(plain.create(folder)->stores(), ids, clock);
    }
    FaultVfs& disk = FaultVfs::instance();
    db::SqliteWorkshops workshops(clock, {.makesBackups = false, .vfs = FaultVfs::kName});
    day.before = databaseIn(folder);
    disk.startLog();
    const auto open = workshops.open(folder);
    DayOfWork work(open->stores(), ids, clock, *bench, 1590);
    for (int i = 0; i < kPiecesOfWork; ++i) {
        if (const auto ref = work.next()) {
            day.done.push_back(*ref);
            disk.acknowledge(static_cast<std::int64_t>(day.done.size()));
        }
    }
    day.log = disk.stopLog();
    return day;
}

std::int64_t acknowledgedBefore(const Day& day, std::size_t end) {
    std::int64_t count = 0;
    for (std::size_t i = 0; i < end; ++i) {
        if (day.log[i].what == DiskOp::What::acknowledged) {
            count = day.log[i].offset;
        }
    }
    return count;
}

void loseThePower(FaultProgram& program, const Day& day, const std::filesystem::path& worked,
                  const core::Clock& clock, std::size_t end, std::mt19937_64& chance) {
    const TempFolder temp;
    const auto folder = temp.path() / "workshop";
    std::filesystem::create_directory(folder);
    // Files are on the disk before a record names them; the test of their order is in
    // tests/db/file_store_test.cpp.
    for (const char* shelf : {"photos", "attachments", "reports"}) {
        std::filesystem::create_directory_symlink(worked / shelf, folder / shelf);
    }
    for (const auto& [name, bytes] : afterPowerLoss(day.before, day.log, end, chance)) {
        writeBytes(folder / name, bytes);
    }
    const std::string where =
        "at operation " + std::to_string(end) + " of " + std::to_string(day.log.size());
    try {
        db::SqliteWorkshops workshops(clock, {.makesBackups = false});
        const auto open = workshops.open(folder);
        const auto expected = acknowledgedBefore(day, end);
        for (std::int64_t i = 0; i < expected; ++i) {
            if (!isKept(open->stores(), day.done[static_cast<std::size_t>(i)])) {
                program.lost("a record acknowledged before the power failed " + where);
            }
        }
        if (const std::string found = findings(open->stores()); !found.empty()) {
            program.lost("soundness " + where + ":\n" + found);
        }
    } catch (const std::exception& error) {
        program.lost("the workshop " + where + ": " + error.what());
    }
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 25, 500);
    const headcap::core::SystemClock clock;
    const TempFolder temp;
    const Day day = work(temp.path() / "workshop", clock);
    std::mt19937_64 chance(2031);
    program.control("a disk on which nothing was ever synced", [&] {
        Day unsynced = day;
        std::erase_if(unsynced.log, [](const DiskOp& op) { return op.what == DiskOp::What::sync; });
        for (std::size_t i = 1; i <= 3; ++i) {
            loseThePower(program, unsynced, temp.path() / "workshop", clock,
                         unsynced.log.size() * i / 4, chance);
        }
    });
    for (int i = 0; program.goesOn(i); ++i) {
        std::uniform_int_distribution<std::size_t> point(1, day.log.size());
        loseThePower(program, day, temp.path() / "workshop", clock, point(chance), chance);
    }
    return program.close("power lost " + program.tried() + " times in " +
                         std::to_string(day.log.size()) + " disk operations, " +
                         std::to_string(day.done.size()) + " acknowledged writes");
}
