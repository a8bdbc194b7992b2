// The sheet of leaves ticked by keys alone, and on paper.
#include "app/pages/collation/leaf_sheet_section.h"

#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>

#include "app/pages/collation/leaf_sheet_view.h"
#include "app/pages/collation_page.h"
#include "tests/app/pages/page_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class LeafSheetTest : public PageTest<CollationPage> {
protected:
    LeafSheetTest() {
        core::Collation collation{.id = sample.ids.next<core::Collation>(), .job = *sample.hymnal};
        collation.formula = "8°: A⁴ B-D⁸";
        sample.store.changeElsewhere(collation);
        add("tear_mending", "A2, B1–B4, C8", 1);
        add("guarding", "B3–B6", 2);
        EXPECT_TRUE(open(*sample.hymnal, core::Page::collation));
    }
    void add(const char* technique, const char* leaves, int position) {
        core::LeafTask task{.id = sample.ids.next<core::LeafTask>(), .job = *sample.hymnal};
        task.technique = technique;
        task.leaves = leaves;
        task.position = position;
        sample.store.changeElsewhere(task);
    }
    LeafSheetView& sheet() { return page().leafSheet().sheet(); }
    core::LeafTask task(std::size_t at) { return sample.file(*sample.hymnal).leafTasks.at(at); }
    void key(int code) { QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(code)); }
    void go() {
        QTest::keySequence(QApplication::focusWidget(), QKeySequence{QLatin1String(kSheetKey)});
    }
    QString here() {
        return sheet().model()->data(sheet().currentIndex(), Qt::AccessibleTextRole).toString();
    }
};

TEST_F(LeafSheetTest, isTickedLeafAfterLeafByKeysAlone) {
    go();
    ASSERT_TRUE(sheet().hasFocus());
    EXPECT_EQ(here(), QStringLiteral("A2, Mending tears: to do"));
    key(Qt::Key_Space);
    EXPECT_EQ(task(0).done, "A2");
    EXPECT_EQ(here(), QStringLiteral("B1, Mending tears: to do"));
    key(Qt::Key_E); // to the end of gathering B
    EXPECT_EQ(task(0).done, "A2, B1–B4");
    EXPECT_EQ(here(), QStringLiteral("C8, Mending tears: to do"));
    key(Qt::Key_Up); // B6, which is only of the other work
    EXPECT_EQ(here(), QStringLiteral("B6, Mending tears: not of this work"));
    key(Qt::Key_Space);
    EXPECT_EQ(task(0).done, "A2, B1–B4");
    key(Qt::Key_Right);
    key(Qt::Key_Space);
    EXPECT_EQ(task(1).done, "B6");
    key(Qt::Key_Space); // it stands there: taken back
    EXPECT_EQ(task(1).done, "");
}

TEST_F(LeafSheetTest, everyTickIsUndoneByItself) {
    go();
    key(Qt::Key_Space);
    key(Qt::Key_Space);
    EXPECT_EQ(task(0).done, "A2, B1");
    press(ActionId::undo);
    EXPECT_EQ(task(0).done, "A2");
}

TEST_F(LeafSheetTest, eachCellSaysItselfToAScreenReader) {
    for (int row = 0; row < sheet().model()->rowCount(); ++row) {
        for (int column = 1; column < sheet().model()->columnCount(); ++column) {
            const auto said =
                sheet().model()->index(row, column).data(Qt::AccessibleTextRole).toString();
            EXPECT_TRUE(said.contains(QLatin1Char(':'))) << row << " " << column;
        }
    }
    EXPECT_FALSE(sheet().accessibleName().isEmpty());
}

TEST_F(LeafSheetTest, isWrittenAsAPdfForTheWetRoom) {
    const QTemporaryDir folder;
    sample.prompts.file = folder.filePath(QStringLiteral("leaves.pdf"));
    for (QPushButton* button : page().leafSheet().findChildren<QPushButton*>()) {
        if (button->text().startsWith(QStringLiteral("Save"))) {
            QTest::mouseClick(button, Qt::LeftButton);
        }
    }
    ASSERT_TRUE(tests::isRead(page()));
    QFile file{folder.filePath(QStringLiteral("leaves.pdf"))};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5).startsWith("%PDF-"));
}

} // namespace
} // namespace headcap::app
