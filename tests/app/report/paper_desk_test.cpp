#include "app/report/paper_desk.h"

#include <future>
#include <thread>

#include <QDir>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/pages/report_page.h"
#include "app/print/report_preview.h"
#include "app/report/issuing.h"
#include "tests/app/report/issuable_job.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

class PaperDeskTest : public testing::Test, protected test::IssuableJob {
protected:
    PaperDeskTest() {
        QObject::connect(&session, &Session::said,
                         [this](const Notice& notice) { notices.push_back(notice); });
    }
    core::Document draft() { return draftOf(stores(), job.clock, file()); }
    QString path() const { return out.filePath(QStringLiteral("draft.pdf")); }
    bool ends(const PaperDesk& desk) {
        return QTest::qWaitFor([&desk] { return !desk.isBusy(); }, 60'000);
    }
    QString said() const { return notices.empty() ? QString{} : notices.back().sentence; }

    QTemporaryDir out;
    tests::FakePrompts prompts;
    Settings settings{folder.filePath(QStringLiteral("settings.ini"))};
    Session session{{.stores = stores(),
                     .clock = job.clock,
                     .ids = job.ids,
                     .prompts = prompts,
                     .settings = settings}};
    std::vector<Notice> notices;
};

TEST_F(PaperDeskTest, savesAwayFromTheWindowAndSaysWhereItLies) {
    std::vector<int> pages;
    PaperDesk desk(session);
    QObject::connect(&desk, &PaperDesk::progressed,
                     [&pages](int page, int) { pages.push_back(page); });
    desk.save(draft(), photoLookup(stores()), path(), QStringLiteral("It lies at %1"));
    EXPECT_TRUE(desk.isBusy());
    EXPECT_TRUE(notices.empty());
    ASSERT_TRUE(ends(desk));
    EXPECT_EQ(said(), QStringLiteral("It lies at %1").arg(path()));
    ASSERT_GT(pages.size(), 2U);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        EXPECT_EQ(pages[i], static_cast<int>(i) + 1);
    }
    // The same bytes as drawn here.
    const QString here = out.filePath(QStringLiteral("here.pdf"));
    ASSERT_TRUE(print::writePdf(draft(), photoLookup(stores()), here));
    EXPECT_EQ(print::test::readFile(path()), print::test::readFile(here));
}

TEST_F(PaperDeskTest, theWindowGoesOnWhileItDraws) {
    std::promise<void> let;
    std::shared_future<void> gate = let.get_future().share();
    PaperDesk desk(session);
    std::thread::id thread;
    desk.draw(
        [&thread, gate](const print::PdfOptions&) {
            thread = std::this_thread::get_id();
            gate.wait();
            return 7;
        },
        [this](int) {
            notices.push_back({Notice::Kind::done, QStringLiteral("drawn")});
        });
    bool isTurning = false;
    QMetaObject::invokeMethod(
        &desk, [&isTurning] { isTurning = true; }, Qt::QueuedConnection);
    ASSERT_TRUE(QTest::qWaitFor([&isTurning] { return isTurning; }, 60'000));
    EXPECT_TRUE(desk.isBusy());
    // What is asked meanwhile is not begun.
    desk.save(draft(), {}, path(), QStringLiteral("%1"));
    EXPECT_EQ(notices.back().kind, Notice::Kind::refused);
    EXPECT_TRUE(said().contains(QStringLiteral("still being drawn")));
    let.set_value();
    ASSERT_TRUE(ends(desk));
    EXPECT_EQ(said(), QStringLiteral("drawn"));
    EXPECT_NE(thread, std::this_thread::get_id());
    EXPECT_FALSE(QFile::exists(path()));
}

TEST_F(PaperDeskTest, stoppedOrForsakenItLeavesNoFile) {
    {
        PaperDesk desk(session);
        desk.save(draft(), photoLookup(stores()), path(), QStringLiteral("%1"));
        desk.stop();
        ASSERT_TRUE(ends(desk));
        EXPECT_EQ(notices.back().kind, Notice::Kind::done) << "it was meant";
        EXPECT_TRUE(said().contains(QStringLiteral("stopped")));
        notices.clear();
        desk.save(draft(), photoLookup(stores()), path(), QStringLiteral("%1"));
    }
    EXPECT_EQ(QDir(out.path()).entryList(QDir::Files | QDir::Hidden), QStringList{});
    QCoreApplication::processEvents();
    EXPECT_TRUE(notices.empty());
}

TEST_F(PaperDeskTest, aFolderThatIsGoneIsSaid) {
    PaperDesk desk(session);
    desk.save(draft(), {}, out.filePath(QStringLiteral("gone/draft.pdf")), QStringLiteral("%1"));
    ASSERT_TRUE(ends(desk));
    EXPECT_EQ(notices.back().kind, Notice::Kind::failed);
    EXPECT_TRUE(said().contains(QStringLiteral("no such folder")));
}

class ReportPageTest : public PaperDeskTest {
protected:
    ReportPageTest() {
        QObject::connect(&session, &Session::changed, &page, [this] { page.load(file()); });
        session.setPerson(job.anyone());
        page.resize(900, 700);
        page.show();
        page.load(file());
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&page));
    }
    QPushButton* button(const QString& words) {
        for (auto* one : page.findChildren<QPushButton*>()) {
            if (one->isVisible() && one->text() == words) {
                return one;
            }
        }
        return nullptr;
    }
    const QString issueWords = QStringLiteral("Issue report 1");
    ReportPage page{session};
};

TEST_F(ReportPageTest, issuesWhileOneGoesOn) {
    button(issueWords)->setFocus();
    QTest::keyClick(button(issueWords), Qt::Key_Return);
    ASSERT_TRUE(page.desk().isBusy());
    EXPECT_EQ(button(issueWords), nullptr);
    ASSERT_NE(button(QStringLiteral("Stop")), nullptr);
    EXPECT_TRUE(button(QStringLiteral("Stop"))->hasFocus());
    EXPECT_FALSE(button(QStringLiteral("Save a draft …"))->isEnabled());
    EXPECT_TRUE(file().reports.empty());
    ASSERT_TRUE(ends(page.desk()));
    ASSERT_EQ(file().reports.size(), 1U) << said().toStdString();
    EXPECT_TRUE(said().contains(fromCore(job.file.job.number)));
    EXPECT_EQ(button(QStringLiteral("Stop")), nullptr);
    EXPECT_NE(button(QStringLiteral("Issue report 2")), nullptr);
    EXPECT_EQ(file().reports.front().who, job.anyone());
    EXPECT_EQ(session.undoable(), QString{}) << "what is issued stays issued";
}

TEST_F(ReportPageTest, itsPagesAreLaidOutBetweenWhatElseComes) {
    auto& preview = *page.findChild<print::ReportPreview*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return preview.pageCount() > 0; }, 60'000));
    const int pages = preview.pageCount();
    core::JobFile another = file();
    another.job.id = job.ids.next<core::Job>();
    page.load(another);
    EXPECT_EQ(preview.pageCount(), 0) << "never one book's pages under another's name";
    ASSERT_TRUE(QTest::qWaitFor([&] { return preview.pageCount() > 0; }, 60'000));
    EXPECT_EQ(preview.pageCount(), pages);
}

TEST_F(ReportPageTest, somebodyAnswersForWhatIsIssued) {
    session.setPerson(std::nullopt);
    bool isAsked = false;
    QObject::connect(&session, &Session::personAsked, [&isAsked] { isAsked = true; });
    QTest::keyClick(button(issueWords), Qt::Key_Return);
    EXPECT_TRUE(isAsked);
    EXPECT_FALSE(page.desk().isBusy());
    EXPECT_EQ(notices.back().kind, Notice::Kind::refused);
}

TEST_F(ReportPageTest, escStopsItAndNothingIsIssued) {
    EXPECT_FALSE(page.back());
    QTest::keyClick(button(issueWords), Qt::Key_Return);
    ASSERT_TRUE(page.desk().isBusy());
    EXPECT_TRUE(page.back());
    ASSERT_TRUE(ends(page.desk()));
    EXPECT_TRUE(file().reports.empty());
    EXPECT_EQ(notices.back().kind, Notice::Kind::refused);
    EXPECT_NE(button(issueWords), nullptr);
    EXPECT_FALSE(page.back());
}

} // namespace
} // namespace headcap::app
