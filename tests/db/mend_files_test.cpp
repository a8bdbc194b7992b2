// Files that are missing or altered are put back by what they hold, from wherever they are found.
#include <gtest/gtest.h>

#include "core/record/safe_keeping.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;
using Shelf = FileStore::Shelf;

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

class MendFilesTest : public test::WorkshopFixture {
protected:
    MendFilesTest() {
        Change change{.sentence = "Kept"};
        for (int i = 0; i < 3; ++i) {
            const std::string bytes = "photograph " + std::to_string(i);
            pictures.push_back({.id = ids.next<Photograph>(),
                                .job = job.id,
                                .digest = put(Shelf::photograph, bytes, ".jpg"),
                                .fileName = "IMG_" + std::to_string(i) + ".jpg",
                                .bytes = static_cast<std::int64_t>(bytes.size()),
                                .addedAt = clock.now()});
            change.add(pictures.back());
        }
        letter.digest = put(Shelf::attachment, "a letter", ".pdf");
        letter.bytes = 8;
        test::mustApply(records(), change.add(letter));
    }
    Digest put(Shelf shelf, std::string_view bytes, std::string_view suffix) {
        return stores().files.put(shelf, std::as_bytes(std::span{bytes}), suffix);
    }
    SafeKeeping& keeping() { return *safeKeepingOf(stores().upkeep); }
    [[nodiscard]] fs::path fileOf(std::size_t picture) {
        return stores().files.pathOf(Shelf::photograph, pictures[picture].digest);
    }

    std::vector<Photograph> pictures;
    Attachment letter{.id = ids.next<Attachment>(),
                      .job = job.id,
                      .subject = refOf(job.id),
                      .fileName = "letter.pdf"};
};

TEST_F(MendFilesTest, putsBackFromABackup) {
    (void)stores().upkeep.backup(temp.path() / "backup", kGoOn);
    const auto whole = test::everythingIn(folder() / "photos");
    fs::remove(fileOf(0));
    test::writeBytes(fileOf(1), "photograph !");
    const auto report = keeping().mendFiles(temp.path() / "backup", kGoOn);
    EXPECT_EQ(report.mended.size(), 2U);
    EXPECT_TRUE(report.left.empty());
    EXPECT_EQ(test::everythingIn(folder() / "photos"), whole);
    EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
}

TEST_F(MendFilesTest, findsThemInAnyFolderUnderAnyName) {
    const auto card = temp.path() / "card" / "DCIM" / "100";
    fs::create_directories(card);
    test::writeBytes(card / "DSC00017.JPG", "photograph 2");
    test::writeBytes(card / "DSC00018.JPG", "another of 12"); // as long, and another
    test::writeBytes(temp.path() / "card" / "scan", "a letter");
    fs::remove(fileOf(2));
    fs::remove(stores().files.pathOf(Shelf::attachment, letter.digest));
    fs::remove(fileOf(0));
    const auto report = keeping().mendFiles(temp.path() / "card", kGoOn);
    EXPECT_EQ(report.mended.size(), 2U);
    ASSERT_EQ(report.left.size(), 1U);
    EXPECT_EQ(report.left[0].sentence, "The photograph \"IMG_0.jpg\" of job 2031-001 is missing.");
    EXPECT_EQ(fileOf(2).extension(), ".jpg");
    EXPECT_EQ(stores().upkeep.verify(kGoOn).findings.size(), 1U);
}

TEST_F(MendFilesTest, namesEachJobThatShowsTheFile) {
    Job second = job;
    second.id = ids.next<Job>();
    second.number = "2031-002";
    Photograph same = pictures[0];
    same.id = ids.next<Photograph>();
    same.job = second.id;
    test::mustApply(records(), Change{.sentence = "Again"}.add(second).add(same));
    fs::remove(fileOf(0));
    const auto findings = stores().upkeep.verify(kGoOn).findings;
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_NE((findings[0].sentence + findings[1].sentence).find("job 2031-002"),
              std::string::npos);
    test::writeBytes(temp.path() / "copy", "photograph 0");
    EXPECT_EQ(keeping().mendFiles(temp.path(), kGoOn).mended.size(), 2U);
}

TEST_F(MendFilesTest, canBeStoppedAndSaysSoWhereItCanNotLook) {
    fs::remove(fileOf(0));
    const auto stopped =
        keeping().mendFiles(folder(), [](std::int64_t, std::int64_t) { return false; });
    EXPECT_TRUE(stopped.wasStopped);
    EXPECT_EQ(stopped.left.size(), 1U);
    EXPECT_THROW((void)keeping().mendFiles(temp.path() / "nowhere", kGoOn), StoreError);
}

} // namespace
} // namespace headcap::core
