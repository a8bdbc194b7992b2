#include "app/report/issuing.h"

#include <functional>

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/report/bytes_as_written.h"
#include "core/custody/next_step.h"
#include "tests/app/print/sample_photos.h"
#include "tests/support/job_builder.h"
#include "tests/support/memory_store.h"

namespace headcap::app {
namespace {

using core::FileStore;
using core::tests::day;

// Every photograph is there, the same small one; while one is looked for, a test may act.
class PhotographsThere final : public FileStore {
public:
    explicit PhotographsThere(FileStore& kept, std::filesystem::path photograph)
        : m_kept(kept), m_photograph(std::move(photograph)) {}
    std::function<void()> whileDrawn = [] {};
    core::Digest put(Shelf shelf, std::span<const std::byte> bytes,
                     std::string_view suffix) override {
        return m_kept.put(shelf, bytes, suffix);
    }
    std::filesystem::path pathOf(Shelf shelf, const core::Digest& digest) const override {
        return shelf == Shelf::photograph ? m_photograph : m_kept.pathOf(shelf, digest);
    }
    bool has(Shelf shelf, const core::Digest& digest) const override {
        if (shelf == Shelf::photograph) {
            whileDrawn();
        }
        return shelf == Shelf::photograph || m_kept.has(shelf, digest);
    }
    std::filesystem::path cacheFolder() const override { return m_kept.cacheFolder(); }

private:
    FileStore& m_kept;
    std::filesystem::path m_photograph;
};

class IssuingTest : public testing::Test {
protected:
    IssuingTest() {
        print::test::writeFile(photograph(),
                               print::test::jpegOf(print::test::noisyPhotograph(60, 40)));
        store.put(job.file.item);
        store.put(job.file.owner);
        store.put(job.file.job);
        keep(job.file.people, job.file.materials, job.file.lots, job.file.lotParts, job.file.ledger,
             job.file.pieces, job.file.moves, job.file.notices, job.file.followUps,
             job.file.examinations, job.file.findings, job.file.tests, job.file.collations,
             job.file.collationFindings, job.file.facsimiles, job.file.proposals, job.file.options,
             job.file.lines, job.file.decisions, job.file.steps, job.file.uses,
             job.file.photographs, job.file.stepChecks);
    }
    template <class... Records>
    void keep(const std::vector<Records>&... records) {
        const auto keepAll = [this](const auto& all) {
            for (const auto& one : all) {
                store.put(one);
            }
        };
        (keepAll(records), ...);
    }
    QString photograph() const { return folder.filePath(QStringLiteral("photograph.jpg")); }
    core::Stores stores() { return {store, store, store, search, files, upkeep}; }
    tl::expected<core::IssuedReport, IssueRefusal> issue(const std::string& changes = {}) {
        return issueReport(stores(), job.clock, job.ids, job.file.job.id,
                           {.who = job.anyone(), .changes = changes});
    }
    core::JobFile file() { return *core::loadJobFile(store, job.file.job.id); }

    core::tests::FinishedJob job;
    QTemporaryDir folder;
    tests::MemoryStore store;
    tests::MemorySearch search{store};
    tests::MemoryFiles kept{folder.path().toStdString()};
    PhotographsThere files{kept, photograph().toStdString()};
    tests::MemoryUpkeep upkeep;
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
    bool isChanged = false;
    files.whileDrawn = [&] {
        if (!std::exchange(isChanged, true)) {
            core::FollowUp later = job.file.followUps.front();
            later.id = job.ids.next<core::FollowUp>();
            EXPECT_TRUE(store.apply(core::Change{.sentence = "Follow-up added"}.add(later)));
        }
    };
    const auto issued = issue();
    ASSERT_TRUE(isChanged);
    ASSERT_FALSE(issued);
    EXPECT_NE(issued.error().sentence.indexOf(QStringLiteral("issue it again")), -1);
    EXPECT_TRUE(issued.error().open.empty());
    EXPECT_TRUE(file().reports.empty());
    EXPECT_EQ(file().job.state, core::JobState::passed);
    EXPECT_TRUE(issue());
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
