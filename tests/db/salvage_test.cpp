// What can be saved of a damaged workshop is saved, what can't is named, and the damaged one is
// left as it was.
#include <gtest/gtest.h>

#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };
constexpr std::size_t kPage = 4096;

class SalvageTest : public test::WorkshopFixture {
protected:
    SalvageTest() {
        photograph.digest = stores().files.put(
            FileStore::Shelf::photograph, std::as_bytes(std::span{"a photograph", 12}), ".jpg");
        test::mustApply(records(), Change{.sentence = "Photograph added"}.add(photograph));
    }

    Finding addFinding(const std::string& observed) {
        const Finding finding = aFinding(observed);
        test::mustApply(records(), Change{.sentence = "Finding added"}.add(finding));
        return finding;
    }
    void work(int pieces) {
        for (int i = 0; i < pieces; ++i) {
            (void)addFinding("tear " + std::to_string(i) + std::string(300, 'x'));
            test::mustApply(records(), Change{.sentence = "Step logged"}.add(aStep("guarded")));
        }
    }
    // As the program does when a workshop is opened.
    void backUpInside() {
        open.reset();
        clock.set(clock.now() + std::chrono::hours{25});
        open = db::SqliteWorkshops(clock, {}).open(folder());
        reopen();
    }
    void close() {
        head = journal().head();
        open.reset();
        tables = test::recordTables(folder());
        whole = test::bytesOf(database());
    }
    void damage(const std::string& bytes) {
        test::writeBytes(database(), bytes);
        for (const char* suffix : {"-wal", "-shm"}) {
            fs::remove(database().string() + suffix);
        }
    }
    void tamper(const std::string& sql) {
        auto beside = test::openBeside(folder());
        for (const char* trigger : {"journal_is_not_edited", "journal_record_is_not_edited"}) {
            beside.exec(std::string{"DROP TRIGGER IF EXISTS "} + trigger);
        }
        ASSERT_GT(beside.exec(sql), 0) << sql;
    }
    SalvageReport salvage(const std::vector<fs::path>& backups = {}) {
        fs::remove_all(saved());
        const auto before = test::everythingIn(folder());
        auto report = workshops.salvage(folder(), saved(), backups, kGoOn);
        EXPECT_EQ(test::everythingIn(folder()), before) << "the damaged one was touched";
        return report;
    }
    [[nodiscard]] fs::path database() const { return folder() / "workshop.sqlite"; }
    [[nodiscard]] fs::path saved() const { return temp.path() / "saved"; }

    static std::string listed(const SalvageReport& report) {
        std::string all;
        for (const auto& lost : report.lost) {
            all += lost + "\n";
        }
        for (const auto& finding : report.check.findings) {
            all += finding.sentence + "\n";
        }
        return all;
    }
    void expectAllSaved(const SalvageReport& report) {
        EXPECT_TRUE(report.isWhole()) << listed(report);
        EXPECT_EQ(test::recordTables(saved()), tables);
        const auto opened = workshops.open(saved());
        EXPECT_EQ(opened->stores().journal.head(), head);
        EXPECT_TRUE(opened->stores().upkeep.verify(kGoOn).isClean());
        EXPECT_FALSE(opened->stores().search.find("tear", 5).hits.empty());
    }

    Photograph photograph{.id = ids.next<Photograph>(),
                          .job = job.id,
                          .fileName = "IMG_1.jpg",
                          .addedAt = clock.now()};
    Digest head{};
    std::map<std::string, std::string> tables;
    std::string whole;
};

TEST_F(SalvageTest, doesAllAgainFromAJournalThatIsWhole) {
    const auto finding = addFinding("tear");
    ASSERT_TRUE(journal().undo(std::nullopt));
    ASSERT_TRUE(journal().redo(std::nullopt));
    work(30);
    close();
    const auto report = salvage();
    expectAllSaved(report);
    EXPECT_TRUE(report.base.empty());
    EXPECT_GT(report.entriesReplayed, 60);
    EXPECT_EQ(report.recordsPutBack, 0);
    EXPECT_EQ(report.filesCopied, 1);
}

TEST_F(SalvageTest, beginsWithTheLatestBackup) {
    work(10);
    backUpInside();
    work(10);
    close();
    const auto report = salvage();
    expectAllSaved(report);
    EXPECT_FALSE(report.base.empty());
    EXPECT_EQ(report.entriesReplayed, 20);
}

TEST_F(SalvageTest, aDatabaseCutShortKeepsWhatTheBackupHadAndWhatIsStillReadable) {
    work(40);
    backUpInside();
    const auto before = test::recordTables(folder());
    work(40);
    close();
    for (const std::size_t part : {2U, 4U, 6U, 7U}) {
        damage(whole.substr(0, whole.size() * part / 8));
        EXPECT_THROW((void)workshops.open(folder()), StoreError);
        const auto report = salvage();
        EXPECT_FALSE(report.isWhole()) << "it can't be: its end is gone";
        EXPECT_TRUE(report.check.isClean()) << listed(report);
        const auto opened = workshops.open(saved());
        EXPECT_GE(all<Finding>(opened->stores().records).size(), 40U);
        EXPECT_GE(all<Step>(opened->stores().records).size(), 40U);
        EXPECT_TRUE(opened->stores().files.has(FileStore::Shelf::photograph, photograph.digest));
    }
}

TEST_F(SalvageTest, aFirstPageThatIsGoneIsTakenFromTheBackup) {
    work(10);
    backUpInside();
    work(10);
    close();
    damage(std::string(kPage, '\0') + whole.substr(kPage));
    EXPECT_THROW((void)workshops.open(folder()), StoreError);
    const auto report = salvage();
    expectAllSaved(report);
    EXPECT_EQ(report.entriesReplayed, 20);
}

TEST_F(SalvageTest, aLostWalIsNoticedAndABackupOutsideBringsItBack) {
    work(5);
    open.reset(); // which writes the WAL back
    const std::string old = test::bytesOf(database());
    open = workshops.open(folder());
    const auto last = journal().latest(1)[0].sequence;
    work(3);
    (void)stores().upkeep.backup(temp.path() / "backup", kGoOn);
    close();
    damage(old);
    const auto findings = workshops.open(folder())->stores().upkeep.verify(kGoOn).findings;
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_NE(findings[0].sentence.find("what was committed last is lost"), std::string::npos);
    const auto without = salvage();
    ASSERT_EQ(without.lost.size(), 1U) << listed(without);
    EXPECT_EQ(without.lost[0], "Entries " + std::to_string(last + 1) + " to " +
                                   std::to_string(last + 6) +
                                   " of the journal were written, and nothing of them is left.");
    expectAllSaved(salvage({temp.path() / "backup"}));
}

TEST_F(SalvageTest, anAlteredHashIsPutRightByTheEntryBehindIt) {
    work(5);
    close();
    tamper("UPDATE journal SET hash = replace(hash, substr(hash, 1, 1), CASE substr(hash, 1, 1) "
           "WHEN 'a' THEN 'b' ELSE 'a' END) WHERE sequence = 6");
    expectAllSaved(salvage());
}

TEST_F(SalvageTest, anAlteredEntryIsNamedAndItsRecordsAreTakenAsTheyStood) {
    const auto finding = addFinding("joint split");
    const auto entry = journal().latest(1)[0].sequence;
    work(5);
    auto changed = finding;
    changed.observed = "joint split, 4 cm";
    test::mustApply(records(),
                    Change{.sentence = "Finding changed"}.update(changed, Revision{entry}));
    close();
    tamper("UPDATE journal_record SET after = replace(after, 'split', 'sound') WHERE sequence = " +
           std::to_string(entry));
    const auto report = salvage();
    ASSERT_EQ(report.lost.size(), 1U) << listed(report);
    EXPECT_NE(report.lost[0].find("entry " + std::to_string(entry) + " (\"Finding added\")"),
              std::string::npos)
        << report.lost[0];
    EXPECT_TRUE(report.check.isClean()) << listed(report);
    EXPECT_GE(report.recordsPutBack, 11);
    EXPECT_EQ(test::recordTables(saved()), tables) << "every record as it stood";
}

TEST_F(SalvageTest, keepsWhoAndWhenOfEntriesThatCanBeReadBehindTheDamage) {
    (void)addFinding("joint split");
    const auto entry = journal().latest(1)[0].sequence;
    const Step step = aStep("guarded");
    test::mustApply(records(), Change{.sentence = "Step logged", .who = person.id}.add(step));
    const auto said = journal().historyOf(refOf(step.id))[0];
    close();
    tamper("UPDATE journal SET sentence = 'Finding adde' WHERE sequence = " +
           std::to_string(entry));
    (void)salvage();
    const auto opened = workshops.open(saved());
    const auto history = opened->stores().journal.historyOf(refOf(step.id));
    ASSERT_EQ(history.size(), 1U);
    EXPECT_EQ(history[0].sentence, said.sentence);
    EXPECT_EQ(history[0].who, said.who);
    EXPECT_EQ(history[0].at, said.at);
}

TEST_F(SalvageTest, doesNotBeginWithABackupThatGoesOnOtherwise) {
    work(3);
    open.reset();
    const std::string old = test::bytesOf(database());
    open = workshops.open(folder());
    work(1);
    (void)stores().upkeep.backup(temp.path() / "backup", kGoOn);
    open.reset();
    damage(old);
    open = workshops.open(folder());
    work(4);
    close();
    const auto report = salvage({temp.path() / "backup"});
    EXPECT_TRUE(report.base.empty());
    ASSERT_EQ(report.lost.size(), 1U) << listed(report);
    EXPECT_NE(report.lost[0].find("goes on otherwise"), std::string::npos);
    EXPECT_EQ(test::recordTables(saved()), tables);
}

TEST_F(SalvageTest, refusesWhereThereIsNothingOrSomethingInTheWay) {
    work(1);
    close();
    EXPECT_THROW((void)workshops.salvage(folder(), folder(), {}, kGoOn), StoreError);
    EXPECT_THROW((void)workshops.salvage(temp.path() / "nowhere", saved(), {}, kGoOn), StoreError);
    damage(std::string(whole.size(), '\0'));
    try {
        (void)workshops.salvage(folder(), saved(), {}, kGoOn);
        ADD_FAILURE();
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), StoreError::Code::truncated);
    }
    damage(whole);
    test::openBeside(folder()).exec("PRAGMA user_version = 999");
    EXPECT_THROW((void)workshops.salvage(folder(), temp.path() / "other", {}, kGoOn), StoreError);
}

TEST_F(SalvageTest, altersNoFileThatIsDamaged) {
    close();
    test::writeBytes(folder() / "photos" / photograph.digest.hex().substr(0, 2) /
                         (photograph.digest.hex() + ".jpg"),
                     "a photograpH");
    const auto report = salvage();
    ASSERT_EQ(report.check.findings.size(), 1U) << listed(report);
    EXPECT_NE(report.check.findings[0].sentence.find("\"IMG_1.jpg\" of job 2031-001 is missing"),
              std::string::npos);
}

} // namespace
} // namespace headcap::core
