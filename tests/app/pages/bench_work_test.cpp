// The bench page as it is worked at: clocks, setting times, checks, and a morning by keys alone.
#include "app/pages/bench_page.h"

#include <algorithm>

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>

#include "app/form/ruled_table.h"
#include "app/pages/bench/check_rows.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/setting_strip.h"
#include "app/pages/bench/step_details.h"
#include "app/pages/bench/step_fields.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/use_row.h"
#include "app/pages/bench/uses_editor.h"
#include "app/pages/bench/work_button.h"
#include "core/treatment/clocks.h"
#include "core/treatment/setting_times.h"
#include "core/treatment/step_checks.h"
#include "tests/app/pages/page_test.h"

namespace headcap::app {
namespace {

class BenchWorkTest : public PageTest<BenchPage> {
protected:
    BenchWorkTest() { EXPECT_TRUE(open(*sample.grafting, core::Page::bench)); }
    WorkButton* button(const QString& title, WorkButton::Mark mark) {
        for (WorkButton* one : page().lines().buttons()) {
            if (one->title().contains(title) && one->mark() == mark) {
                return one;
            }
        }
        return nullptr;
    }
    void touch(WorkButton* one) {
        ASSERT_NE(one, nullptr);
        QTest::mouseClick(one, Qt::LeftButton);
    }
    void pass(core::Minutes minutes) { sample.clock.at += minutes; }
    QLineEdit& line() { return job().benchLine().line(); }
    void say(const char* words) {
        press(ActionId::toBenchLine);
        QTest::keyClicks(&line(), QString::fromUtf8(words));
        QTest::keyClick(&line(), Qt::Key_Return);
    }
    // Lot 31-006 is past its date.
    void letThePasteGoOff() {
        for (auto& lot : core::all<core::Lot>(sample.store)) {
            if (lot.record.number == "31-006") {
                lot.record.goodUntil = std::chrono::year{2031} / 3 / 1;
                sample.store.changeElsewhere(lot.record);
            }
        }
        session.poll();
    }
};

TEST_F(BenchWorkTest, oneTouchStartsTheClockOfALineAndAnotherLogsItsMinutes) {
    const std::size_t before = file().steps.size();
    touch(button(QStringLiteral("Rebacking"), WorkButton::Mark::starts));
    ASSERT_EQ(core::runningClocks(file()).size(), 1U);
    EXPECT_EQ(file().steps.size(), before);
    pass(core::Minutes{47});
    page().lines().tick();
    WorkButton* running = button(QStringLiteral("Rebacking"), WorkButton::Mark::stops);
    ASSERT_NE(running, nullptr);
    EXPECT_TRUE(running->below().contains(QStringLiteral("47 min")))
        << running->below().toStdString();
    touch(running);
    ASSERT_TRUE(page().form().isWriting());
    press(ActionId::logStep);
    const auto now = file();
    ASSERT_EQ(now.steps.size(), before + 1);
    const core::Step* step = nullptr;
    for (const core::Step& one : now.steps) {
        step = one.technique == "rebacking" ? &one : step;
    }
    ASSERT_NE(step, nullptr);
    EXPECT_EQ(step->minutes, core::Minutes{47});
    EXPECT_TRUE(step->line.has_value());
    EXPECT_EQ(now.clocks.front().step, step->id);
    EXPECT_TRUE(core::clocksToLog(now).empty());
}

TEST_F(BenchWorkTest, aClockSurvivesTheProgramsEndAndSeveralRunAtOnce) {
    touch(button(QStringLiteral("Rebacking"), WorkButton::Mark::starts));
    EXPECT_TRUE(window.close());
    pass(core::Minutes{65});
    Session again{sample.means()};
    MainWindow second{again};
    second.setVisible(true);
    ASSERT_TRUE(
        second.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench}));
    auto& page = *qobject_cast<BenchPage*>(qobject_cast<JobView*>(second.current())->currentPage());
    const auto& buttons = page.lines().buttons();
    const auto found = std::ranges::find(buttons, WorkButton::Mark::stops, &WorkButton::mark);
    ASSERT_NE(found, buttons.end());
    const WorkButton* running = *found;
    EXPECT_TRUE(running->below().contains(QStringLiteral("1 h 5 min")))
        << running->below().toStdString();
    for (WorkButton* one : page.lines().buttons()) {
        if (one->mark() == WorkButton::Mark::starts) {
            QTest::mouseClick(one, Qt::LeftButton);
            break;
        }
    }
    EXPECT_EQ(core::runningClocks(file()).size(), 2U);
}

TEST_F(BenchWorkTest, minutesMeasuredAndNotLoggedWaitToBeLogged) {
    touch(button(QStringLiteral("Rebacking"), WorkButton::Mark::starts));
    pass(core::Minutes{20});
    page().lines().tick();
    touch(button(QStringLiteral("Rebacking"), WorkButton::Mark::stops));
    QTest::mouseClick(&page().form().dropIt(), Qt::LeftButton);
    ASSERT_EQ(core::clocksToLog(file()).size(), 1U);
    pass(core::Minutes{300});
    touch(button(QStringLiteral("Rebacking"), WorkButton::Mark::toLog));
    ASSERT_TRUE(page().form().isWriting());
    EXPECT_EQ(page().form().draft()->logged.step.minutes, core::Minutes{20});
}

TEST_F(BenchWorkTest, wordsThatNameNoTechniqueAreLoggedOnlyAtTheSecondEnter) {
    const std::size_t before = file().steps.size();
    say("abc");
    EXPECT_EQ(file().steps.size(), before);
    EXPECT_EQ(line().text(), QStringLiteral("abc")) << "nothing is dropped";
    QTest::keyClicks(&line(), QStringLiteral(" d"));
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(file().steps.size(), before) << "it is another line";
    QTest::keyClick(&line(), Qt::Key_Return);
    ASSERT_EQ(file().steps.size(), before + 1);
    EXPECT_EQ(file().steps.back().description, "abc d");
}

TEST_F(BenchWorkTest, aLotThatIsNotOnTheShelfIsNotMadeWordsUnasked) {
    const std::size_t before = file().steps.size();
    say("guarded K7 with paste 26-001 0.4 g 20 min");
    EXPECT_EQ(file().steps.size(), before);
    say(" ");
    line().setText(QStringLiteral("guarded K7 with paste 31-006 0.4 g 20 min"));
    QTest::keyClick(&line(), Qt::Key_Return);
    ASSERT_EQ(file().steps.size(), before + 1);
    EXPECT_TRUE(file().uses.back().lot.has_value());
}

TEST_F(BenchWorkTest, whatHasSetIsSaidUntilATouchSaysItWasSeenTo) {
    say("guarded K7 18 min sets 30 min");
    const core::Id<core::Step> id = file().steps.back().id;
    ASSERT_EQ(file().settings.size(), 1U);
    pass(core::Minutes{31});
    auto* strip = page().findChild<SettingStrip*>();
    strip->tick();
    auto* row = strip->findChild<SettingRow*>();
    ASSERT_NE(row, nullptr);
    EXPECT_TRUE(row->accessibleName().contains(QStringLiteral("it has set")))
        << row->accessibleName().toStdString();
    QTest::mouseClick(&row->see(), Qt::LeftButton);
    EXPECT_EQ(file().settings.front().step, id);
    EXPECT_EQ(file().settings.front().seenBy, *sample.orrin);
}

TEST_F(BenchWorkTest, aCheckIsTickedOrNotedAsNotMadeWithTheReason) {
    press(ActionId::addRecord);
    FormBase& form = page().form().fields().form();
    type(form, QStringLiteral("Technique"), QStringLiteral("Guarding"));
    type(form, QStringLiteral("Where"), QStringLiteral("K7"));
    const auto& rows = page().form().checks().rows();
    ASSERT_GE(rows.size(), 2U);
    QTest::keyClick(&rows[0]->tick(), Qt::Key_Space);
    QTest::keyClick(&rows[1]->notMade(), Qt::Key_Space);
    const std::size_t before = file().steps.size();
    press(ActionId::logStep);
    EXPECT_EQ(file().steps.size(), before); // not without a word why
    EXPECT_TRUE(rows[1]->reason().hasFocus());
    QTest::keyClicks(&rows[1]->reason(), QStringLiteral("still under weight"));
    press(ActionId::logStep);
    ASSERT_EQ(file().steps.size(), before + 1);
    const auto checks = file().stepChecks;
    ASSERT_EQ(checks.size(), 2U);
    EXPECT_TRUE(checks[0].done);
    EXPECT_EQ(checks[1].whyNot, "still under weight");
}

TEST_F(BenchWorkTest, aCheckLeftOpenIsAnsweredInTheLog) {
    say("guarded K7 18 min");
    const core::Step step = file().steps.back();
    page().log().select(step.id.uuid());
    page().log().setFocus();
    QTest::keyClick(&page().log(), Qt::Key_Return);
    const std::size_t open = page().details().checks().rows().size();
    ASSERT_GE(open, 2U);
    QTest::keyClick(&page().details().checks().rows()[0]->tick(), Qt::Key_Space);
    EXPECT_EQ(file().stepChecks.size(), 1U);
    CheckRow* row = page().details().checks().rows()[0];
    QTest::keyClick(&row->notMade(), Qt::Key_Space);
    QTest::keyClicks(&row->reason(), QStringLiteral("no time"));
    QTest::keyClick(&row->reason(), Qt::Key_Return);
    ASSERT_EQ(file().stepChecks.size(), 2U);
    EXPECT_EQ(file().stepChecks.back().whyNot, "no time");
    EXPECT_EQ(core::openChecks(file(), step).size(), open - 2);
}

TEST_F(BenchWorkTest, wordsCompleteByTabAndTheLineIsReadOn) {
    press(ActionId::toBenchLine);
    QTest::keyClicks(&line(), QStringLiteral("guar"));
    ASSERT_TRUE(job().benchLine().offers().isVisible());
    QTest::keyClick(&line(), Qt::Key_Tab);
    EXPECT_EQ(line().text(), QStringLiteral("guarded "));
    QTest::keyClicks(&line(), QStringLiteral("K7 pas"));
    QTest::keyClick(&line(), Qt::Key_Tab);
    EXPECT_EQ(line().text(), QStringLiteral("guarded K7 31-006 "));
    EXPECT_FALSE(job().benchLine().offers().isVisible());
    QTest::keyClicks(&line(), QStringLiteral("0.6 g koz"));
    ASSERT_TRUE(job().benchLine().offers().isVisible());
    QTest::keyClick(&line(), Qt::Key_Escape); // sends the offers away, and nothing else
    EXPECT_EQ(line().text(), QStringLiteral("guarded K7 31-006 0.6 g koz"));
}

// The lot's name holds the word: it stays as it was typed, and Tab goes on.
TEST_F(BenchWorkTest, aWordThatStandsWholeIsNotReplacedUntilAnOfferIsChosen) {
    press(ActionId::toBenchLine);
    QTest::keyClicks(&line(), QStringLiteral("guarded K7 paste"));
    ASSERT_TRUE(job().benchLine().offers().isVisible());
    EXPECT_FALSE(job().benchLine().offers().isTakenByTab());
    QTest::keyClick(&line(), Qt::Key_Tab);
    EXPECT_EQ(line().text(), QStringLiteral("guarded K7 paste"));
    line().setFocus();
    QTest::keyClick(&line(), Qt::Key_Backspace);
    ASSERT_TRUE(job().benchLine().offers().isVisible());
    QTest::keyClick(&line(), Qt::Key_Tab);
    EXPECT_EQ(line().text(), QStringLiteral("guarded K7 31-006 "));
}

TEST_F(BenchWorkTest, aScannedLabelDropsIntoTheLineAndItsEnterTakesNothing) {
    qint64 elapsed = 0;
    job().benchLine().setStopwatch([&] { return elapsed; });
    const std::size_t before = file().steps.size();
    press(ActionId::toBenchLine);
    for (const QChar key : QStringLiteral("guarded K7 with")) {
        elapsed += 120; // a hand
        QTest::keyClicks(&line(), QString{key});
    }
    elapsed += 4'000;
    for (const QChar key : QStringLiteral("31-006")) {
        elapsed += 4; // a scanner
        QTest::keyClicks(&line(), QString{key});
    }
    elapsed += 4;
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(file().steps.size(), before);
    EXPECT_EQ(line().text(), QStringLiteral("guarded K7 with 31-006 "));
    elapsed += 500;
    QTest::keyClicks(&line(), QStringLiteral("0.6 g"));
    elapsed += 500;
    QTest::keyClick(&line(), Qt::Key_Return);
    ASSERT_EQ(file().steps.size(), before + 1);
    EXPECT_EQ(file().usesOf(file().steps.back()).size(), 1U);
}

TEST_F(BenchWorkTest, whatIsScannedWithTheCursorInTheLogGoesIntoTheLine) {
    page().log().setFocus();
    QTest::keyClicks(&page().log(), QStringLiteral("3"));
    EXPECT_TRUE(line().hasFocus());
    EXPECT_EQ(line().text(), QStringLiteral("3"));
}

// An overdue lot is not used without a word why; the reason goes into the record.
TEST_F(BenchWorkTest, aLotPastItsDateAsksForTheReasonInTheLine) {
    letThePasteGoOff();
    const std::size_t before = file().steps.size();
    QLineEdit& reason = job().benchLine().reason();
    say("guarded K7 with 31-006 0.6 g 18 min");
    EXPECT_EQ(file().steps.size(), before) << "not without the reason";
    ASSERT_TRUE(reason.hasFocus());
    QTest::keyClick(&reason, Qt::Key_Return);
    EXPECT_EQ(file().steps.size(), before);
    QTest::keyClick(&reason, Qt::Key_Escape);
    EXPECT_TRUE(line().hasFocus());
    EXPECT_FALSE(line().text().isEmpty()) << "Esc loses nothing";
    QTest::keyClick(&line(), Qt::Key_Return);
    QTest::keyClicks(&reason, QStringLiteral("smells sweet, spreads well"));
    QTest::keyClick(&reason, Qt::Key_Return);
    const auto now = file();
    ASSERT_EQ(now.steps.size(), before + 1);
    EXPECT_EQ(now.usesOf(now.steps.back()).front()->overrideReason, "smells sweet, spreads well");
    EXPECT_TRUE(line().text().isEmpty());
    EXPECT_FALSE(reason.isVisible());
}

TEST_F(BenchWorkTest, theFormAsksForTheReasonToo) {
    letThePasteGoOff();
    const std::size_t before = file().steps.size();
    page().log().setFocus();
    press(ActionId::addRecord);
    type(page().form().fields().form(), QStringLiteral("Technique"), QStringLiteral("Guarding"));
    page().form().uses().addBlank();
    FormBase& use = page().form().uses().rows().front()->form();
    type(use, QStringLiteral("Lot"), QStringLiteral("31-006"));
    press(ActionId::logStep);
    EXPECT_EQ(file().steps.size(), before);
    type(use, QStringLiteral("Used because"), QStringLiteral("smells sweet"));
    press(ActionId::logStep);
    ASSERT_EQ(file().steps.size(), before + 1);
    EXPECT_EQ(file().uses.back().overrideReason, "smells sweet");
}

// Ten steps of a morning, logged without a mouse: by lines, by a form, one corrected, one struck.
TEST_F(BenchWorkTest, aMorningOfTenStepsIsLoggedByKeysAlone) {
    const std::size_t before = file().steps.size();
    const core::Instant nine = sample.clock.at;
    const char* const kLines[]{
        "cleaned spine 31-011 12 g 45 min",
        "removed spine lining, kept in envelope 2 15 min",
        "guarded K7 with 31-006 0.6 g 18 min sets 45 min",
        "guarded K8 with 31-006 0.6 g 16 min sets 45 min",
        "mended tears B2, C5 29-102 0.2 sheets 31-006 1 g 35 min by TV",
        "lined spine 29-102 1 sheet 31-006 5 g 40 min sets 4 h",
        "incident: paste on the lower board, wiped at once",
    };
    for (const char* words : kLines) {
        say(words);
        EXPECT_TRUE(line().text().isEmpty()) << words;
        pass(core::Minutes{20});
    }
    ASSERT_EQ(file().steps.size(), before + 7);
    page().log().setFocus();
    press(ActionId::addRecord);
    ASSERT_TRUE(page().form().isVisible());
    FormBase& form = page().form().fields().form();
    type(form, QStringLiteral("Technique"), QStringLiteral("Pressing"));
    type(form, QStringLiteral("Where"), QStringLiteral("text block"));
    type(form, QStringLiteral("Took"), QStringLiteral("10 min"));
    type(form, QStringLiteral("Pressure"), QStringLiteral("under 6 kg"));
    press(ActionId::logStep);
    EXPECT_EQ(file().steps.back().pressure, "under 6 kg");
    say("mended B3 31-006 0.1 g 5 min"); // which was B4
    const core::Id<core::Step> wrong = file().steps.back().id;
    page().log().select(wrong.uuid());
    page().log().setFocus();
    QTest::keyClick(&page().log(), Qt::Key_Return);
    QTest::keyClick(&page().details().correct(), Qt::Key_Space);
    type(form, QStringLiteral("Where"), QStringLiteral("B4"));
    QTest::keyClicks(page().form().reason().control(), QStringLiteral("it was B4"));
    press(ActionId::logStep);
    const auto now = file();
    ASSERT_EQ(now.steps.size(), before + 10);
    EXPECT_EQ(now.step(wrong)->struckWhy, "it was B4");
    EXPECT_EQ(now.settings.size(), 3U);
    core::Minutes worked{0};
    for (const core::Step& step : now.steps) {
        worked +=
            !step.struckAt && step.at > nine - core::Minutes{60} ? step.minutes : core::Minutes{0};
    }
    EXPECT_EQ(worked, core::Minutes{45 + 15 + 18 + 16 + 35 + 40 + 10 + 5});
}

} // namespace
} // namespace headcap::app
