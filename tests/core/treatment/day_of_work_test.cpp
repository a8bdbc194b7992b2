#include "core/treatment/day_of_work.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/report/day_sheet.h"
#include "core/values/english.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

class DayOfWorkTest : public testing::Test {
protected:
    DayOfWorkTest() {
        m_b.person("Orla Fenwick", "OF");
        m_first = m_b.file.people[0].id;
        m_second = m_b.file.people[1].id;
    }
    WorkDone done(const Id<Person>& who, const char* job, int minutes) {
        Step step = m_b.step("guarding", "K7", day(2031, 4, 1));
        step.who = who;
        step.minutes = Minutes{minutes};
        return {step, job, std::string{"Book of "} + job, m_b.file.person(who)->name};
    }
    JobBuilder m_b;
    Id<Person> m_first{m_b.anyone()};
    Id<Person> m_second{m_b.anyone()};
};

TEST_F(DayOfWorkTest, addsUpTheSameByPersonAndByJob) {
    std::vector<WorkDone> work;
    for (int i = 0; i < 40; ++i) {
        work.push_back(done(i % 3 == 0 ? m_second : m_first, i % 5 == 0 ? "31-001" : "31-002", i));
        if (i % 7 == 0) {
            work.back().step.struckAt = m_b.clock.now();
        }
    }
    const Minutes all = minutesOf(work);
    const auto sumOf = [](const std::vector<HoursOf>& hours) {
        Minutes sum{0};
        for (const HoursOf& one : hours) {
            sum += one.minutes;
        }
        return sum;
    };
    EXPECT_EQ(sumOf(hoursByPerson(work)), all);
    EXPECT_EQ(sumOf(hoursByJob(work)), all);
    Minutes sheet{0};
    for (const PersonInJobs& person : timeSheet(work)) {
        EXPECT_EQ(sumOf(person.jobs), person.minutes);
        sheet += person.minutes;
    }
    EXPECT_EQ(sheet, all);
}

// Worked by hand: 20 + 25 of the first person, 50 of the second; struck work is no work.
TEST_F(DayOfWorkTest, saysWhoWorkedMostAndWhereOn) {
    std::vector<WorkDone> work{done(m_first, "31-001", 20), done(m_second, "31-001", 50),
                               done(m_first, "31-002", 25), done(m_first, "31-002", 400)};
    work.back().step.struckAt = m_b.clock.now();
    const auto people = hoursByPerson(work);
    ASSERT_EQ(people.size(), 2U);
    EXPECT_EQ(people[0].minutes, Minutes{50});
    EXPECT_EQ(people[1].minutes, Minutes{45});
    EXPECT_EQ(people[1].steps, 2U);
    const auto jobs = hoursByJob(work);
    ASSERT_EQ(jobs.size(), 2U);
    EXPECT_EQ(jobs[0].name, "31-001");
    EXPECT_EQ(jobs[0].also, "Book of 31-001");
    EXPECT_EQ(jobs[0].minutes, Minutes{70});
}

TEST_F(DayOfWorkTest, keepsTwoPeopleOfOneNameApart) {
    m_b.file.people[1].name = m_b.file.people[0].name;
    EXPECT_EQ(
        hoursByPerson(std::vector{done(m_first, "31-001", 20), done(m_second, "31-001", 5)}).size(),
        2U);
}

// 1 April 2031 is a Tuesday (Zeller's congruence: h = (1 + ⌊13·5/5⌋ + 31 + ⌊31/4⌋ + ⌊20/4⌋ + 5·20)
// mod 7 = 3, which is Tuesday).
TEST_F(DayOfWorkTest, knowsTheMondayOfAWeek) {
    EXPECT_EQ(weekBegin(day(2031, 4, 1)), day(2031, 3, 31));
    EXPECT_EQ(weekBegin(day(2031, 3, 31)), day(2031, 3, 31));
    EXPECT_EQ(weekBegin(day(2031, 4, 6)), day(2031, 3, 31));
    EXPECT_EQ(dayAfter(day(2031, 12, 31), 1), day(2032, 1, 1));
    EXPECT_EQ(dayAfter(day(2032, 3, 1), -1), day(2032, 2, 29));
}

TEST_F(DayOfWorkTest, isPrintedWithEveryStepAndSum) {
    DayOfWork shown{.day = day(2031, 4, 1),
                    .work = {done(m_first, "31-001", 20), done(m_second, "31-002", 50)},
                    .from = day(2031, 3, 31),
                    .to = day(2031, 4, 1)};
    shown.work.front().step.description = "two guards, both thin";
    shown.period = shown.work;
    const TechniquesInForce techniques;
    const auto clockText = [](Instant instant) { return isoText(instant).substr(11, 5); };
    const std::string text =
        plainText(daySheet(shown, {.techniques = techniques, .clockText = clockText}, m_b.clock));
    for (const char* said :
         {"1 April 2031", "31-001", "Book of 31-002", "Guarding, K7. Two guards, both thin",
          "50 min", "In all · 1 h 10 min", "10:00", "Hours from 31 March 2031 to 1 April 2031"}) {
        EXPECT_NE(text.find(said), std::string::npos) << said << "\n" << text;
    }
    EXPECT_EQ(text.find("Setting"), std::string::npos);
}

TEST_F(DayOfWorkTest, onPaperSaysTheWeekdayAndNothingTwice) {
    const Day today = m_b.clock.today();
    const Day after = dayAfter(today, 1);
    const DayOfWork shown{.day = today,
                          .work = {done(m_first, "31-001", 20)},
                          .settings = {{.setting = {.id = m_b.ids.next<Setting>(),
                                                    .job = m_b.file.job.id,
                                                    .what = "paste of the guards",
                                                    .endsAt = at(after, 9)},
                                        .job = "31-001",
                                        .book = "A book"}},
                          .from = today,
                          .to = today,
                          .period = {done(m_first, "31-001", 20)}};
    const TechniquesInForce techniques;
    const auto clockText = [](Instant instant) { return isoText(instant).substr(11, 5); };
    const std::string text =
        plainText(daySheet(shown, {.techniques = techniques, .clockText = clockText}, m_b.clock));
    constexpr const char* kDays[]{"Sunday",   "Monday", "Tuesday", "Wednesday",
                                  "Thursday", "Friday", "Saturday"};
    const std::string named =
        kDays[std::chrono::weekday{std::chrono::sys_days{after}}.c_encoding()];
    EXPECT_NE(text.find("09:00, " + named + " " + dayText(after)), std::string::npos) << text;
    EXPECT_EQ(text.find("Hours from"), std::string::npos) << "it is the day above";
}

} // namespace
} // namespace headcap::core
