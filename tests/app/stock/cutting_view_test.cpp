// Cutting, by keys, with a look at the store.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/ruled_list.h"
#include "app/stock/cutting_plan_widget.h"
#include "app/stock/cutting_view.h"
#include "app/stock/piece_list.h"
#include "app/stock/plain_form.h"
#include "app/stock/work_proposer.h"
#include "core/cutting/plan_check.h"
#include "tests/support/stock_on_shelf.h"

namespace headcap::app {
namespace {

using core::Amount;

class CuttingViewTest : public testing::Test {
protected:
    CuttingViewTest() {
        const auto paper =
            stock.material("Aaa endpaper stock", core::MaterialClass::paper, core::Unit::sheet);
        lot = stock.lot("31-901", paper, Amount::sheets(4), [](core::Lot& made) {
            made.sheetWidth = core::Length::millimetres(640);
            made.sheetHeight = core::Length::millimetres(900);
            made.grain = core::Grain::alongHeight;
        });
        QObject::connect(&session, &Session::said, &view,
                         [this](const Notice& notice) { said = notice; });
        QObject::connect(&session, &Session::changed, &view, [this] { view.refresh(); });
        view.resize(1280, 900);
        view.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&view));
        view.enter({ViewId::cutting});
        choose("Aaa endpaper stock");
    }
    void choose(const char* material) {
        for (QComboBox* box : view.findChildren<QComboBox*>()) {
            if (box->accessibleName() == QStringLiteral("Cut from")) {
                box->setCurrentText(QString::fromUtf8(material));
            }
        }
    }
    static QLineEdit* field(PlainForm& form, const char* label) {
        FieldRow* row = form.rowLabelled(QString::fromUtf8(label));
        return row == nullptr ? nullptr : qobject_cast<QLineEdit*>(row->control());
    }
    void addPiece(const char* width, const char* height, const char* count) {
        QTest::keyClick(&view.pieces().list(), Qt::Key_Insert);
        Q_EMIT view.pieces().addAsked();
        auto& form = view.pieces().form();
        field(form, "Width")->setText(QString::fromUtf8(width));
        field(form, "Height")->setText(QString::fromUtf8(height));
        field(form, "How many")->setText(QString::fromUtf8(count));
    }
    bool isPlanned() {
        return QTest::qWaitFor([this] { return view.planned().has_value(); }, 10'000);
    }
    void book() { QTest::mouseClick(&view.bookButton(), Qt::LeftButton); }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    tests::StockOnShelf stock{sample, session};
    std::optional<core::Lot> lot;
    Notice said;
    CuttingView view{session};
};

TEST_F(CuttingViewTest, plansByItselfAndBooksInOneChange) {
    addPiece("242 mm", "196 mm", "4");
    ASSERT_TRUE(isPlanned());
    EXPECT_EQ(view.planned()->plan.placed.size(), 4U);
    EXPECT_TRUE(core::checkPlan(view.planned()->problem, view.planned()->plan).empty());
    const auto entries = sample.store.latest(1).front().sequence;
    book();
    EXPECT_EQ(said.kind, Notice::Kind::done) << said.sentence.toStdString();
    EXPECT_EQ(sample.store.latest(1).front().sequence, entries + 1);
    EXPECT_EQ(stock.shelf().balanceOf(lot->id), Amount::sheets(3));
    EXPECT_EQ(core::all<core::Cutting>(sample.store).size(), 1U);
    EXPECT_TRUE(view.pieces().pieces().empty());
}

// The plan that was booked is cut by: it stays in sight until another is begun.
TEST_F(CuttingViewTest, thePlanThatWasBookedStaysUntilAnotherIsBegun) {
    addPiece("242 mm", "196 mm", "4");
    ASSERT_TRUE(isPlanned());
    view.bookButton().setFocus();
    QTest::keyClick(&view.bookButton(), Qt::Key_Return);
    EXPECT_EQ(core::all<core::Cutting>(sample.store).size(), 1U);
    EXPECT_TRUE(view.planned().has_value());
    EXPECT_TRUE(view.findChild<CuttingPlanWidget*>()->isVisible());
    EXPECT_TRUE(view.bookButton().hasFocus());
    view.refresh(); // somebody else changes something
    EXPECT_TRUE(view.planned().has_value());
    QTest::keyClick(&view.bookButton(), Qt::Key_Return);
    EXPECT_EQ(core::all<core::Cutting>(sample.store).size(), 1U); // not booked twice
    EXPECT_FALSE(view.planned().has_value());
}

TEST_F(CuttingViewTest, whatChangesNothingOfThePlanLeavesItStanding) {
    addPiece("242 mm", "196 mm", "4");
    ASSERT_TRUE(isPlanned());
    auto job = core::find(sample.store, *sample.hymnal);
    job->record.keptAt = "shelf 4";
    core::Change change{.sentence = "Moved"};
    change.update(job->record, job->revision);
    ASSERT_TRUE(session.apply(std::move(change)));
    EXPECT_TRUE(view.planned().has_value());
    EXPECT_TRUE(view.bookButton().isEnabled());
    // A sheet less is another plan.
    core::Change spoilt{.sentence = "Spoilt"};
    spoilt.add(core::LedgerEntry{.id = sample.ids.next<core::LedgerEntry>(),
                                 .lot = lot->id,
                                 .at = sample.clock.now(),
                                 .who = *sample.orrin,
                                 .kind = core::LedgerKind::discarded,
                                 .amount = core::Amount::sheets(-4)});
    ASSERT_TRUE(session.apply(std::move(spoilt)));
    EXPECT_FALSE(view.planned().has_value());
}

// The sheets' grain runs along their height; a piece that wants it along its width lies across.
TEST_F(CuttingViewTest, grainAcrossTheSpineOfABookIsExplainedBeforeItIsBooked) {
    ASSERT_TRUE(view.enter({.view = ViewId::cutting, .job = sample.grafting}));
    choose("Aaa endpaper stock");
    view.pieces().add({.id = "lining",
                       .width = core::Length::millimetres(30),
                       .height = core::Length::millimetres(180),
                       .grain = core::GrainWay::alongWidth});
    ASSERT_TRUE(isPlanned());
    ASSERT_EQ(view.planned()->plan.placed.size(), 1U);
    book();
    EXPECT_TRUE(core::all<core::Cutting>(sample.store).empty());
    FieldRow* note = nullptr;
    for (FieldRow* row : view.findChildren<FieldRow*>()) {
        note = row->hasError() ? row : note;
    }
    ASSERT_NE(note, nullptr);
    qobject_cast<QLineEdit*>(note->control())
        ->setText(QStringLiteral("a strip for the spine, to stiffen it"));
    book();
    EXPECT_EQ(core::all<core::Cutting>(sample.store).size(), 1U);
}

TEST_F(CuttingViewTest, piecesOfWorkAreProposedFromTheBook) {
    auto& form = view.proposer().form();
    field(form, "Width")->setText(QStringLiteral("118 mm"));
    field(form, "Height")->setText(QStringLiteral("186 mm"));
    field(form, "Thickness")->setText(QStringLiteral("27 mm"));
    QTest::mouseClick(&view.proposer().button(), Qt::LeftButton);
    const auto pieces = view.pieces().pieces();
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].id, "endpaper fold");
    EXPECT_EQ(pieces[0].width, core::Length::millimetres(242)); // two leaves and their trim
    EXPECT_EQ(pieces[0].count, 2);
    EXPECT_TRUE(isPlanned());
}

TEST_F(CuttingViewTest, theSamePiecesAreProposedOnceAndOwnOnesStay) {
    auto& form = view.proposer().form();
    field(form, "Width")->setText(QStringLiteral("118 mm"));
    field(form, "Height")->setText(QStringLiteral("186 mm"));
    field(form, "Thickness")->setText(QStringLiteral("27 mm"));
    addPiece("100 mm", "40 mm", "1");
    QTest::mouseClick(&view.proposer().button(), Qt::LeftButton);
    EXPECT_EQ(view.pieces().pieces().size(), 2U);
    auto* work = qobject_cast<QComboBox*>(form.rowLabelled(QStringLiteral("The work"))->control());
    work->setCurrentIndex(static_cast<int>(Work::sewnFold));
    QTest::mouseClick(&view.proposer().button(), Qt::LeftButton);
    EXPECT_EQ(view.pieces().pieces().size(), 2U);
    work->setCurrentIndex(static_cast<int>(Work::wrapper));
    QTest::mouseClick(&view.proposer().button(), Qt::LeftButton);
    EXPECT_EQ(view.pieces().pieces().size(), 3U);
}

// The published case of a block of 148 × 210 × 20 mm: its cover is of cloth, and paper is cut from.
TEST_F(CuttingViewTest, piecesOfOtherStockAreToldWithTheirSizes) {
    auto& form = view.proposer().form();
    field(form, "Width")->setText(QStringLiteral("148 mm"));
    field(form, "Height")->setText(QStringLiteral("210 mm"));
    field(form, "Thickness")->setText(QStringLiteral("20 mm"));
    auto* work = qobject_cast<QComboBox*>(form.rowLabelled(QStringLiteral("The work"))->control());
    work->setCurrentIndex(static_cast<int>(Work::casing));
    QTest::mouseClick(&view.proposer().button(), Qt::LeftButton);
    QString told;
    for (const QLabel* label : view.findChildren<QLabel*>()) {
        told += label->text() + QLatin1Char('\n');
    }
    EXPECT_TRUE(told.contains(QStringLiteral("144.5 × 216"))) << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("23.5 × 216")));
}

// One does not cut for one book by the size of another.
TEST_F(CuttingViewTest, anotherBookForgetsTheMeasuresOfTheFirst) {
    const core::WorkHouseValues house;
    core::Item first = sample.file(*sample.grafting).item;
    first.id = sample.ids.next<core::Item>();
    first.width = core::Length::millimetres(151);
    first.height = core::Length::millimetres(216);
    first.thickness = core::Length::millimetres(24);
    view.proposer().setBook(first, house);
    auto& form = view.proposer().form();
    // Over covers less squares of 3 mm and boards of 2 mm: the block of the published case.
    EXPECT_EQ(field(form, "Width")->text(), QStringLiteral("148 mm"));
    EXPECT_EQ(field(form, "Height")->text(), QStringLiteral("210 mm"));
    EXPECT_EQ(field(form, "Thickness")->text(), QStringLiteral("20 mm"));
    core::Item second = first;
    second.id = sample.ids.next<core::Item>();
    second.width.reset();
    second.thickness.reset();
    second.height = core::Length::millimetres(306);
    view.proposer().setBook(second, house);
    EXPECT_EQ(field(form, "Width")->text(), QString{});
    EXPECT_EQ(field(form, "Height")->text(), QStringLiteral("300 mm"));
    EXPECT_EQ(field(form, "Thickness")->text(), QString{});
}

TEST_F(CuttingViewTest, aMeasureThatIsMissingIsAskedFor) {
    QTest::mouseClick(&view.proposer().button(), Qt::LeftButton);
    EXPECT_TRUE(view.pieces().pieces().empty());
    EXPECT_NE(view.proposer().form().troubled(), nullptr);
}

TEST_F(CuttingViewTest, nonsenseIsRefusedInASentenceAndInTime) {
    for (const auto& [width, height, count] :
         {std::array{"0 mm", "196 mm", "4"}, std::array{"242 mm", "196 mm", "0"},
          std::array{"900 m", "196 mm", "1"}, std::array{"242 mm", "196 mm", "1000000"},
          std::array{"800 mm", "950 mm", "1"}}) {
        view.pieces().clear();
        addPiece(width, height, count);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !view.isPlanning(); }, 10'000));
        EXPECT_TRUE(view.standing().endsWith(u'.')) << view.standing().toStdString();
        EXPECT_FALSE(view.bookButton().isEnabled()) << width << " " << count;
        EXPECT_EQ(stock.shelf().balanceOf(lot->id), Amount::sheets(4));
    }
}

// The lot has a pH under the 7.5 of ISO 9706.
TEST_F(CuttingViewTest, aLotThatIsNotFitAsksWhyAndTheReasonIsKept) {
    auto stored = core::find(sample.store, lot->id);
    stored->record.phHundredths = 640;
    core::Change change{.sentence = "pH measured"};
    change.update(stored->record, stored->revision);
    ASSERT_TRUE(session.apply(std::move(change)));
    addPiece("242 mm", "196 mm", "1");
    ASSERT_TRUE(isPlanned());
    book();
    EXPECT_TRUE(core::all<core::Cutting>(sample.store).empty());
    for (QLineEdit* line : view.findChildren<QLineEdit*>()) {
        if (line->accessibleName() == QStringLiteral("Note")) {
            line->setText(QStringLiteral("for a dummy only"));
        }
    }
    book();
    const auto cuttings = core::all<core::Cutting>(sample.store);
    ASSERT_EQ(cuttings.size(), 1U);
    EXPECT_EQ(cuttings.front().record.note, "for a dummy only");
}

TEST_F(CuttingViewTest, aLotThatIsLeftAloneIsNotCut) {
    auto* sheets = view.findChild<RuledList*>(QString{}, Qt::FindChildrenRecursively);
    for (RuledList* list : view.findChildren<RuledList*>()) {
        if (list->accessibleName() == QStringLiteral("Sheets and offcuts")) {
            sheets = list;
        }
    }
    ASSERT_EQ(sheets->model()->rowCount(), 1);
    sheets->select(lot->id.uuid());
    Q_EMIT sheets->opened();
    addPiece("242 mm", "196 mm", "1");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !view.isPlanning(); }, 10'000));
    EXPECT_FALSE(view.bookButton().isEnabled());
}

} // namespace
} // namespace headcap::app
