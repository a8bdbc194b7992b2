// Materials and lots, by keys, with a look at the store.
#include <algorithm>

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/field_row.h"
#include "app/form/form_base.h"
#include "app/form/ruled_list.h"
#include "app/session/actions.h"
#include "app/shell/lot_movements.h"
#include "app/shell/materials_view.h"
#include "core/materials/shelf.h"
#include "tests/support/sample_workshop.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class MaterialsViewTest : public testing::Test {
protected:
    MaterialsViewTest() {
        view.resize(1280, 900);
        view.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&view));
        view.enter({ViewId::materials});
        QObject::connect(&session, &Session::changed, &view, [this] { view.refresh(); });
        waitForStory();
    }
    void waitForStory() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !view.isReading(); }, 10'000));
    }
    core::Shelf shelf() { return core::loadShelf(sample.store); }
    // Chooses the first lot of the shelf.
    core::Lot chosen() {
        const core::Lot lot = shelf().lots.front();
        EXPECT_TRUE(view.enter({.view = ViewId::materials, .record = core::refOf(lot.id)}));
        waitForStory();
        return lot;
    }
    QLineEdit* field(const char* name) {
        for (QLineEdit* one : view.findChild<LotMovements*>()->findChildren<QLineEdit*>()) {
            if (one->accessibleName() == QLatin1String(name)) {
                return one;
            }
        }
        return nullptr;
    }
    void enterMovement(int what, const char* amount, const char* note) {
        view.findChild<LotMovements*>()->findChild<QComboBox*>()->setCurrentIndex(what);
        QTest::keyClicks(field("From what, or why"), QString::fromUtf8(note));
        QTest::keyClicks(field("How much"), QString::fromUtf8(amount));
        QTest::keyClick(field("How much"), Qt::Key_Return);
    }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    MaterialsView view{session};
};

TEST_F(MaterialsViewTest, listsEveryLot) {
    const auto* list = view.findChild<RuledList*>();
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->model()->rowCount(), static_cast<int>(shelf().lots.size()));
}

TEST_F(MaterialsViewTest, aLotHasTheFieldsOfItsOriginAndThoseThatHoldSomething) {
    chosen();
    FormBase* form = nullptr;
    for (FormBase* one : view.findChildren<FormBase*>()) {
        form = one->rowLabelled(QStringLiteral("It was")) != nullptr ? one : form;
    }
    ASSERT_NE(form, nullptr);
    const auto isShown = [&](const char* label) {
        return form->rowLabelled(QLatin1String(label))->isVisible();
    };
    auto* origin = qobject_cast<QComboBox*>(form->rowLabelled(QStringLiteral("It was"))->control());
    const auto choose = [&](core::LotOrigin to) {
        origin->setCurrentIndex(static_cast<int>(to));
        Q_EMIT origin->activated(static_cast<int>(to));
    };
    choose(core::LotOrigin::bought);
    EXPECT_TRUE(isShown("Supplier"));
    EXPECT_FALSE(isShown("Saved from"));
    auto* supplier = form->rowLabelled(QStringLiteral("Supplier"))->control();
    supplier->setFocus();
    QTest::keyClicks(supplier, QStringLiteral("Mere Papers"));
    choose(core::LotOrigin::saved);
    EXPECT_TRUE(isShown("Saved from"));
    EXPECT_TRUE(isShown("Supplier")); // it says something
    EXPECT_FALSE(isShown("Maker"));
    EXPECT_FALSE(isShown("Sheet width")); // paste
}

// Tissue is not asked when it was opened; nothing that is filled is hidden.
TEST_F(MaterialsViewTest, whatIsSeldomNotedIsBehindMoreUntilItSaysSomething) {
    const auto lots = shelf().lots;
    const auto tissue = std::ranges::find_if(lots, [this](const core::Lot& lot) {
        const core::Shelf all = shelf();
        return all.material(lot.material)->kind == core::MaterialClass::tissue;
    });
    ASSERT_NE(tissue, lots.end());
    ASSERT_TRUE(view.enter({.view = ViewId::materials, .record = core::refOf(tissue->id)}));
    FormBase* form = nullptr;
    for (FormBase* one : view.findChildren<FormBase*>()) {
        form = one->rowLabelled(QStringLiteral("It was")) != nullptr ? one : form;
    }
    ASSERT_NE(form, nullptr);
    QPushButton* more = nullptr;
    for (QPushButton* one : form->findChildren<QPushButton*>()) {
        more = one->text() == QStringLiteral("More …") ? one : more;
    }
    ASSERT_NE(more, nullptr);
    FieldRow* opened = form->rowLabelled(QStringLiteral("Opened"));
    EXPECT_FALSE(opened->isVisible());
    EXPECT_TRUE(form->rowLabelled(QStringLiteral("pH"))->isVisible()); // of a paper it is
    QTest::mouseClick(more, Qt::LeftButton);
    ASSERT_TRUE(opened->isVisible());
    opened->control()->setFocus();
    QTest::keyClicks(opened->control(), QStringLiteral("3 March 2031"));
    QTest::keyClick(opened->control(), Qt::Key_Return);
    QTest::mouseClick(more, Qt::LeftButton);
    EXPECT_TRUE(opened->isVisible());
    EXPECT_EQ(core::find(sample.store, tissue->id)->record.openedOn,
              std::chrono::year{2031} / 3 / 3);
}

// A new lot is asked how much came in among its first fields; a bare number is of the kind's unit.
TEST_F(MaterialsViewTest, aNewLotTakesWhatCameInFromItsForm) {
    const auto before = shelf().lots.size();
    FormBase* form = nullptr;
    for (FormBase* one : view.findChildren<FormBase*>()) {
        form = one->rowLabelled(QStringLiteral("How much")) != nullptr ? one : form;
    }
    ASSERT_NE(form, nullptr);
    for (QPushButton* one : view.findChildren<QPushButton*>()) {
        if (one->text() == QStringLiteral("Add a lot")) {
            QTest::mouseClick(one, Qt::LeftButton);
        }
    }
    const auto type = [&](const char* label, const char* text) {
        auto* line = qobject_cast<QLineEdit*>(form->rowLabelled(QLatin1String(label))->control());
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, QString::fromUtf8(text));
        QTest::keyClick(line, Qt::Key_Return);
    };
    const auto* material =
        qobject_cast<QLineEdit*>(form->rowLabelled(QStringLiteral("Material"))->control());
    EXPECT_TRUE(material->text().isEmpty()); // none is taken for granted
    type("Number", "31-777");
    EXPECT_EQ(shelf().lots.size(), before); // of nothing, nothing is kept
    type("Material", "kozo tissue");
    const core::Shelf kept = shelf();
    const auto lot = std::ranges::find(kept.lots, "31-777", &core::Lot::number);
    ASSERT_NE(lot, kept.lots.end());
    ASSERT_EQ(kept.lots.size(), before + 1);
    type("How much", "12");
    const auto balance = shelf().balanceOf(lot->id);
    ASSERT_TRUE(balance);
    EXPECT_EQ(balance->unit, kept.material(lot->material)->unit);
    EXPECT_GT(balance->count, 0);
    view.findChild<RuledList*>()->setFocus();
    view.refresh();
    EXPECT_FALSE(form->rowLabelled(QStringLiteral("How much"))->isVisible());
}

// Without its material a lot is neither kept nor lost: one sentence asks for it, and Esc drops it.
TEST_F(MaterialsViewTest, aLotWithoutItsMaterialIsNotLeftUnsaid) {
    const auto before = shelf().lots.size();
    auto* list = view.findChild<RuledList*>();
    list->setFocus();
    QTest::keySequence(list, keysOf(ActionId::addRecord).front());
    FormBase* form = nullptr;
    for (FormBase* one : view.findChildren<FormBase*>()) {
        form = one->rowLabelled(QStringLiteral("How much")) != nullptr ? one : form;
    }
    ASSERT_NE(form, nullptr);
    FieldRow* material = form->rowLabelled(QStringLiteral("Material"));
    EXPECT_TRUE(material->control()->hasFocus());
    EXPECT_TRUE(view.leave()); // nothing was written yet
    auto* supplier =
        qobject_cast<QLineEdit*>(form->rowLabelled(QStringLiteral("Supplier"))->control());
    supplier->setFocus();
    QTest::keyClicks(supplier, QStringLiteral("Mere Papers"));
    EXPECT_FALSE(view.leave());
    EXPECT_TRUE(material->hasError());
    EXPECT_TRUE(material->control()->hasFocus());
    EXPECT_EQ(shelf().lots.size(), before);
    QTest::keyClick(material->control(), Qt::Key_Escape);
    EXPECT_FALSE(material->hasError());
    EXPECT_EQ(supplier->text(), QStringLiteral("Mere Papers"));
    QTest::keyClick(material->control(), Qt::Key_Escape);
    EXPECT_FALSE(form->isVisible());
    EXPECT_TRUE(view.leave());
    EXPECT_EQ(shelf().lots.size(), before);
}

// However far down the page is: the first field of the new one comes into view.
TEST_F(MaterialsViewTest, aNewLotIsBegunInSight) {
    chosen();
    view.resize(1280, 420);
    auto* scroll = view.findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    tests::settle();
    auto* add = view.findChild<RuledList*>();
    add->setFocus();
    scroll->verticalScrollBar()->setValue(scroll->verticalScrollBar()->maximum());
    QTest::keySequence(add, keysOf(ActionId::addRecord).front());
    tests::settle();
    const QWidget* at = QApplication::focusWidget();
    ASSERT_NE(at, nullptr);
    EXPECT_EQ(at->accessibleName(), QStringLiteral("Material"));
    EXPECT_TRUE(
        scroll->viewport()->rect().contains(at->mapTo(scroll->viewport(), at->rect().center())));
}

TEST_F(MaterialsViewTest, insertInTheLedgerBeginsAnEntry) {
    chosen();
    auto* ledger = view.findChild<LotMovements*>()->findChild<QListView*>();
    ledger->setFocus();
    QTest::keySequence(ledger, keysOf(ActionId::addRecord).front());
    EXPECT_TRUE(field("How much")->hasFocus());
}

// The spine lining names 3.1 g that the ledger of the paste does not know.
TEST_F(MaterialsViewTest, aUseWithoutItsEntryIsSaidInTheLedger) {
    const core::Lot lot = chosen();
    ASSERT_EQ(lot.number, "31-006");
    const auto* ledger = view.findChild<LotMovements*>()->findChild<QListView*>();
    QStringList said;
    for (int i = 0; i < ledger->model()->rowCount(); ++i) {
        said << ledger->model()->index(i, 0).data(Qt::AccessibleTextRole).toString();
    }
    EXPECT_TRUE(said.last().contains(QStringLiteral("used, not entered")))
        << said.last().toStdString();
    EXPECT_TRUE(said.last().contains(QStringLiteral("3.1 g")));
    EXPECT_EQ(said.filter(QStringLiteral("not entered")).size(), 1);
}

// What a lot says is shown; what it does not say waits behind "More …", so that its ledger is seen.
TEST_F(MaterialsViewTest, theFormOfAKeptLotIsAsLongAsWhatItSays) {
    chosen();
    FormBase* form = nullptr;
    for (FormBase* one : view.findChildren<FormBase*>()) {
        form = one->rowLabelled(QStringLiteral("How much")) != nullptr ? one : form;
    }
    ASSERT_NE(form, nullptr);
    for (const FieldRow* row : form->rows()) {
        const auto* line = qobject_cast<const QLineEdit*>(row->control());
        if (row->isVisible() && line != nullptr) {
            EXPECT_FALSE(line->text().isEmpty()) << row->label().toStdString();
        }
    }
    EXPECT_TRUE(form->rowLabelled(QStringLiteral("Done with"))->isVisible());
}

TEST_F(MaterialsViewTest, entersWhatCameIn) {
    const core::Lot lot = chosen();
    const auto before = shelf().balanceOf(lot.id);
    ASSERT_TRUE(before);
    const core::Amount more{2'000'000, before->unit};
    enterMovement(0, core::toText(more).c_str(), "");
    EXPECT_EQ(shelf().balanceOf(lot.id), core::sum(*before, more));
}

// Its story is read aside: what is typed meanwhile must not go to the lot that stood there.
TEST_F(MaterialsViewTest, takesNoMovementUntilTheChosenLotIsRead) {
    chosen();
    auto* movements = view.findChild<LotMovements*>();
    const core::Lot other = shelf().lots.back();
    ASSERT_NE(movements->lot(), other.id);
    EXPECT_TRUE(movements->isEnabled());
    ASSERT_TRUE(view.enter({.view = ViewId::materials, .record = core::refOf(other.id)}));
    EXPECT_FALSE(movements->isEnabled());
    waitForStory();
    EXPECT_EQ(movements->lot(), other.id);
    EXPECT_TRUE(movements->isEnabled());
}

TEST_F(MaterialsViewTest, thrownAwayNeedsAReason) {
    const core::Lot lot = chosen();
    const auto entries = shelf().ledger.size();
    QString said;
    QObject::connect(&session, &Session::said, &view,
                     [&](const Notice& notice) { said = notice.sentence; });
    const core::Amount some{1'000'000, shelf().balanceOf(lot.id)->unit};
    enterMovement(2, core::toText(some).c_str(), "");
    EXPECT_EQ(shelf().ledger.size(), entries);
    EXPECT_FALSE(said.isEmpty());
}

TEST_F(MaterialsViewTest, refusesAnAmountItCannotReadAndKeepsIt) {
    chosen();
    const auto entries = shelf().ledger.size();
    enterMovement(0, "a cup", "");
    EXPECT_EQ(shelf().ledger.size(), entries);
    EXPECT_EQ(field("How much")->text(), QStringLiteral("a cup"));
}

} // namespace
} // namespace headcap::app
