#include "app/pages/report/release_panel.h"

#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>

#include "app/pages/report_page.h"
#include "tests/app/pages/page_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class ReleasePanelTest : public PageTest<ReportPage> {
protected:
    ReleasePanelTest() {
        EXPECT_TRUE(open(*sample.grafting, core::Page::report));
        QTest::keyClick(&page().letGo(), Qt::Key_Space);
    }
    bool isSettled(const std::string& key) {
        for (const core::ReleaseRow& row : page().release().rows()) {
            if (row.key == key) {
                return row.isSettled();
            }
        }
        return false;
    }
    void explainAll() {
        for (std::size_t i = 0; i < page().release().rows().size(); ++i) {
            const core::ReleaseRow row = page().release().rows()[i];
            if (row.isSettled() || row.key == core::kSignOff) {
                continue;
            }
            QPushButton* button = page().release().buttonOf(row.key);
            ASSERT_NE(button, nullptr) << row.key;
            auto* why = button->parentWidget()->findChild<QLineEdit*>();
            why->setFocus();
            QTest::keyClicks(why, QStringLiteral("seen together with the owner"));
            QTest::keyClick(why, Qt::Key_Return);
        }
    }
};

TEST_F(ReleasePanelTest, aRowIsAnsweredByItsButtonAndStandsWithWhoDidIt) {
    ASSERT_FALSE(isSettled("leaf_tally"));
    QTest::keyClick(page().release().buttonOf("leaf_tally"), Qt::Key_Space);
    EXPECT_TRUE(isSettled("leaf_tally"));
    ASSERT_EQ(file().releaseChecks.size(), 1U);
    EXPECT_EQ(file().releaseChecks.front().who, sample.orrin);
    press(ActionId::undo);
    EXPECT_FALSE(isSettled("leaf_tally"));
}

// The number is asked for first, and the hand goes on down the list: never into the margin.
TEST_F(ReleasePanelTest, theFocusGoesOnToTheNextOpenRow) {
    auto* count = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(count, nullptr);
    EXPECT_TRUE(page().release().buttonOf("leaf_tally")->parentWidget()->isAncestorOf(count));
    QTest::keyClicks(count, QStringLiteral("80"));
    QTest::keyClick(count, Qt::Key_Return);
    ASSERT_TRUE(isSettled("leaf_tally"));
    EXPECT_EQ(file().releaseChecks.front().why, "80");
    std::size_t answered = 1;
    for (int i = 0; i < 2; ++i) {
        auto* button = qobject_cast<QPushButton*>(QApplication::focusWidget());
        ASSERT_NE(button, nullptr);
        ASSERT_TRUE(page().release().isAncestorOf(button));
        if (button->text() == QStringLiteral("Done")) {
            QTest::keyClick(button, Qt::Key_Return);
            EXPECT_EQ(file().releaseChecks.size(), ++answered);
            EXPECT_TRUE(page().release().isAncestorOf(QApplication::focusWidget()));
        }
    }
    EXPECT_GT(answered, 1U);
}

// Each thing that came with it by itself, and what became of it stands with the piece.
TEST_F(ReleasePanelTest, aPieceIsTickedByItselfAndOpenedAgain) {
    ASSERT_GT(file().pieces.size(), 1U);
    const std::string first = "piece " + file().pieces[0].id.text();
    const std::string second = "piece " + file().pieces[1].id.text();
    QTest::keyClick(page().release().buttonOf(first), Qt::Key_Space);
    EXPECT_TRUE(isSettled(first));
    EXPECT_FALSE(isSettled(second));
    EXPECT_EQ(file().pieces[0].returned, "given back with the book");
    for (QPushButton* button : page().release().findChildren<QPushButton*>()) {
        if (button->accessibleName().startsWith(QStringLiteral("Open again: Came with it"))) {
            QTest::keyClick(button, Qt::Key_Space);
            break;
        }
    }
    EXPECT_FALSE(isSettled(first));
    EXPECT_EQ(file().pieces[0].returned, "");
}

TEST_F(ReleasePanelTest, aRowOfTheRecordLeadsToWhereItIsSeenTo) {
    ASSERT_FALSE(isSettled("report_issued"));
    QPushButton* button = page().release().buttonOf("nothing_running");
    ASSERT_NE(button, nullptr);
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_EQ(job().page(), core::Page::bench);
}

TEST_F(ReleasePanelTest, nothingIsGivenBackBeforeTheSignOff) {
    EXPECT_FALSE(page().release().giveBack().isEnabled());
    explainAll();
    EXPECT_FALSE(page().release().giveBack().isEnabled());
    QTest::keyClick(page().release().buttonOf("sign_off"), Qt::Key_Space);
    ASSERT_TRUE(page().release().giveBack().isEnabled());
    FormBase& form = page().release().form();
    type(form, QStringLiteral("Given to"), QStringLiteral("R. Hale"));
    type(form, QStringLiteral("Its condition"), QStringLiteral("as in the report"));
    QTest::keyClick(&page().release().giveBack(), Qt::Key_Space);
    ASSERT_EQ(file().handBacks.size(), 1U);
    EXPECT_EQ(file().handBacks.front().givenTo, "R. Hale");
    EXPECT_EQ(file().moves.back().toPlace, "with R. Hale");
}

// A book that has gone can't be counted or signed for.
TEST_F(ReleasePanelTest, theListOfABookGivenBackAsksOnlyWhyNot) {
    core::Job gone = file().job;
    gone.state = core::JobState::returned;
    sample.store.changeElsewhere(gone);
    session.poll();
    for (const char* key : {"leaf_tally", "sign_off"}) {
        QPushButton* button = page().release().buttonOf(key);
        ASSERT_NE(button, nullptr) << key;
        EXPECT_FALSE(button->isVisibleTo(button->parentWidget())) << key;
    }
    auto* why = page().release().buttonOf("leaf_tally")->parentWidget()->findChild<QLineEdit*>();
    why->setText(QStringLiteral("it left before it was counted"));
    QTest::keyClick(why, Qt::Key_Return);
    const auto checks = file().releaseChecks;
    const auto tally = std::ranges::find(checks, "leaf_tally", &core::ReleaseCheck::key);
    ASSERT_NE(tally, checks.end()) << window.notices().sentence().toStdString();
    EXPECT_EQ(tally->answer, core::ReleaseAnswer::explained);
}

// Before it goes, so that it can be signed; and again from what was noted.
TEST_F(ReleasePanelTest, theReceiptIsSavedAsTheFormSaysIt) {
    QTemporaryDir folder;
    sample.prompts.file = folder.filePath(QStringLiteral("receipt.pdf"));
    type(page().release().form(), QStringLiteral("Given to"), QStringLiteral("R. Hale"));
    for (QPushButton* button : page().release().findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Save it as PDF …") && button->isVisible()) {
            QTest::keyClick(button, Qt::Key_Space);
        }
    }
    QFile paper{*sample.prompts.file};
    ASSERT_TRUE(tests::isRead(page()));
    ASSERT_TRUE(paper.open(QIODevice::ReadOnly));
    EXPECT_TRUE(paper.read(5) == "%PDF-");
    EXPECT_TRUE(file().handBacks.empty()) << "nothing is noted by printing";
}

TEST_F(ReleasePanelTest, aReturnWithoutItsConditionIsNotNoted) {
    explainAll();
    QTest::keyClick(page().release().buttonOf("sign_off"), Qt::Key_Space);
    QTest::keyClick(&page().release().giveBack(), Qt::Key_Space);
    EXPECT_TRUE(file().handBacks.empty());
    EXPECT_TRUE(window.notices().sentence().contains(QStringLiteral("condition")));
}

} // namespace
} // namespace headcap::app
