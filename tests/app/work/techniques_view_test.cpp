#include "app/work/techniques_view.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/form/field_row.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "tests/app/work/window_test.h"

namespace headcap::app {
namespace {

class TechniquesViewTest : public WindowTest {
protected:
    TechniquesViewTest() { press(ActionId::techniques); }
    TechniquesView& view() { return *qobject_cast<TechniquesView*>(window.current()); }
    std::vector<core::Stored<core::HouseTechnique>> own() {
        return core::all<core::HouseTechnique>(sample.store);
    }
    void write(const char* label, const char* words) {
        FieldRow* row = view().form().rowLabelled(QString::fromUtf8(label));
        ASSERT_NE(row, nullptr) << label;
        row->control()->setFocus();
        QTest::keyClick(row->control(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(row->control(), QString::fromUtf8(words));
        QTest::keyClick(row->control(), Qt::Key_Tab);
        QCoreApplication::processEvents(); // it is saved once the field has been left
    }
    // Chooses by the filter, as one would.
    void choose(const char* words) {
        view().filter().setFocus();
        view().filter().selectAll();
        QTest::keyClicks(&view().filter(), QString::fromUtf8(words));
        QTest::keyClick(&view().filter(), Qt::Key_Return);
        QTest::keyClick(&view().list(), Qt::Key_Home);
    }
    QString said(const char* label) {
        return view().form().rowLabelled(QString::fromUtf8(label))->text();
    }
    bool doesTheLineRead(const char* line, const char* technique) {
        window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
        press(ActionId::toBenchLine);
        auto& bench = qobject_cast<JobView*>(window.current())->benchLine();
        QTest::keyClicks(&bench.line(), QString::fromUtf8(line));
        QTest::keyClick(&bench.line(), Qt::Key_Return);
        QTest::keyClick(&bench.line(), Qt::Key_Return); // of words without a technique too
        return file().steps.back().technique == technique;
    }
};

TEST_F(TechniquesViewTest, showsEveryTechniqueWithWhatItAsksFor) {
    EXPECT_EQ(view().list().rows().rowCount(), static_cast<int>(core::techniques().size()));
    choose("tipping in");
    EXPECT_EQ(said("Name"), QStringLiteral("Tipping in"));
    const core::Technique& tipping = *core::TechniquesInForce{}.named("tipping_in");
    EXPECT_EQ(said("Checks"), fromCore(core::asLines(tipping.checks)));
    EXPECT_EQ(said("How"), fromCore(tipping.undoing));
    EXPECT_TRUE(own().empty()) << "looking changes nothing";
}

TEST_F(TechniquesViewTest, aValueChangedMakesItTheWorkshopsWayAndTakenBackItIsAsItShips) {
    choose("guarding");
    write("Usually takes", "7 min");
    ASSERT_EQ(own().size(), 1U);
    EXPECT_EQ(own().front().record.key, "guarding");
    EXPECT_EQ(own().front().record.minutes, core::Minutes{7});
    EXPECT_EQ(own().front().record.checks,
              core::asLines(core::TechniquesInForce{}.named("guarding")->checks));
    EXPECT_EQ(core::loadTechniques(sample.store).named("guarding")->minutes, core::Minutes{7});
    view().list().setFocus();
    press(ActionId::removeRecord);
    EXPECT_TRUE(own().empty());
    EXPECT_EQ(said("Name"), QStringLiteral("Guarding"));
    press(ActionId::undo);
    EXPECT_EQ(own().size(), 1U);
}

TEST_F(TechniquesViewTest, oneOfOurOwnIsReadInTheBenchLineAtOnce) {
    press(ActionId::addRecord);
    write("Name", "Drumming on vellum");
    write("Said as", "drummed on");
    write("Usually takes", "40 min");
    ASSERT_EQ(own().size(), 1U);
    EXPECT_EQ(own().front().record.key, "drumming_on_vellum");
    EXPECT_EQ(view().list().rows().rowCount(), static_cast<int>(core::techniques().size()) + 1);
    EXPECT_TRUE(doesTheLineRead("drummed on upper board 45 min", "drumming_on_vellum"));
}

TEST_F(TechniquesViewTest, whatStandsInTheLogIsNoLongerOfferedAndKeepsItsName) {
    press(ActionId::addRecord);
    write("Name", "Drumming on vellum");
    ASSERT_TRUE(doesTheLineRead("drumming on vellum upper board", "drumming_on_vellum"));
    press(ActionId::techniques);
    choose("drumming");
    press(ActionId::removeRecord);
    ASSERT_EQ(own().size(), 1U);
    EXPECT_TRUE(own().front().record.retired);
    EXPECT_EQ(file().techniques.nameOf("drumming_on_vellum"), "Drumming on vellum");
    EXPECT_FALSE(doesTheLineRead("drumming on vellum lower board", "drumming_on_vellum"));
}

TEST_F(TechniquesViewTest, escGoesFromTheFormToTheListAndOutAgain) {
    choose("guarding");
    key(Qt::Key_Return);
    EXPECT_FALSE(view().list().hasFocus());
    press(ActionId::back);
    EXPECT_TRUE(view().list().hasFocus());
    press(ActionId::back);
    EXPECT_EQ(window.currentId(), ViewId::worklist);
}

} // namespace
} // namespace headcap::app
