#include "app/pages/bench_page.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include "app/form/moment.h"
#include "app/form/ruled_table.h"
#include "app/look/fold_heading.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/setting_strip.h"
#include "app/pages/bench/step_details.h"
#include "app/pages/bench/step_fields.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/use_row.h"
#include "app/pages/bench/uses_editor.h"
#include "core/materials/shelf.h"
#include "tests/app/pages/page_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class BenchPageTest : public PageTest<BenchPage> {
protected:
    BenchPageTest() { EXPECT_TRUE(open(*sample.grafting, core::Page::bench)); }
    FormBase& form() { return page().form().fields().form(); }
    std::size_t rowsOf(const core::Step& step) {
        return page().log().rows().rowOf(step.id.uuid()) >= 0 ? 1 : 0;
    }
    // The balance of the paste on the shelf.
    core::Amount paste() {
        const core::Shelf shelf = core::loadShelf(sample.store);
        return *shelf.balanceOf(shelf.numbered("31-006")->id);
    }
    void chooseFirst() {
        page().log().setFocus();
        QTest::keyClick(&page().log(), Qt::Key_Home);
        QTest::keyClick(&page().log(), Qt::Key_Return);
    }
};

TEST_F(BenchPageTest, showsEveryStepOfTheLogUnderItsDay) {
    for (const core::Step& step : file().steps) {
        EXPECT_EQ(rowsOf(step), 1U);
    }
    EXPECT_FALSE(page().log().rows().row(0).id.has_value());
    EXPECT_EQ(page().log().rows().row(0).title.text.toStdString().substr(0, 10), "Wednesday ");
}

TEST_F(BenchPageTest, aLineTakenStandsInTheLogAtOnce) {
    const std::size_t before = file().steps.size();
    press(ActionId::toBenchLine);
    QLineEdit& line = job().benchLine().line();
    QTest::keyClicks(&line, QStringLiteral("guarded K7 with 31-006 0.6 g 18 min"));
    QTest::keyClick(&line, Qt::Key_Return);
    const auto now = file();
    ASSERT_EQ(now.steps.size(), before + 1);
    EXPECT_EQ(page().log().fresh(), now.steps.back().id.uuid());
    const int row = page().log().rows().rowOf(now.steps.back().id.uuid());
    ASSERT_GE(row, 0);
    const QRect seen = page().log().visualRect(page().log().model()->index(row, 0));
    EXPECT_TRUE(page().log().viewport()->rect().contains(seen));
}

TEST_F(BenchPageTest, aWholeStepIsLoggedByKeysAlone) {
    const std::size_t before = file().steps.size();
    const core::Amount had = paste();
    press(ActionId::addRecord);
    ASSERT_TRUE(page().form().isVisible());
    type(form(), QStringLiteral("Technique"), QStringLiteral("Guarding"));
    type(form(), QStringLiteral("Where"), QStringLiteral("K7"));
    type(form(), QStringLiteral("Took"), QStringLiteral("18 min"));
    page().form().uses().addBlank();
    UseRow* use = page().form().uses().rows().front();
    type(use->form(), QStringLiteral("Lot"), QStringLiteral("31-006"));
    type(use->form(), QStringLiteral("Amount"), QStringLiteral("0.6 g"));
    press(ActionId::logStep);
    const auto now = file();
    ASSERT_EQ(now.steps.size(), before + 1);
    const core::Step& step = now.steps.back();
    EXPECT_EQ(step.technique, "guarding");
    EXPECT_EQ(step.place, "K7");
    EXPECT_EQ(step.minutes, core::Minutes{18});
    EXPECT_EQ(step.at, sample.clock.now() - core::Minutes{18});
    EXPECT_EQ(step.who, *sample.orrin);
    EXPECT_NE(step.reversibility, core::Reversibility::unknown);
    ASSERT_EQ(now.usesOf(step).size(), 1U);
    EXPECT_EQ(now.usesOf(step).front()->place, "K7");
    EXPECT_EQ(paste().count, had.count - 600'000);
    EXPECT_FALSE(page().form().isWriting());
}

TEST_F(BenchPageTest, whereNoTimeIsSaidItTookUntilNow) {
    press(ActionId::addRecord);
    type(form(), QStringLiteral("Where"), QStringLiteral("spine"));
    const core::Instant begun = sample.clock.at;
    sample.clock.at += core::Minutes{23};
    press(ActionId::logStep);
    EXPECT_EQ(file().steps.back().minutes, core::Minutes{23});
    EXPECT_EQ(file().steps.back().at, begun);
}

TEST_F(BenchPageTest, aStrikeAsksForItsReasonAndGivesTheMaterialBack) {
    press(ActionId::toBenchLine);
    QTest::keyClicks(&job().benchLine().line(),
                     QStringLiteral("guarded K7 with 31-006 0.6 g 18 min"));
    const core::Amount had = paste();
    QTest::keyClick(&job().benchLine().line(), Qt::Key_Return);
    const core::Id<core::Step> id = file().steps.back().id;
    page().log().select(id.uuid());
    page().log().setFocus();
    press(ActionId::removeRecord);
    QLineEdit& reason = page().details().reason();
    EXPECT_TRUE(reason.hasFocus());
    QTest::keyClick(&reason, Qt::Key_Return);
    EXPECT_FALSE(file().step(id)->struckAt.has_value()); // not without a word why
    QTest::keyClicks(&reason, QStringLiteral("wrong lot"));
    QTest::keyClick(&reason, Qt::Key_Return);
    ASSERT_TRUE(file().step(id)->struckAt.has_value());
    EXPECT_EQ(file().step(id)->struckWhy, "wrong lot");
    EXPECT_EQ(paste(), had);
    EXPECT_TRUE(page().log().rows().row(page().log().rows().rowOf(id.uuid())).isStruck);
    EXPECT_FALSE(page().details().strike().isVisible());
}

TEST_F(BenchPageTest, aCorrectionIsAFurtherStepTiedToTheOneItCorrects) {
    chooseFirst();
    const core::Id<core::Step> old = *page().details().step();
    const core::Step was = *file().step(old);
    const std::size_t before = file().steps.size();
    QTest::keyClick(&page().details().correct(), Qt::Key_Space);
    ASSERT_TRUE(page().form().isWriting());
    type(form(), QStringLiteral("Where"), QStringLiteral("spine, head"));
    press(ActionId::logStep);
    EXPECT_EQ(file().steps.size(), before); // not without a word why
    QTest::keyClicks(page().form().reason().control(), QStringLiteral("it was the head only"));
    press(ActionId::logStep);
    const auto now = file();
    ASSERT_EQ(now.steps.size(), before + 1);
    EXPECT_EQ(now.step(old)->struckWhy, "it was the head only");
    core::Step expected = was;
    EXPECT_EQ(now.step(old)->place, expected.place); // what it said stays
    const auto rightly = std::find_if(now.steps.begin(), now.steps.end(),
                                      [&](const auto& step) { return step.corrects == old; });
    ASSERT_NE(rightly, now.steps.end());
    EXPECT_EQ(rightly->place, "spine, head");
    EXPECT_EQ(rightly->at, was.at);
    EXPECT_EQ(rightly->minutes, was.minutes);
    EXPECT_TRUE(page().log().rows().row(page().log().rows().rowOf(rightly->id.uuid())).isTied);
}

TEST_F(BenchPageTest, aRemovalAsksWhatBecameOfIt) {
    const std::size_t before = file().steps.size();
    press(ActionId::addRecord);
    QTest::keyClick(&page().form().fields().heading(StepFields::Fold::kind), Qt::Key_Space);
    FieldRow* kind = form().rowLabelled(QStringLiteral("Kind"));
    ASSERT_TRUE(kind->isVisible());
    qobject_cast<QComboBox*>(kind->control())->setFocus();
    while (kind->text().toInt() != static_cast<int>(core::StepKind::removal)) {
        QTest::keyClick(kind->control(), Qt::Key_Down);
    }
    type(form(), QStringLiteral("Where"), QStringLiteral("spine"));
    ASSERT_TRUE(form().rowLabelled(QStringLiteral("Taken out"))->isVisible());
    type(form(), QStringLiteral("Taken out"), QStringLiteral("two linings"));
    press(ActionId::logStep);
    EXPECT_EQ(file().steps.size(), before);
    FieldRow* fate = form().rowLabelled(QStringLiteral("Became of it"));
    EXPECT_TRUE(fate->hasError());
    EXPECT_TRUE(fate->control()->hasFocus());
    QTest::keyClicks(fate->control(), QStringLiteral("kept in envelope 2"));
    press(ActionId::logStep);
    ASSERT_EQ(file().steps.size(), before + 1);
    EXPECT_EQ(file().steps.back().removedFate, "kept in envelope 2");
}

TEST_F(BenchPageTest, aStepThatIsBeingWrittenOutlastsTheWindow) {
    press(ActionId::addRecord);
    type(form(), QStringLiteral("Where"), QStringLiteral("K7"));
    page().form().uses().addBlank();
    type(page().form().uses().rows().front()->form(), QStringLiteral("Lot"),
         QStringLiteral("31-006"));
    EXPECT_TRUE(window.close());
    EXPECT_EQ(sample.store.changes(), 0U);

    Session again{sample.means()};
    MainWindow second{again};
    second.setVisible(true);
    ASSERT_TRUE(
        second.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench}));
    auto& page = *qobject_cast<BenchPage*>(qobject_cast<JobView*>(second.current())->currentPage());
    ASSERT_TRUE(page.form().isWriting());
    EXPECT_EQ(page.form().draft()->logged.step.place, "K7");
    ASSERT_EQ(page.form().uses().rows().size(), 1U);
    EXPECT_TRUE(page.form().draft()->logged.uses.front().lot.has_value());
    // Of another job there is none.
    ASSERT_TRUE(second.go({.view = ViewId::job, .job = sample.hymnal, .page = core::Page::bench}));
    EXPECT_FALSE(page.form().isWriting());
}

TEST_F(BenchPageTest, whatIsDroppedIsNotLogged) {
    press(ActionId::addRecord);
    type(form(), QStringLiteral("Where"), QStringLiteral("K7"));
    QTest::keyClick(&page().form().dropIt(), Qt::Key_Space);
    EXPECT_FALSE(page().form().isWriting());
    EXPECT_EQ(sample.store.changes(), 0U);
}

TEST_F(BenchPageTest, aRefusedStepStaysInTheForm) {
    press(ActionId::addRecord);
    press(ActionId::logStep); // says nothing
    EXPECT_TRUE(page().form().isWriting());
    EXPECT_EQ(sample.store.changes(), 0U);
    type(form(), QStringLiteral("Where"), QStringLiteral("K7"));
    sample.store.failNext = core::StoreError::Code::diskFull;
    press(ActionId::logStep);
    EXPECT_TRUE(page().form().isWriting());
    press(ActionId::logStep);
    EXPECT_FALSE(page().form().isWriting());
}

TEST_F(BenchPageTest, settingTimesSayUntilWhenAndWhenTheyAreOver) {
    auto* strip = page().findChild<SettingStrip*>();
    ASSERT_NE(strip, nullptr);
    auto* row = strip->findChild<SettingRow*>();
    ASSERT_NE(row, nullptr);
    EXPECT_TRUE(row->accessibleName().contains(QStringLiteral("until 15:40")))
        << row->accessibleName().toStdString();
    EXPECT_TRUE(row->accessibleName().contains(QStringLiteral("1 h 52 min left")));
    sample.clock.at += std::chrono::hours{3};
    strip->tick();
    EXPECT_TRUE(row->accessibleName().contains(QStringLiteral("since 15:40")));
}

TEST_F(BenchPageTest, escStepsBackAndKeepsWhatIsWritten) {
    press(ActionId::addRecord);
    type(form(), QStringLiteral("Where"), QStringLiteral("K7"));
    QTest::keyClick(form().rowLabelled(QStringLiteral("Technique"))->control(), Qt::Key_Escape);
    EXPECT_FALSE(page().form().isVisible());
    EXPECT_EQ(window.currentId(), ViewId::job);
    press(ActionId::addRecord);
    EXPECT_TRUE(page().form().isVisible());
    EXPECT_EQ(page().form().draft()->logged.step.place, "K7");
}

TEST_F(BenchPageTest, controlsAreLargeEnoughForAKnuckle) {
    press(ActionId::addRecord);
    page().form().uses().addBlank();
    tests::settle();
    for (QPushButton* button : page().findChildren<QPushButton*>()) {
        if (button->isVisible()) {
            EXPECT_GE(button->height(), 48) << button->text().toStdString();
        }
    }
    for (FieldRow* row : page().findChildren<FieldRow*>()) {
        if (row->isVisible()) {
            EXPECT_GE(row->control()->height(), 48) << row->label().toStdString();
        }
    }
}

// By Esc one is back on the button that asked for the reason.
TEST_F(BenchPageTest, escFromTheReasonOfAStrikeGoesBackToItsButton) {
    chooseFirst();
    page().details().strike().setFocus();
    QTest::keyClick(&page().details().strike(), Qt::Key_Space);
    ASSERT_TRUE(page().details().reason().hasFocus());
    QTest::keyClick(&page().details().reason(), Qt::Key_Escape);
    EXPECT_FALSE(page().details().reason().isVisible());
    EXPECT_TRUE(page().details().strike().hasFocus());
}

// What every step needs stands first and is come to first by Tab; the rest says what it holds.
TEST_F(BenchPageTest, theFormBeginsWithWhatEveryStepNeeds) {
    press(ActionId::addRecord);
    type(form(), QStringLiteral("Technique"), QStringLiteral("Guarding"));
    tests::settle();
    QStringList come;
    for (int i = 0; i < 6; ++i) {
        come << QApplication::focusWidget()->accessibleName();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    EXPECT_EQ(come.mid(0, 5).join(QStringLiteral(", ")).toStdString(),
              "Technique, Where, Took, Lot, Amount");
    EXPECT_FALSE(form().rowLabelled(QStringLiteral("Begun"))->isVisible());
    const FoldHeading& when = page().form().fields().heading(StepFields::Fold::when);
    EXPECT_TRUE(when.summary().contains(QStringLiteral("M. Orrin")))
        << when.summary().toStdString();
    // Guarding dries, and wets no leaf: its conditions are folded.
    EXPECT_FALSE(form().rowLabelled(QStringLiteral("Humidity"))->isVisible());
    EXPECT_TRUE(form().rowLabelled(QStringLiteral("Sets for"))->isVisible());
}

// What the panel would like to have makes no page scroll where there is room for what it needs.
TEST_F(BenchPageTest, aPageThatHasRoomEnoughDoesNotScroll) {
    press(ActionId::addRecord);
    tests::settle();
    auto* scroll = page().findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    EXPECT_EQ(scroll->verticalScrollBar()->maximum(), 0);
    window.resize(1024, 640);
    tests::settle();
    EXPECT_GT(scroll->verticalScrollBar()->maximum(), 0);
}

// In a low window the page scrolls: log and panel keep a height one can work in.
TEST_F(BenchPageTest, theLogKeepsItsHeightInALowWindow) {
    window.resize(1024, 640);
    press(ActionId::addRecord);
    tests::settle();
    EXPECT_GE(page().form().height(), 360);
    page().log().setFocus();
    EXPECT_GE(page().log().height(), 300);
}

TEST_F(BenchPageTest, anEmptyLogSaysWhatBelongsThere) {
    ASSERT_TRUE(open(*sample.hymnal, core::Page::bench));
    EXPECT_FALSE(page().log().isVisible());
    EXPECT_TRUE(page().lines().add().isVisible());
}

TEST(Moment, readsWhatItPrints) {
    const tests::FixedClock clock;
    for (const int hours : {0, 3, 26, 400, 9'000}) {
        const core::Instant at = clock.now() - std::chrono::hours{hours};
        const auto read = readMoment(momentText(at, clock), clock);
        ASSERT_TRUE(read.has_value()) << hours;
        EXPECT_EQ(std::chrono::floor<core::Minutes>(*read), std::chrono::floor<core::Minutes>(at));
    }
    EXPECT_FALSE(readMoment(QStringLiteral("half past two"), clock).has_value());
    EXPECT_FALSE(readMoment(QStringLiteral("25:10"), clock).has_value());
}

} // namespace
} // namespace headcap::app
