// A byte flipped in every page of the database: it is refused or found by verify, or it lay where
// nothing is kept and every record is as it was. The program never stops, and never gives out a
// record that is not as it was written without verify saying so.
#include "db/workshop.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"

namespace headcap::test {
namespace {

constexpr std::size_t kPage = 4096;

struct Damage {
    int refused = 0;
    int found = 0;
    int harmless = 0;
};

void flip(FaultProgram& program, db::SqliteWorkshops& workshops,
          const std::filesystem::path& folder, const std::string& whole,
          const std::map<std::string, std::string>& tables, std::size_t at, Damage& damage) {
    std::string damaged = whole;
    damaged[at] = static_cast<char>(damaged[at] ^ 0x55);
    for (const char* suffix : {"-wal", "-shm"}) {
        std::filesystem::remove((folder / "workshop.sqlite").string() + suffix);
    }
    writeBytes(folder / "workshop.sqlite", damaged);
    try {
        const auto open = workshops.open(folder);
        if (!findings(open->stores()).empty()) {
            ++damage.found;
            return;
        }
    } catch (const core::StoreError&) {
        ++damage.refused;
        return;
    }
    if (recordTables(folder) == tables) {
        ++damage.harmless;
    } else {
        program.lost("the truth, at byte " + std::to_string(at));
    }
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 1, 20);
    const headcap::core::SystemClock clock;
    const TempFolder temp;
    const auto folder = temp.path() / "workshop";
    headcap::db::SqliteWorkshops workshops(clock, {.makesBackups = false});
    headcap::core::IdSource ids(clock);
    {
        const auto open = workshops.create(folder);
        const Bench bench = setUpBench(open->stores(), ids, clock);
        DayOfWork work(open->stores(), ids, clock, bench, 7);
        for (int i = 0; i < 30; ++i) {
            (void)work.next();
        }
    }
    const auto tables = recordTables(folder);
    const std::string whole = bytesOf(folder / "workshop.sqlite");
    std::mt19937_64 chance(1702);
    Damage damage;
    for (int round = 0; program.goesOn(round); ++round) {
        for (std::size_t page = 0; page < whole.size() / kPage; ++page) {
            const std::size_t at =
                page * kPage + std::uniform_int_distribution<std::size_t>{0, kPage - 1}(chance);
            flip(program, workshops, folder, whole, tables, at, damage);
        }
    }
    return program.close("a byte flipped in every page, " + program.tried() +
                         " times: " + std::to_string(damage.refused) + " refused, " +
                         std::to_string(damage.found) + " found by verify, " +
                         std::to_string(damage.harmless) + " where nothing is kept");
}
