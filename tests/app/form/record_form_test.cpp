#include "app/form/record_form.h"

#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/page_edits.h"
#include "app/form/record_choices.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

const QString kTitle = QStringLiteral("Title");
const QString kHeight = QStringLiteral("Height");
const QString kDate = QStringLiteral("Date");

class RecordFormTest : public testing::Test {
protected:
    RecordFormTest() {
        form.text(kTitle, &core::Item::title);
        form.value(kHeight, &core::Item::height);
        form.value(kDate, &core::Item::date);
        form.choice(QStringLiteral("It is"), &core::Item::nature);
        edits.watch(&form);
        QObject::connect(&session, &Session::changed, &form, [this] {
            if (showsItem) {
                showAgain();
            }
        });
        showAgain();
        form.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&form));
    }

    void showAgain() {
        const auto file = sample.file(*sample.hymnal);
        form.show(file.item, file.revisionOf(core::refOf(file.item.id)));
    }
    core::Item item() { return sample.file(*sample.hymnal).item; }
    QWidget* field(const QString& label) { return form.rowLabelled(label)->control(); }
    void type(const QString& label, const QString& text) {
        QWidget* control = field(label);
        control->setFocus();
        QTest::keyClick(control, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(control, text);
    }
    void leaveByEnter(const QString& label) { QTest::keyClick(field(label), Qt::Key_Return); }

    bool showsItem = true; // a draft's form is shown by the list that opened it
    tests::SampleWorkshop sample;
    Session session{sample.means()};
    PageEdits edits{session};
    RecordForm<core::Item> form{session, QStringLiteral("Book")};
};

TEST_F(RecordFormTest, savesWhatWasTypedWhenTheFieldIsLeft) {
    type(kTitle, QStringLiteral("Hymns for Kell"));
    EXPECT_NE(item().title, "Hymns for Kell");
    leaveByEnter(kTitle);
    EXPECT_EQ(item().title, "Hymns for Kell");
    EXPECT_EQ(sample.store.last().sentence, "Book: title changed");
}

TEST_F(RecordFormTest, readsALengthAsPeopleWriteItAndShowsItAsUnderstood) {
    type(kHeight, QStringLiteral("14,8 cm"));
    leaveByEnter(kHeight);
    EXPECT_EQ(item().height, core::Length::millimetres(148));
    EXPECT_EQ(form.rowLabelled(kHeight)->text(), QStringLiteral("148 mm"));
}

TEST_F(RecordFormTest, saysBesideTheFieldWhyItCannotBeReadAndKeepsTheText) {
    type(kHeight, QStringLiteral("14 spans"));
    leaveByEnter(kHeight);
    EXPECT_TRUE(form.rowLabelled(kHeight)->hasError());
    EXPECT_EQ(form.rowLabelled(kHeight)->text(), QStringLiteral("14 spans"));
    EXPECT_EQ(item().height, std::nullopt);
    EXPECT_FALSE(edits.leave());
    // The rest of the page is saved all the same.
    type(kTitle, QStringLiteral("Hymns"));
    leaveByEnter(kTitle);
    EXPECT_EQ(item().title, "Hymns");
}

TEST_F(RecordFormTest, savesAllEditsOfAPageAsOneEntry) {
    const std::size_t before = sample.store.changes();
    form.rowLabelled(kTitle)->rewrite(QStringLiteral("Hymns"));
    form.rowLabelled(kDate)->rewrite(QStringLiteral("ca. 1790"));
    EXPECT_TRUE(edits.leave());
    EXPECT_EQ(sample.store.changes(), before + 1);
    EXPECT_EQ(sample.store.last().sentence, "Book: title, date changed");
    EXPECT_EQ(core::toText(*item().date), "ca. 1790");
}

TEST_F(RecordFormTest, savesNothingWhereNothingWasEdited) {
    const std::size_t before = sample.store.changes();
    form.rowLabelled(kDate)->rewrite(QStringLiteral(" 1788 "));
    EXPECT_TRUE(edits.leave());
    EXPECT_EQ(sample.store.changes(), before);
}

TEST_F(RecordFormTest, takesInAnothersChangeOfAnotherField) {
    form.rowLabelled(kTitle)->rewrite(QStringLiteral("Mine"));
    core::Item theirs = item();
    theirs.height = core::Length::millimetres(200);
    sample.store.changeElsewhere(theirs);
    EXPECT_TRUE(edits.save());
    EXPECT_EQ(item().title, "Mine");
    EXPECT_EQ(item().height, core::Length::millimetres(200));
}

TEST_F(RecordFormTest, asksWhereBothChangedTheSameField) {
    form.rowLabelled(kTitle)->rewrite(QStringLiteral("Mine"));
    core::Item theirs = item();
    theirs.title = "Theirs";
    sample.store.changeElsewhere(theirs);
    edits.save();
    FieldRow* row = form.rowLabelled(kTitle);
    EXPECT_TRUE(row->isConflicted());
    EXPECT_EQ(item().title, "Theirs");
    EXPECT_EQ(row->text(), QStringLiteral("Mine"));
    EXPECT_FALSE(edits.leave());
    const auto buttons = row->findChildren<QPushButton*>();
    ASSERT_EQ(buttons.size(), 2);
    QTest::mouseClick(buttons[0], Qt::LeftButton); // keep mine
    EXPECT_EQ(item().title, "Mine");
}

TEST_F(RecordFormTest, escLosesNothing) {
    type(kTitle, QStringLiteral("Hymns"));
    QTest::keyClick(field(kTitle), Qt::Key_Escape);
    EXPECT_EQ(form.rowLabelled(kTitle)->text(), QStringLiteral("Hymns"));
    EXPECT_TRUE(edits.leave());
    EXPECT_EQ(item().title, "Hymns");
}

// What is kept of a draft must not take away what could not be read of it.
TEST_F(RecordFormTest, keepsWhatCannotBeReadWhereADraftBecomesARecord) {
    showsItem = false;
    core::Item draft{.id = sample.ids.next<core::Item>(), .owner = item().owner};
    form.showDraft(draft);
    type(kTitle, QStringLiteral("Hymns"));
    type(kHeight, QStringLiteral("14 spans"));
    EXPECT_FALSE(edits.leave());
    const auto kept = core::find(sample.store, draft.id);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->record.title, "Hymns");
    form.show(kept->record, kept->revision);
    EXPECT_EQ(form.rowLabelled(kHeight)->text(), QStringLiteral("14 spans"));
    EXPECT_TRUE(form.rowLabelled(kHeight)->hasError());
    EXPECT_EQ(form.rowLabelled(kTitle)->text(), QStringLiteral("Hymns"));
}

// What a draft is begun with may be just what somebody types.
TEST_F(RecordFormTest, keepsADraftIntoWhichWasTypedWhatStoodThere) {
    showsItem = false;
    const core::Item draft{
        .id = sample.ids.next<core::Item>(), .owner = item().owner, .title = "Hymns"};
    form.showDraft(draft);
    EXPECT_TRUE(edits.leave());
    EXPECT_FALSE(core::find(sample.store, draft.id)) << "nobody has said anything yet";
    type(kTitle, QStringLiteral("Hymns"));
    EXPECT_TRUE(edits.leave());
    EXPECT_TRUE(core::find(sample.store, draft.id));
}

TEST_F(RecordFormTest, keepsTheTextWhereTheDiskIsFull) {
    type(kTitle, QStringLiteral("Hymns"));
    sample.store.failNext = core::StoreError::Code::diskFull;
    leaveByEnter(kTitle);
    EXPECT_NE(item().title, "Hymns");
    EXPECT_EQ(form.rowLabelled(kTitle)->text(), QStringLiteral("Hymns"));
    EXPECT_TRUE(edits.leave()); // there is room again
    EXPECT_EQ(item().title, "Hymns");
}

TEST_F(RecordFormTest, namesEveryControlForScreenReaders) {
    for (const FieldRow* row : form.rows()) {
        EXPECT_EQ(row->control()->accessibleName(), row->label());
    }
}

TEST_F(RecordFormTest, picksARecordByAPartOfItsName) {
    RecordForm<core::CustodyMove> move{session, QStringLiteral("Move")};
    move.pick(QStringLiteral("By"), &core::CustodyMove::who, peopleOf(session));
    move.showDraft({.id = sample.ids.next<core::CustodyMove>(),
                    .job = *sample.hymnal,
                    .at = sample.clock.now()});
    FieldRow* row = move.rowLabelled(QStringLiteral("By"));
    row->rewrite(QStringLiteral("orrin"));
    QStringList labels;
    EXPECT_EQ(move.taken(labels).who, sample.orrin);
    EXPECT_EQ(row->text(), QStringLiteral("M. Orrin"));
    row->rewrite(QStringLiteral("nobody"));
    move.taken(labels);
    EXPECT_TRUE(row->hasError());
}

} // namespace
} // namespace headcap::app
