// The disk fills up, or fails, at each write and each sync of a change in turn: the change is
// refused with its reason, nothing that was there is lost, and work goes on when the disk does.
#include <sqlite3.h>

#include "db/workshop.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"
#include "tests/faults/fault_vfs.h"

namespace headcap::test {
namespace {

using Code = core::StoreError::Code;

struct Outcome {
    bool wasStruck = false;
    bool wasMade = false;
    std::optional<Code> code{};
    std::string what{};
};

class DiskErrors {
public:
    DiskErrors(FaultProgram& program, const core::Clock& clock)
        : m_program(program), m_clock(clock), m_ids(clock),
          m_workshops(clock, {.makesBackups = false, .vfs = FaultVfs::kName}) {
        m_open = m_workshops.create(m_temp.path() / "workshop");
        m_bench = setUpBench(m_open->stores(), m_ids, clock);
    }

    // Until a change goes through without the fault being met; at most `most` faults.
    int strikeEach(const std::string& name, bool atSyncs, int code, int most) {
        int n = 0;
        for (; n < most; ++n) {
            core::Finding finding{.id = m_ids.next<core::Finding>(),
                                  .job = m_bench->job,
                                  .observed = std::string(20'000, 'x')};
            const Outcome outcome = tryWith(finding, atSyncs, n, code);
            check(name + " at " + std::to_string(n), finding, outcome, code);
            if (!outcome.wasStruck) {
                break;
            }
        }
        return n;
    }

private:
    Outcome tryWith(const core::Finding& finding, bool atSyncs, int n, int code) {
        FaultVfs& disk = FaultVfs::instance();
        atSyncs ? disk.failSyncs(n, code) : disk.failWrites(n, code);
        Outcome outcome;
        try {
            outcome.wasMade = m_open->stores()
                                  .records.apply(core::Change{.sentence = "Finding"}.add(finding))
                                  .has_value();
        } catch (const core::StoreError& error) {
            outcome.code = error.code();
            outcome.what = error.what();
        }
        outcome.wasStruck = disk.hasFailed();
        disk.disarm();
        return outcome;
    }

    void check(const std::string& where, const core::Finding& finding, const Outcome& outcome,
               int code) {
        bool isThere = false;
        try {
            isThere = find(m_open->stores().records, finding.id).has_value();
        } catch (const core::StoreError& error) {
            m_program.lost("reading after " + where + ": " + error.what());
            m_open.reset();
            m_open = m_workshops.open(m_temp.path() / "workshop");
            isThere = find(m_open->stores().records, finding.id).has_value();
        }
        if (outcome.wasMade && !isThere) {
            m_program.lost("an acknowledged change " + where);
        }
        if (!outcome.wasMade && outcome.code != Code::outcomeUnknown && isThere) {
            m_program.lost("a refusal that was none " + where);
        }
        if (outcome.code == Code::outcomeUnknown &&
            outcome.what.find(isThere ? "the change is there" : "the change is not there") ==
                std::string::npos) {
            m_program.lost("the word on what was found " + where + ": " + outcome.what);
        }
        if (code == SQLITE_FULL && outcome.code && outcome.code != Code::diskFull &&
            outcome.code != Code::outcomeUnknown) {
            m_program.lost("the reason " + where + ": " + outcome.what);
        }
        // The disk is well again: the same change, made again, is made once.
        try {
            if (!m_open->stores().records.apply(core::Change{.sentence = "Finding"}.add(finding))) {
                m_program.lost("the change made again " + where);
            }
        } catch (const core::StoreError& error) {
            m_program.lost("writing after " + where + ": " + error.what());
        }
        if (const std::string found = findings(m_open->stores()); !found.empty()) {
            m_program.lost("soundness " + where + ":\n" + found);
        }
    }

    FaultProgram& m_program;
    const core::Clock& m_clock;
    TempFolder m_temp;
    core::IdSource m_ids;
    db::SqliteWorkshops m_workshops;
    std::unique_ptr<core::OpenWorkshop> m_open;
    std::optional<Bench> m_bench;
};

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultVfs::instance();
    FaultProgram program(argc, argv, 12, 400);
    const headcap::core::SystemClock clock;
    DiskErrors errors(program, clock);
    int struck = errors.strikeEach("disk full", false, SQLITE_FULL, program.rounds());
    struck += errors.strikeEach("write failed", false, SQLITE_IOERR_WRITE, program.rounds());
    struck += errors.strikeEach("sync failed", true, SQLITE_IOERR_FSYNC, program.rounds());
    return program.close("disk errors at " + std::to_string(struck) + " writes and syncs");
}
