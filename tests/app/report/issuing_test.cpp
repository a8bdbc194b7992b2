#include "app/report/issuing.h"

#include <functional>

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/report/bytes_as_written.h"
#include "core/custody/next_step.h"
#include "tests/app/report/issuable_job.h"

namespace headcap::app {
namespace {

using core::FileStore;

class IssuingTest : public testing::Test, protected test::IssuableJob {
protected:
    tl::expected<core::IssuedReport, IssueRefusal> issue(const std::string& changes = {}) {
        return issueReport(stores(), job.clock, job.ids, job.file.job.id,
                           {.who = job.anyone(), .changes = changes});
    }
    // Something is done once while the report is drawn.
    void whileDrawn(std::function<void()> work) {
        files.whileDrawn = [this, work = std::move(work)] {
            if (!std::exchange(isChanged, true)) {
                work();
            }
        };
    }
    bool isChanged = false;
};

TEST_F(IssuingTest, aReportIsKeptAsDrawnAndTheJobIsReportedByTheSameEntry) {
    const core::Digest head = store.head();
    const auto issued = issue();
    ASSERT_TRUE(issued) << issued.error().sentence.toStdString();
    EXPECT_EQ(issued->version, 1);
    EXPECT_EQ(issued->journalHead, head.hex());
    const QByteArray pdf = print::test::readFile(
        QString::fromStdString(kept.pathOf(FileStore::Shelf::report, issued->digest).string()));
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    EXPECT_EQ(pdf.size(), issued->bytes);
    EXPECT_EQ(file().job.state, core::JobState::reported);
    EXPECT_EQ(store.latest(1).front().records.size(), 3U);
    EXPECT_EQ(core::nextStep(file(), job.clock).group, core::WorklistGroup::toBeReturned);
}

TEST_F(IssuingTest, whatIsChangedWhileItIsDrawnKeepsItFromBeingIssued) {
    whileDrawn([this] {
        core::FollowUp later = job.file.followUps.front();
        later.id = job.ids.next<core::FollowUp>();
        EXPECT_TRUE(store.apply(core::Change{.sentence = "Follow-up added"}.add(later)));
    });
    const auto issued = issue();
    ASSERT_TRUE(isChanged);
    ASSERT_FALSE(issued);
    EXPECT_NE(issued.error().sentence.indexOf(QStringLiteral("issue it again")), -1);
    EXPECT_TRUE(issued.error().open.empty());
    EXPECT_TRUE(file().reports.empty());
    EXPECT_EQ(file().job.state, core::JobState::passed);
    EXPECT_TRUE(issue());
}

// The bench does not wait for a report of another book.
TEST_F(IssuingTest, whatIsChangedElsewhereLeavesItAsDrawn) {
    const core::Digest head = store.head();
    whileDrawn([this] {
        const core::Person person{.id = job.ids.next<core::Person>(), .name = "Ines Marrow"};
        EXPECT_TRUE(store.apply(core::Change{.sentence = "Person added"}.add(person)));
    });
    const auto issued = issue();
    ASSERT_TRUE(isChanged);
    ASSERT_TRUE(issued) << issued.error().sentence.toStdString();
    EXPECT_NE(store.head(), head);
    EXPECT_EQ(issued->journalHead, head.hex()) << "the head that its pages name";
}

TEST_F(IssuingTest, aReportIssuedMeanwhileTakesTheNumber) {
    const auto first = prepareIssue(stores(), job.clock, job.file.job.id, {.who = job.anyone()});
    ASSERT_TRUE(first);
    ASSERT_TRUE(issue());
    const auto drawn = drawIssue(stores(), job.clock, *first);
    ASSERT_FALSE(drawn);
    EXPECT_EQ(file().reports.size(), 1U);
}

TEST_F(IssuingTest, whatIsStoppedLeavesNothing) {
    const auto issue = prepareIssue(stores(), job.clock, job.file.job.id, {.who = job.anyone()});
    ASSERT_TRUE(issue);
    print::PdfOptions options;
    int asked = 0;
    options.progress = [&asked](int page, int) {
        asked = page;
        return page < 2;
    };
    const auto drawn = drawIssue(stores(), job.clock, *issue, options);
    ASSERT_FALSE(drawn);
    EXPECT_EQ(asked, 2);
    EXPECT_NE(drawn.error().sentence.indexOf(QStringLiteral("stopped")), -1);
    EXPECT_TRUE(file().reports.empty());
}

// Whatever a window still shows, the record of now is what is issued.
TEST_F(IssuingTest, theRecordIsReadWhenItIsIssued) {
    core::Facsimile unmarked = job.file.facsimiles.front();
    unmarked.marking.clear();
    store.changeElsewhere(unmarked);
    const auto issued = issue();
    ASSERT_FALSE(issued);
    EXPECT_EQ(issued.error().open.size(), 1U);
}

TEST_F(IssuingTest, aSecondReportSaysWhatHasChanged) {
    ASSERT_TRUE(issue());
    const auto again = issue();
    ASSERT_FALSE(again);
    EXPECT_NE(again.error().sentence.indexOf(QStringLiteral("report 1")), -1);
    const auto second = issue("the owner's name put right");
    ASSERT_TRUE(second) << second.error().sentence.toStdString();
    EXPECT_EQ(second->version, 2);
    EXPECT_EQ(file().job.state, core::JobState::reported);
}

TEST(BytesAsWritten, areTheWholeFileOrNothing) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("report.pdf"));
    const QByteArray written("the report");
    print::test::writeFile(path, written);
    const auto digest =
        core::sha256(std::as_bytes(std::span{written.constData(), std::size_t{10}}));
    const auto bytes = bytesAsWritten(path, digest);
    ASSERT_TRUE(bytes);
    EXPECT_EQ(core::sha256(*bytes), digest);
    print::test::writeFile(path, written.chopped(1));
    EXPECT_FALSE(bytesAsWritten(path, digest));
    ASSERT_TRUE(QFile::remove(path));
    EXPECT_FALSE(bytesAsWritten(path, digest));
    EXPECT_FALSE(bytesAsWritten(folder.path(), digest));
}

} // namespace
} // namespace headcap::app
