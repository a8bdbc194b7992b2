#include "app/form/record_list.h"

#include <QAbstractItemModelTester>
#include <QTest>

#include <gtest/gtest.h>

#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

class RecordListTest : public testing::Test {
protected:
    RecordListTest() {
        pieces.form().value(QStringLiteral("How many"), &core::Piece::count);
        pieces.form().text(QStringLiteral("What"), &core::Piece::what);
        pieces.describe = [](const core::Piece& piece) {
            return RowWords{.mark = QString::number(piece.count),
                            .title = QString::fromStdString(piece.what)};
        };
        pieces.make = [this]() -> std::optional<core::Piece> {
            return core::Piece{sample.ids.next<core::Piece>(), *sample.grafting};
        };
        QObject::connect(&session, &Session::changed, [this] { showAgain(); });
        showAgain();
        pieces.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&pieces));
    }
    void showAgain() {
        const auto file = sample.file(*sample.grafting);
        pieces.show(file.pieces, file);
    }
    std::vector<core::Piece> kept() { return sample.file(*sample.grafting).pieces; }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    PageEdits edits{session};
    RecordList<core::Piece> pieces{session,
                                   edits,
                                   {QStringLiteral("Pieces"), QStringLiteral("Add a piece"),
                                    QStringLiteral("What came with it.")},
                                   QStringLiteral("Piece")};
};

TEST_F(RecordListTest, addsByInsertAndKeepsItOnceSomethingIsWritten) {
    const std::size_t before = kept().size();
    pieces.list().setFocus();
    QTest::keyClick(&pieces.list(), Qt::Key_Insert);
    EXPECT_EQ(kept().size(), before);
    QWidget* what = pieces.form().rowLabelled(QStringLiteral("What"))->control();
    EXPECT_TRUE(what->isVisible());
    QTest::keyClicks(what, QStringLiteral("a green ribbon"));
    QTest::keyClick(what, Qt::Key_Return);
    ASSERT_EQ(kept().size(), before + 1);
    EXPECT_EQ(kept().back().what, "a green ribbon");
    EXPECT_EQ(sample.store.last().sentence, "Piece added: a green ribbon");
    // And goes on as the same record.
    QTest::keyClicks(what, QStringLiteral("s"));
    QTest::keyClick(what, Qt::Key_Return);
    ASSERT_EQ(kept().size(), before + 1);
}

TEST_F(RecordListTest, removesByDeleteWithoutAskingAndUndoBringsBack) {
    const auto before = kept();
    ASSERT_GE(before.size(), 2U);
    pieces.list().setFocus();
    pieces.list().select(before.front().id.uuid());
    QTest::keyClick(&pieces.list(), Qt::Key_Delete);
    EXPECT_EQ(kept().size(), before.size() - 1);
    EXPECT_EQ(session.undoable().toStdString(), "Piece removed: " + before.front().what);
    session.undo();
    EXPECT_EQ(kept(), before);
}

TEST_F(RecordListTest, whatCouldNotBeRemovedGoesOnBeingKept) {
    const auto before = kept();
    pieces.list().setFocus();
    pieces.list().select(before.front().id.uuid());
    sample.store.failNext = core::StoreError::Code::busy;
    QTest::keyClick(&pieces.list(), Qt::Key_Delete);
    ASSERT_EQ(kept(), before);
    QWidget* what = pieces.form().rowLabelled(QStringLiteral("What"))->control();
    what->setFocus();
    QTest::keyClick(what, Qt::Key_End);
    QTest::keyClicks(what, QStringLiteral(", torn"));
    EXPECT_TRUE(edits.leave());
    EXPECT_EQ(kept().front().what, before.front().what + ", torn");
}

TEST_F(RecordListTest, anEmptyDraftLeavesNothingBehind) {
    const std::size_t changes = sample.store.changes();
    pieces.startNew();
    EXPECT_TRUE(edits.leave());
    EXPECT_EQ(sample.store.changes(), changes);
}

TEST_F(RecordListTest, goesToARecord) {
    const auto id = kept().back().id.uuid();
    EXPECT_TRUE(pieces.goTo(id));
    EXPECT_EQ(pieces.list().current(), id);
    EXPECT_EQ(pieces.form().record()->what, kept().back().what);
    EXPECT_FALSE(pieces.goTo(sample.ids.nextUuid()));
}

TEST(RuledModel, isAnHonestModel) {
    RuledModel model;
    const QAbstractItemModelTester tester{&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal};
    const tests::FixedClock clock;
    core::IdSource ids{clock, 1};
    const auto a = ids.nextUuid();
    const auto b = ids.nextUuid();
    model.show({{a, {.title = QStringLiteral("one")}}, {b, {.title = QStringLiteral("two")}}});
    model.show({{a, {.title = QStringLiteral("One")}}, {b, {.title = QStringLiteral("two")}}});
    model.show({{b, {.title = QStringLiteral("two")}}});
    EXPECT_EQ(model.rowOf(b), 0);
    EXPECT_EQ(model.rowOf(a), -1);
}

TEST(RuledList, filtersHoweverTheLettersAreMade) {
    const tests::FixedClock clock;
    core::IdSource ids{clock, 1};
    RuledList list{QStringLiteral("Books")};
    list.show({{ids.nextUuid(), {.title = QStringLiteral("Miſſale Æthiopicum")}},
               {ids.nextUuid(), {.title = QStringLiteral("Hymnal")}}});
    list.setFilter(QStringLiteral("missale aeth"));
    EXPECT_FALSE(list.isRowHidden(0));
    EXPECT_TRUE(list.isRowHidden(1));
    list.setFilter({});
    EXPECT_FALSE(list.isRowHidden(1));
}

} // namespace
} // namespace headcap::app
