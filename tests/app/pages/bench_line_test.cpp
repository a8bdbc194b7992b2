// The bench line and the large buttons against what the owner approved.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>

#include "app/form/ruled_table.h"
#include "app/look/fold_heading.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/step_fields.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/work_button.h"
#include "app/pages/bench_page.h"
#include "app/shell/chip_row.h"
#include "app/shell/line_offers.h"
#include "core/treatment/approval.h"
#include "core/treatment/clocks.h"
#include "tests/app/pages/page_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class BenchLineTest : public PageTest<BenchPage> {
protected:
    BenchLineTest() {
        // As a keeper words it: no leaf, and no part of a book that the reader knows by itself.
        for (auto& line : core::all<core::ProposalLine>(sample.store)) {
            if (line.record.technique == "tear_mending") {
                line.record.place = "SR 11, 12, 19";
                sample.store.changeElsewhere(line.record);
            }
        }
        session.poll();
        EXPECT_TRUE(open(*sample.grafting, core::Page::bench));
    }
    QLineEdit& line() { return job().benchLine().line(); }
    void write(const char* words) {
        press(ActionId::toBenchLine);
        line().clear();
        QTest::keyClicks(&line(), QString::fromUtf8(words));
    }
    QString parts() { return job().benchLine().findChild<ChipRow*>()->accessibleName(); }
    QStringList titles() {
        QStringList all;
        for (const WorkButton* one : page().lines().buttons()) {
            all << one->title();
        }
        return all;
    }
};

TEST_F(BenchLineTest, aPlaceOfAnApprovedLineIsAPartBeforeEnterAndThePlaceOfTheStep) {
    write("mended SR 11 20 min");
    EXPECT_TRUE(parts().contains(QStringLiteral("place SR 11"))) << parts().toStdString();
    EXPECT_FALSE(parts().contains(QStringLiteral("note")));
    QTest::keyClick(&line(), Qt::Key_Return);
    const core::JobFile after = file();
    const core::Step& step = after.steps.back();
    EXPECT_EQ(step.place, "SR 11");
    EXPECT_EQ(step.description, "");
    const auto approved = core::approvedLines(after);
    const auto mends = std::ranges::find(approved, "tear_mending", &core::ProposalLine::technique);
    ASSERT_NE(mends, approved.end());
    EXPECT_EQ(step.line, (*mends)->id);
}

TEST_F(BenchLineTest, wordsLeftOverAreAPartBeforeEnter) {
    write("mended SR 11 beside the old repair 20 min");
    EXPECT_TRUE(parts().contains(QStringLiteral("note beside the old repair")))
        << parts().toStdString();
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(file().steps.back().description, "beside the old repair");
}

TEST_F(BenchLineTest, workThatNoLineCoversIsSaidToBeSoBeforeEnter) {
    write("boxed 20 min");
    EXPECT_TRUE(parts().contains(QStringLiteral("approved no line covers it")))
        << parts().toStdString();
    write("mended SR 12 20 min");
    EXPECT_FALSE(parts().contains(QStringLiteral("no line covers it")));
    EXPECT_FALSE(parts().contains(QStringLiteral("approved for")));
    write("mended F3 20 min"); // the owner approved other places
    EXPECT_TRUE(parts().contains(QStringLiteral("approved for SR 11, 12, 19")))
        << parts().toStdString();
}

TEST_F(BenchLineTest, whatCameOffAndWhatIsOfEachIsToldBeforeEnter) {
    write("lifted old spine lining, kept in envelope 2");
    EXPECT_TRUE(parts().contains(QStringLiteral("technique Removing earlier material")))
        << parts().toStdString();
    EXPECT_TRUE(parts().contains(QStringLiteral("became of it kept in envelope 2")));
    write("mended SR 11 SR 12 20 min each");
    EXPECT_TRUE(parts().contains(QStringLiteral("time in all? 20 min each")))
        << parts().toStdString();
    const auto before = file().steps.size();
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(file().steps.size(), before) << "it asks first";
}

// Nothing is put on a book that its record does not name.
TEST_F(BenchLineTest, aSubstanceWithoutALotIsAPartAndIsAskedAbout) {
    const auto before = file().steps.size();
    write("mended SR 11 EVA 2 g 20 min");
    EXPECT_TRUE(parts().contains(QStringLiteral("material, no lot EVA 2 g")))
        << parts().toStdString();
    QTest::keyClick(&line(), Qt::Key_Return); // its way of coming off is not the usual one
    EXPECT_EQ(file().steps.size(), before);
    EXPECT_FALSE(line().text().isEmpty());
    write("mended SR 11 20 min");
    EXPECT_TRUE(parts().contains(QStringLiteral("material none named"))) << parts().toStdString();
}

TEST_F(BenchLineTest, whereTheUsualWordsWouldNotBeTrueItIsAskedHowItIsUndone) {
    const auto before = file().steps.size();
    write("reattached boards 31-006 2 g 1 h");
    EXPECT_TRUE(parts().contains(QStringLiteral("speaks of tissue, and none is used")))
        << parts().toStdString();
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(file().steps.size(), before);
    QLineEdit& answer = job().benchLine().reason();
    ASSERT_TRUE(answer.isVisible());
    answer.setText(QStringLiteral("The paste is softened at the joint."));
    QTest::keyClick(&answer, Qt::Key_Return);
    ASSERT_EQ(file().steps.size(), before + 1);
    const auto steps = file().steps;
    const auto step = std::ranges::find(steps, "board_reattaching", &core::Step::technique);
    ASSERT_NE(step, steps.end());
    EXPECT_EQ(step->undoing, "The paste is softened at the joint.");
    EXPECT_TRUE(line().text().isEmpty());
}

TEST_F(BenchLineTest, workOnAPassedBookSaysThatItGoesBackToTheBench) {
    core::Job passed = file().job;
    passed.state = core::JobState::passed;
    sample.store.changeElsewhere(passed);
    session.poll();
    write("mended SR 11 31-006 1 g 20 min");
    EXPECT_TRUE(parts().contains(QStringLiteral("goes back to the bench")))
        << parts().toStdString();
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(file().job.state, core::JobState::atTheBench);
}

TEST_F(BenchLineTest, thePlaceIsOfferedAsItIsTyped) {
    write("mended S");
    const LineOffer* offer = job().benchLine().offers().current();
    ASSERT_NE(offer, nullptr);
    EXPECT_EQ(offer->text, QStringLiteral("SR 11, 12, 19"));
    QTest::keyClick(&line(), Qt::Key_Tab);
    EXPECT_EQ(line().text().trimmed(), QStringLiteral("mended SR 11, 12, 19"));
}

TEST_F(BenchLineTest, theButtonsKeepTheProposalsOrderAfterEachStep) {
    const QStringList before = titles();
    ASSERT_GE(before.size(), 3);
    for (const char* said : {"rebacked spine 20 min", "mended SR 12 5 min", "guarded K7 5 min"}) {
        write(said);
        QTest::keyClick(&line(), Qt::Key_Return);
        EXPECT_TRUE(line().text().isEmpty()) << said;
        EXPECT_EQ(titles(), before) << said;
    }
}

TEST_F(BenchLineTest, aClockRunsInThePlaceOfItsLine) {
    const QStringList before = titles();
    WorkButton* second = page().lines().buttons().at(1);
    QTest::mouseClick(second, Qt::LeftButton);
    EXPECT_EQ(titles(), before);
    EXPECT_EQ(page().lines().buttons().at(1)->mark(), WorkButton::Mark::stops);
}

// What is pressed stays under the hand: a second Enter stops what the first one started.
TEST_F(BenchLineTest, theButtonPressedKeepsTheFocusThoughTheButtonsAreMadeAnew) {
    tests::settle();
    WorkButton* button = page().lines().buttons().at(1);
    button->setFocus();
    ASSERT_TRUE(button->hasFocus());
    QTest::keyClick(button, Qt::Key_Space);
    ASSERT_EQ(core::runningClocks(file()).size(), 1U);
    EXPECT_TRUE(page().lines().buttons().at(1)->hasFocus());
    QTest::keyClick(page().lines().buttons().at(1), Qt::Key_Space);
    EXPECT_TRUE(core::runningClocks(file()).empty());
}

TEST_F(BenchLineTest, aClockTouchedByMistakeCanBeDroppedWithItsMinutes) {
    QTest::mouseClick(page().lines().buttons().at(0), Qt::LeftButton);
    sample.clock.at += core::Minutes{3};
    page().lines().tick();
    QTest::mouseClick(page().lines().buttons().at(0), Qt::LeftButton);
    ASSERT_TRUE(page().form().dropClock().isVisible());
    QTest::mouseClick(&page().form().dropClock(), Qt::LeftButton);
    EXPECT_TRUE(core::clocksToLog(file()).empty());
    EXPECT_TRUE(core::runningClocks(file()).empty());
    EXPECT_FALSE(page().form().isWriting());
    press(ActionId::addRecord);
    EXPECT_FALSE(page().form().dropClock().isVisible()) << "a step without a clock";
}

TEST_F(BenchLineTest, aLowWindowKeepsItsRoomForTheLog) {
    tests::settle();
    const auto high = page().lines().height();
    window.resize(1024, 700);
    tests::settle();
    EXPECT_LT(page().lines().height(), high);
    EXPECT_EQ(page().lines().buttons().size(), 1U);
    EXPECT_GT(page().log().height(), 250);
}

TEST_F(BenchLineTest, theFormShowsTheConditionsOfWhatWetsAndTheRestOnDemand) {
    page().log().setFocus();
    press(ActionId::addRecord);
    StepForm& form = page().form();
    FieldRow* warmth = form.fields().form().rowLabelled(QStringLiteral("Temperature"));
    FieldRow* strength = form.fields().form().rowLabelled(QStringLiteral("Strength"));
    type(form.fields().form(), QStringLiteral("Technique"),
         QStringLiteral("Humidifying and flattening"));
    EXPECT_TRUE(warmth->isVisible());
    EXPECT_FALSE(strength->isVisible());
    type(form.fields().form(), QStringLiteral("Technique"),
         QStringLiteral("Tooling and lettering"));
    EXPECT_FALSE(warmth->isVisible());
    FoldHeading& conditions = form.fields().heading(StepFields::Fold::conditions);
    QTest::keyClick(&conditions, Qt::Key_Space);
    EXPECT_TRUE(warmth->isVisible());
    EXPECT_TRUE(strength->isVisible());
    type(form.fields().form(), QStringLiteral("Strength"), QStringLiteral("2 %"));
    QTest::keyClick(&conditions, Qt::Key_Space); // folded, it says what it holds
    conditions.setFocus();
    QTest::keyClick(&conditions, Qt::Key_Space);
    QTest::keyClick(&conditions, Qt::Key_Space);
    EXPECT_FALSE(strength->isVisible());
    EXPECT_EQ(conditions.summary(), QStringLiteral("2 %"));
}

} // namespace
} // namespace headcap::app
