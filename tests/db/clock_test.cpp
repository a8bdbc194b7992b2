// A clock that is set back, and time zones that change, alter nothing of what is kept, nor its
// order; and a clock that was wrong once does not stop the automatic backups.
#include <array>
#include <cstdlib>
#include <ctime>

#include <gtest/gtest.h>

#include "core/record/safe_keeping.h"
#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

class ClockTest : public test::WorkshopFixture {
protected:
    Step log(const std::string& what) {
        Step step = aStep(what);
        test::mustApply(records(), Change{.sentence = what, .who = person.id}.add(step));
        return step;
    }
    std::vector<std::string> copies() {
        std::vector<std::string> names;
        for (const auto& copy : fs::directory_iterator(folder() / "backups")) {
            names.push_back(copy.path().filename());
        }
        return names;
    }
    void openWithBackups() {
        open.reset();
        open = db::SqliteWorkshops(clock, {}).open(folder());
        open.reset();
        open = workshops.open(folder());
    }
};

TEST_F(ClockTest, setBackTheJournalKeepsItsOrderAndUndoItsSense) {
    const Step before = log("washed");
    const Finding finding = aFinding("tear");
    test::mustApply(records(), Change{.sentence = "Finding", .who = person.id}.add(finding));
    clock.set(clock.now() - 24h * 400);
    const Step after = log("guarded");
    EXPECT_GT(after.id.text(), before.id.text()) << "keys go on from where they were";
    const auto latest = journal().latest(3);
    EXPECT_EQ(latest[0].sentence, "guarded");
    EXPECT_EQ(latest[1].sentence, "Finding");
    EXPECT_LT(latest[0].at, latest[1].at) << "each as its own clock said";
    auto changed = *find(records(), finding.id);
    changed.record.observed = "tear, 4 cm";
    test::mustApply(records(), Change{.sentence = "Changed", .who = person.id}.update(
                                   changed.record, changed.revision));
    ASSERT_TRUE(journal().undo(person.id));
    EXPECT_EQ(find(records(), finding.id)->record.observed, "tear");
    ASSERT_TRUE(journal().redo(person.id));
    EXPECT_EQ(find(records(), finding.id)->record.observed, "tear, 4 cm");
    EXPECT_EQ(journal().historyOf(refOf(finding.id)).front().sentence, "Done again: Changed");
    EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
}

TEST_F(ClockTest, aClockThatWasWrongDoesNotStopTheAutomaticBackups) {
    const Instant right = clock.now();
    clock.set(right + 24h * 365 * 60);
    for (int i = 0; i < 12; ++i) {
        clock.set(clock.now() + 25h);
        openWithBackups();
    }
    ASSERT_EQ(copies().size(), 10U);
    clock.set(right);
    std::vector<std::string> names;
    for (int i = 0; i < 12; ++i) {
        clock.set(clock.now() + 25h);
        openWithBackups();
        names = copies();
        EXPECT_EQ(names.size(), 10U);
        EXPECT_EQ(std::count_if(
                      names.begin(), names.end(),
                      [](const std::string& name) { return name.starts_with("workshop-2031-"); }),
                  std::min(i + 1, 10));
    }
    const auto last = safeKeepingOf(stores().upkeep)->lastInsideBackup();
    ASSERT_TRUE(last);
    EXPECT_LT(*last - right, 24h * 14);
}

TEST_F(ClockTest, aBackupOfATimeToComeIsNotTheLast) {
    const Instant right = clock.now();
    clock.set(right + 24h * 365 * 3);
    openWithBackups();
    clock.set(right);
    EXPECT_GT(safeKeepingOf(stores().upkeep)->lastInsideBackup(), right + 24h * 365)
        << "there is no other";
    clock.set(right);
    openWithBackups();
    ASSERT_EQ(copies().size(), 2U);
    EXPECT_LT(safeKeepingOf(stores().upkeep)->lastInsideBackup(), right + 1h);
}

// The zone of the process, put back when it goes.
class InZone {
public:
    explicit InZone(const char* zone) : m_before(std::getenv("TZ") ? std::getenv("TZ") : "") {
        ::setenv("TZ", zone, 1);
        ::tzset();
    }
    ~InZone() {
        ::setenv("TZ", m_before.c_str(), 1);
        ::tzset();
    }
    InZone(const InZone&) = delete;
    InZone& operator=(const InZone&) = delete;

private:
    std::string m_before;
};

TEST_F(ClockTest, zonesAndSummerTimeAlterNothingThatIsKept) {
    // In Berlin on 26 October 2031 the hour from 2 to 3 comes twice (IANA tz database, Europe/
    // Berlin: the last Sunday of October at 1:00 UTC).
    clock.set(*instantFromIso("2031-10-25T23:59:00Z"));
    std::vector<Step> steps;
    {
        const InZone berlin("Europe/Berlin");
        for (int i = 0; i < 8; ++i) {
            clock.set(clock.now() + 30min);
            steps.push_back(log("step " + std::to_string(i)));
        }
    }
    const auto tables = test::recordTables(folder());
    for (const char* zone : {"America/New_York", "Asia/Kathmandu", "Pacific/Apia"}) {
        const InZone there(zone);
        reopen();
        const SystemClock here;
        Instant last{};
        for (const Step& step : steps) {
            const auto kept = find(records(), step.id);
            ASSERT_TRUE(kept);
            EXPECT_EQ(kept->record, step);
            EXPECT_GT(kept->record.at, last) << "the hour that comes twice is two hours";
            EXPECT_TRUE(here.dayOf(kept->record.at).ok());
            last = kept->record.at;
        }
        EXPECT_EQ(test::recordTables(folder()), tables);
        EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
    }
}

TEST(SummerTime, daysAreThoseOfThePlaceOnBothSidesOfTheChange) {
    const InZone berlin("Europe/Berlin");
    const SystemClock clock;
    // Summer time begins on 30 March 2031 at 1:00 UTC, and ends on 26 October at 1:00 UTC.
    constexpr std::array<std::pair<const char*, const char*>, 6> kDays{
        {{"2031-03-29T22:59:59Z", "2031-03-29"},
         {"2031-03-29T23:00:00Z", "2031-03-30"},
         {"2031-03-30T21:59:59Z", "2031-03-30"},
         {"2031-03-30T22:00:00Z", "2031-03-31"},
         {"2031-10-25T22:00:00Z", "2031-10-26"},
         {"2031-10-26T22:59:59Z", "2031-10-26"}}};
    for (const auto& [instant, day] : kDays) {
        EXPECT_EQ(isoText(clock.dayOf(*instantFromIso(instant))), day) << instant;
    }
}

} // namespace
} // namespace headcap::core
