// Mixing, by keys, with a look at the store.
#include <algorithm>
#include <set>

#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/ruled_list.h"
#include "app/stock/mix_editor.h"
#include "app/stock/mixing_view.h"
#include "app/stock/plain_form.h"
#include "app/stock/strength_calculator.h"
#include "app/stock/titration_form.h"
#include "tests/support/stock_on_shelf.h"

namespace headcap::app {
namespace {

using core::Amount;
using core::Mass;
using core::Volume;

class MixingViewTest : public testing::Test {
protected:
    MixingViewTest() {
        const auto starch = stock.material("Wheat starch, dry", core::MaterialClass::adhesiveDry,
                                           core::Unit::gram, "adhesive_dry/wheat_starch");
        const auto water = stock.material("Water, deionised", core::MaterialClass::solvent,
                                          core::Unit::millilitre, "solvent/water");
        stock.material("Starch paste", core::MaterialClass::adhesivePrepared, core::Unit::gram,
                       "adhesive_prepared/wheat_paste");
        starchLot = stock.lot("31-901", starch, Amount::of(Mass::grams(500)));
        stock.lot("31-902", water, Amount::of(Volume::millilitres(5'000)));
        old = stock.lot("31-903", starch, Amount::of(Mass::grams(500)), [this](core::Lot& lot) {
            lot.goodUntil =
                core::Day{std::chrono::sys_days{sample.clock.today()} - std::chrono::days{10}};
        });
        QObject::connect(&session, &Session::said, &view,
                         [this](const Notice& notice) { said = notice; });
        view.resize(1280, 900);
        view.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&view));
        view.enter({ViewId::mixing});
    }
    QLineEdit* field(const QString& label, int nth = 0) {
        for (FieldRow* row : view.editor().form()->rows()) {
            if (row->label() == label && nth-- == 0) {
                return qobject_cast<QLineEdit*>(row->control());
            }
        }
        return nullptr;
    }
    static void write(QLineEdit* line, const char* text) {
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, QString::fromUtf8(text));
        QTest::keyClick(line, Qt::Key_Return);
    }
    void book() { QTest::mouseClick(&view.editor().bookButton(), Qt::LeftButton); }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    tests::StockOnShelf stock{sample, session};
    std::optional<core::Lot> starchLot;
    std::optional<core::Lot> old;
    Notice said;
    MixingView view{session};
};

TEST_F(MixingViewTest, aRecipeComesWithFitLotsOfTheShelf) {
    EXPECT_EQ(view.list().model()->rowCount(), static_cast<int>(core::shippedRecipes().size()));
    EXPECT_EQ(field(QStringLiteral("Wheat starch"))->text(), QStringLiteral("57 g"));
    EXPECT_TRUE(field(QStringLiteral("from lot"))->text().startsWith(QStringLiteral("31-901")));
    EXPECT_TRUE(field(QStringLiteral("from lot"), 1)->text().startsWith(QStringLiteral("31-902")));
}

TEST_F(MixingViewTest, whatIsToBeMadeScalesEveryPart) {
    write(field(QStringLiteral("To make")), "225 g");
    EXPECT_EQ(field(QStringLiteral("Wheat starch"))->text(), QStringLiteral("28.5 g"));
    EXPECT_EQ(field(QStringLiteral("Deionised water"))->text(), QStringLiteral("200 ml"));
}

TEST_F(MixingViewTest, bookingMakesALotAndTakesItsParts) {
    write(field(QStringLiteral("To make")), "225 g");
    book();
    EXPECT_EQ(said.kind, Notice::Kind::done) << said.sentence.toStdString();
    const core::Shelf shelf = stock.shelf();
    EXPECT_EQ(shelf.balanceOf(starchLot->id), Amount::of(Mass::milligrams(471'500)));
    const auto mixed = std::ranges::find(shelf.lots, core::LotOrigin::mixed, &core::Lot::origin);
    bool isFound = false;
    for (const core::Lot& lot : shelf.lots) {
        if (lot.origin == core::LotOrigin::mixed && !lot.recipe.empty() &&
            lot.recipe.starts_with("Wheat starch paste, 57 g")) {
            isFound = true;
            EXPECT_EQ(shelf.balanceOf(lot.id), Amount::of(Mass::grams(225)));
            EXPECT_EQ(lot.mixedBy, session.person());
            EXPECT_TRUE(lot.goodUntil);
        }
    }
    EXPECT_TRUE(isFound);
    EXPECT_NE(mixed, shelf.lots.end());
}

// To the labelled lot without the mouse.
TEST_F(MixingViewTest, isDoneByTheKeyboardFromTheRecipeToTheLabel) {
    std::optional<Destination> asked;
    QObject::connect(&view, &View::goAsked, &view,
                     [&](const Destination& destination) { asked = destination; });
    EXPECT_FALSE(view.editor().labelButton().isVisible());
    QTest::keyClick(&view.editor().bookButton(), Qt::Key_Space);
    ASSERT_EQ(said.kind, Notice::Kind::done) << said.sentence.toStdString();
    ASSERT_TRUE(view.editor().labelButton().isVisible());
    QTest::keyClick(&view.editor().labelButton(), Qt::Key_Space);
    ASSERT_TRUE(asked && asked->record);
    EXPECT_EQ(asked->view, ViewId::stock);
    const auto lot = core::find(sample.store, core::Id<core::Lot>{asked->record->id});
    ASSERT_TRUE(lot);
    EXPECT_EQ(lot->record.origin, core::LotOrigin::mixed);
}

TEST_F(MixingViewTest, aLotPastItsDateAsksWhyAndTheReasonIsKept) {
    const auto before = stock.shelf().lots.size();
    write(field(QStringLiteral("from lot")), "31-903");
    book();
    EXPECT_EQ(stock.shelf().lots.size(), before);
    write(field(QStringLiteral("used because")), "dry starch keeps");
    book();
    const core::Shelf shelf = stock.shelf();
    ASSERT_EQ(shelf.lots.size(), before + 1);
    bool isSaid = false;
    for (const core::LedgerEntry& entry : shelf.ledger) {
        isSaid = isSaid ||
                 (entry.lot == old->id && entry.note.find("dry starch keeps") != std::string::npos);
    }
    EXPECT_TRUE(isSaid);
}

TEST_F(MixingViewTest, whatIsTypedStaysWhereItCannotBeBooked) {
    const auto before = stock.shelf().lots.size();
    write(field(QStringLiteral("from lot")), "no such lot");
    book();
    EXPECT_EQ(stock.shelf().lots.size(), before);
    EXPECT_EQ(field(QStringLiteral("from lot"))->text(), QStringLiteral("no such lot"));
}

TEST_F(MixingViewTest, aRecipeIsKeptAsOurOwnWithItsAmountsAndRemovedAgain) {
    QObject::connect(&session, &Session::changed, &view, [this] { view.refresh(); });
    const auto press = [this](const char* words) {
        for (QPushButton* button : view.editor().findChildren<QPushButton*>()) {
            if (button->text() == QString::fromUtf8(words) && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                return true;
            }
        }
        return false;
    };
    EXPECT_FALSE(press("Remove this recipe"));
    write(field(QStringLiteral("Wheat starch")), "60 g");
    write(field(QStringLiteral("Recipe's name")), "Stiff paste");
    ASSERT_TRUE(press("Keep as a recipe of our own"));
    const auto own = core::all<core::Recipe>(sample.store);
    ASSERT_EQ(own.size(), 1U);
    EXPECT_EQ(own.front().record.name, "Stiff paste");
    const auto parts = core::all<core::RecipePart>(sample.store);
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_EQ(parts.front().record.amount, Amount::of(Mass::grams(60)));
    view.list().select(own.front().record.id.uuid());
    ASSERT_TRUE(press("Remove this recipe"));
    EXPECT_TRUE(core::all<core::Recipe>(sample.store).empty());
    EXPECT_TRUE(core::all<core::RecipePart>(sample.store).empty());
}

TEST_F(MixingViewTest, theCalculatorAnswersWhileItIsTyped) {
    auto* calculator = view.findChild<StrengthCalculator*>();
    auto& rows = calculator->form().rows();
    qobject_cast<QLineEdit*>(rows[0]->control())->setText(QStringLiteral("5 % w/v"));
    qobject_cast<QLineEdit*>(rows[1]->control())->setText(QStringLiteral("2 % w/v"));
    qobject_cast<QLineEdit*>(rows[2]->control())->setText(QStringLiteral("400 ml"));
    EXPECT_TRUE(calculator->answer().contains(QStringLiteral("160 ml")));
    EXPECT_TRUE(calculator->answer().contains(QStringLiteral("240 ml")));
    qobject_cast<QLineEdit*>(rows[1]->control())->setText(QStringLiteral("2 %"));
    EXPECT_FALSE(calculator->answer().contains(QStringLiteral("160 ml")));
}

// No stock: what is weighed out for so much solvent.
TEST_F(MixingViewTest, theCalculatorWeighsOutWhatIsDry) {
    auto* calculator = view.findChild<StrengthCalculator*>();
    auto& rows = calculator->form().rows();
    qobject_cast<QLineEdit*>(rows[1]->control())->setText(QStringLiteral("2 % w/v"));
    qobject_cast<QLineEdit*>(rows[2]->control())->setText(QStringLiteral("250 ml"));
    EXPECT_EQ(calculator->answer(), QStringLiteral("5 g into 250 ml of the solvent."));
    qobject_cast<QLineEdit*>(rows[2]->control())->setText(QStringLiteral("250 g"));
    EXPECT_FALSE(calculator->answer().contains(QStringLiteral("5 g into")));
}

TEST_F(MixingViewTest, aTitrationIsJudged) {
    auto* titration = view.findChild<TitrationForm*>();
    auto& rows = titration->form().rows();
    const std::array values{"1.000 g", "20.00 ml", "15.50 ml"};
    for (std::size_t i = 0; i < values.size(); ++i) {
        qobject_cast<QLineEdit*>(rows[i]->control())->setText(QString::fromUtf8(values[i]));
    }
    EXPECT_TRUE(titration->answer().contains(QStringLiteral("0.45 mol/kg")));
    EXPECT_TRUE(titration->answer().contains(QStringLiteral("2.252 %")));
}

// The first paste of a new workshop: no kind, no lot, and yet every gram has a lot.
TEST(FirstMix, makesTheKindsItLacksAndReceivesItsParts) {
    tests::SampleWorkshop sample;
    Session session{sample.means()};
    MixingView view{session};
    view.resize(1280, 900);
    view.setVisible(true);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view));
    view.enter({ViewId::mixing});
    Notice said;
    QObject::connect(&session, &Session::said, &view, [&](const Notice& one) { said = one; });
    const std::size_t before = core::all<core::Lot>(sample.store).size();
    const std::size_t changes = sample.store.changes();
    QTest::mouseClick(&view.editor().bookButton(), Qt::LeftButton);
    EXPECT_EQ(said.kind, Notice::Kind::done) << said.sentence.toStdString();
    EXPECT_EQ(sample.store.changes(), changes + 1) << "in one change";
    const core::Shelf shelf = core::loadShelf(sample.store);
    ASSERT_EQ(shelf.lots.size(), before + 3) << "the paste, the starch and the water";
    std::set<std::string> numbers;
    for (const core::Lot& lot : shelf.lots) {
        EXPECT_TRUE(numbers.insert(lot.number).second) << lot.number;
    }
    ASSERT_FALSE(shelf.parts.empty());
    const core::Lot* paste = shelf.lot(shelf.parts.back().lot);
    ASSERT_NE(paste, nullptr);
    EXPECT_FALSE(paste->recipe.empty());
    int parts = 0;
    for (const core::LotPart& part : shelf.parts) {
        if (part.lot == paste->id) {
            ++parts;
            EXPECT_EQ(shelf.balanceOf(part.source)->count, 0) << "received as it was taken";
        }
    }
    EXPECT_EQ(parts, 2);
}

} // namespace
} // namespace headcap::app
