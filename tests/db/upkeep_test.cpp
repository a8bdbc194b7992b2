// Verify finds what was tampered with and names it; backups come back.
#include <gtest/gtest.h>

#include "core/record/backup_standing.h"
#include "db/files/shelves.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

class UpkeepTest : public test::WorkshopFixture {
protected:
    UpkeepTest() {
        photograph.digest = put(FileStore::Shelf::photograph, "a photograph", ".jpg");
        letter.digest = put(FileStore::Shelf::attachment, "a letter", ".pdf");
        report.digest = put(FileStore::Shelf::report, "a report", ".pdf");
        test::mustApply(records(), Change{.sentence = "A day's work"}
                                       .add(finding)
                                       .add(photograph)
                                       .add(letter)
                                       .add(report)
                                       .add(paste)
                                       .add(lot)
                                       .add(entry));
    }

    Digest put(FileStore::Shelf shelf, std::string_view bytes, std::string_view suffix) {
        return stores().files.put(shelf, std::as_bytes(std::span{bytes}), suffix);
    }
    VerifyReport verify() { return stores().upkeep.verify(kGoOn); }
    // What the tampering statements do is found by this check, and said of this record.
    void expectFound(const std::string& what, const std::string& words,
                     std::optional<RecordRef> record = std::nullopt) {
        const auto findings = verify().findings;
        const bool isFound =
            std::any_of(findings.begin(), findings.end(), [&](const VerifyFinding& one) {
                return one.what == what && one.sentence.find(words) != std::string::npos &&
                       (!record || one.record == record);
            });
        std::string all;
        for (const auto& one : findings) {
            all += one.what + ": " + one.sentence + "\n";
        }
        EXPECT_TRUE(isFound) << what << ", " << words << "; found:\n" << all;
    }
    void tamper(const std::string& sql) {
        open.reset();
        {
            auto database = test::openBeside(folder());
            database.exec("PRAGMA foreign_keys = OFF");
            for (const char* trigger :
                 {"journal_is_not_edited", "journal_is_permanent", "journal_record_is_not_edited",
                  "journal_record_is_permanent", "ledger_entry_is_permanent"}) {
                database.exec(std::string{"DROP TRIGGER IF EXISTS "} + trigger);
            }
            database.exec(sql);
        }
        open = workshops.open(folder());
    }

    Finding finding = aFinding("joint split");
    Photograph photograph{.id = ids.next<Photograph>(),
                          .job = job.id,
                          .fileName = "IMG_1.jpg",
                          .addedAt = clock.now()};
    Attachment letter{.id = ids.next<Attachment>(),
                      .job = job.id,
                      .subject = refOf(job.id),
                      .fileName = "letter.pdf"};
    IssuedReport report{.id = ids.next<IssuedReport>(),
                        .job = job.id,
                        .issuedAt = clock.now(),
                        .fileName = "2031-001.pdf"};
    Material paste{.id = ids.next<Material>(), .name = "Wheat starch paste", .unit = Unit::gram};
    Lot lot{.id = ids.next<Lot>(), .number = "31-001", .material = paste.id};
    LedgerEntry entry{.id = ids.next<LedgerEntry>(),
                      .lot = lot.id,
                      .at = clock.now(),
                      .amount = Amount::of(Mass::grams(100))};
};

TEST_F(UpkeepTest, findsNothingInASoundWorkshopAndSaysWhatItLookedAt) {
    const auto said = verify();
    EXPECT_TRUE(said.isClean());
    std::map<std::string, std::int64_t> checked(said.checked.begin(), said.checked.end());
    EXPECT_EQ(checked["photograph"], 1);
    EXPECT_EQ(checked["attachment"], 1);
    EXPECT_EQ(checked["report"], 1);
    EXPECT_EQ(checked["ledger"], 1);
    EXPECT_EQ(checked["record"], 11);
    EXPECT_GT(checked["database"], 10);
    EXPECT_EQ(checked["journal"], journal().latest(1)[0].sequence);
}

TEST_F(UpkeepTest, findsARecordChangedBehindTheJournal) {
    tamper("UPDATE finding SET observed = 'joint sound'");
    expectFound("record", "not as it was written", refOf(finding.id));
    expectFound("search_index", "out of date", refOf(finding.id));
}

TEST_F(UpkeepTest, findsARecordRemovedOrAddedBehindTheJournal) {
    tamper("DELETE FROM finding");
    expectFound("record", "missing", refOf(finding.id));
    const Finding other = aFinding("planted");
    tamper("INSERT INTO person VALUES('" + ids.nextUuid().text() + "', 'X', '', '', 1, '')");
    expectFound("record", "the journal knows nothing");
}

TEST_F(UpkeepTest, findsAnEditedJournal) {
    const auto last = std::to_string(journal().latest(1)[0].sequence);
    const std::vector<std::string> edits{
        "UPDATE journal SET sentence = sentence || '.' WHERE sequence = " + last,
        "UPDATE journal SET at = '2030-01-01T00:00:00.000Z' WHERE sequence = " + last,
        "UPDATE journal SET who = 'x' WHERE sequence = " + last,
        "UPDATE journal SET change_set = CAST(change_set || x'00' AS BLOB) WHERE sequence = " +
            last,
        "UPDATE journal SET hash = substr(hash, 2) || substr(hash, 1, 1) WHERE sequence = " + last,
        "UPDATE journal_record SET after = replace(after, 'split', 'sound') WHERE kind = "
        "'finding'"};
    for (const std::string& edit : edits) {
        open.reset(); // which writes the WAL back
        const auto whole = test::bytesOf(folder() / "workshop.sqlite");
        tamper(edit);
        expectFound("journal", "Entry " + last);
        open.reset();
        test::writeBytes(folder() / "workshop.sqlite", whole);
        std::filesystem::remove(folder() / "workshop.sqlite-wal");
        open = workshops.open(folder());
        ASSERT_TRUE(verify().isClean()) << edit;
    }
    tamper("DELETE FROM journal_record WHERE sequence = 2; DELETE FROM journal WHERE sequence = 2");
    expectFound("journal", "missing before entry 3");
}

TEST_F(UpkeepTest, findsADamagedSearchIndexAndMakesItAnew) {
    tamper("INSERT INTO search(search, rowid, words) SELECT 'delete', id, words FROM search_text "
           "WHERE kind = 'finding'");
    expectFound("search_index", "damaged");
    stores().upkeep.rebuildSearch();
    EXPECT_TRUE(verify().isClean());
    tamper("DELETE FROM search_text WHERE kind = 'finding'");
    expectFound("search_index", "lacks a finding", refOf(finding.id));
    stores().upkeep.rebuildSearch();
    EXPECT_TRUE(verify().isClean());
    EXPECT_EQ(stores().search.find("joint", 9).hits.size(), 1U);
}

TEST_F(UpkeepTest, namesFilesThatAreMissingOrAltered) {
    const auto& files = stores().files;
    test::writeBytes(files.pathOf(FileStore::Shelf::photograph, photograph.digest), "a photograpH");
    std::filesystem::remove(files.pathOf(FileStore::Shelf::attachment, letter.digest));
    test::writeBytes(files.pathOf(FileStore::Shelf::report, report.digest), "");
    expectFound("photograph", "\"IMG_1.jpg\" of job 2031-001 is not what was kept",
                refOf(photograph.id));
    expectFound("attachment", "\"letter.pdf\" of job 2031-001 is missing", refOf(letter.id));
    expectFound("report", "\"2031-001.pdf\" of job 2031-001 is not what was kept",
                refOf(report.id));
    EXPECT_THROW((void)files.pathOf(FileStore::Shelf::attachment, letter.digest), StoreError);
    put(FileStore::Shelf::photograph, "a photograph", ".jpg");
    EXPECT_EQ(verify().findings.size(), 2U) << "the right bytes take the place of the wrong";
}

TEST_F(UpkeepTest, findsALedgerThatDoesNotBalance) {
    LedgerEntry contrary = entry;
    contrary.id = ids.next<LedgerEntry>();
    contrary.kind = LedgerKind::contrary;
    contrary.amount = Amount::of(Mass::grams(-99));
    contrary.contraryOf = entry.id;
    LedgerEntry sheets = entry;
    sheets.id = ids.next<LedgerEntry>();
    sheets.amount = Amount::sheets(1);
    test::mustApply(records(), Change{.sentence = "Wrong"}.add(contrary).add(sheets));
    expectFound("ledger", "does not balance", refOf(contrary.id));
    expectFound("ledger", "is in sheet, and the lot is counted in g", refOf(sheets.id));
}

// Found by chance, in a database of which a byte was changed: who asked what names a record met a
// key that is none, and the program ended.
TEST_F(UpkeepTest, aKeyThatIsNoneIsAFaultOfTheDiskAndEndsNothing) {
    tamper("PRAGMA ignore_check_constraints = ON; UPDATE finding SET id = 'no key'");
    const auto found = find(records(), job.id);
    try {
        (void)records().apply(Change{.sentence = "Removed"}.remove(found->record, found->revision));
        ADD_FAILURE() << "it was removed";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), StoreError::Code::truncated) << error.what();
    }
    EXPECT_FALSE(verify().isClean());
    EXPECT_TRUE(find(records(), job.id));
}

TEST_F(UpkeepTest, canBeStopped) {
    Change many{.sentence = "Findings"};
    for (int i = 0; i < 600; ++i) {
        many.add(aFinding("foxing"));
    }
    test::mustApply(records(), many);
    const auto said = stores().upkeep.verify([](std::int64_t, std::int64_t) { return false; });
    ASSERT_FALSE(said.isClean());
    EXPECT_EQ(said.findings.back().what, "verify");
}

TEST_F(UpkeepTest, backsUpWhatIsLackingAndRestoresAll) {
    const auto backup = temp.path() / "backup";
    EXPECT_FALSE(stores().upkeep.lastOutsideBackup());
    const auto first = stores().upkeep.backup(backup, kGoOn);
    EXPECT_EQ(first.filesCopied, 3);
    EXPECT_TRUE(stores().upkeep.lastOutsideBackup());
    EXPECT_EQ(safeKeepingOf(stores().upkeep)->outsideFolder(), backup);
    put(FileStore::Shelf::photograph, "another photograph", ".jpg");
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("later")));
    const auto second = stores().upkeep.backup(backup, kGoOn);
    EXPECT_EQ(second.filesCopied, 1);
    EXPECT_EQ(second.filesAlreadyThere, 3);

    EXPECT_TRUE(workshops.restore(backup, temp.path() / "restored", kGoOn));
    const auto restored = workshops.open(temp.path() / "restored");
    EXPECT_TRUE(restored->stores().upkeep.verify(kGoOn).isClean());
    EXPECT_EQ(restored->stores().journal.head(), journal().head());
    EXPECT_EQ(test::recordTables(temp.path() / "restored"), test::recordTables(folder()));
    for (const char* shelf : {"photos", "attachments", "reports"}) {
        EXPECT_EQ(test::everythingIn(temp.path() / "restored" / shelf),
                  test::everythingIn(folder() / shelf));
    }
}

// Same name, same length, other bytes: found where its share is read again, and only there.
TEST_F(UpkeepTest, whatRotsInABackupIsCopiedAnewWhenItsShareIsReadAgain) {
    const auto backup = temp.path() / "backup";
    (void)stores().upkeep.backup(backup, kGoOn);
    const auto files = db::filesOnShelves(backup);
    ASSERT_EQ(files.size(), 3U);
    const std::string whole = test::bytesOf(backup / files.front());
    std::string rotten = whole;
    rotten.front() ^= 1;
    test::writeBytes(backup / files.front(), rotten);
    const char share = files.front().filename().string().front();
    const auto all = [](std::int64_t) { return true; };
    for (const std::optional<char> other : {std::optional<char>{}, {share == 'a' ? 'b' : 'a'}}) {
        EXPECT_EQ(db::copyShelves(folder(), backup, all, other).copied, 0);
        EXPECT_EQ(test::bytesOf(backup / files.front()), rotten);
    }
    EXPECT_EQ(db::copyShelves(folder(), backup, all, share).copied, 1);
    EXPECT_EQ(test::bytesOf(backup / files.front()), whole);
}

// The share follows the head of the journal, so that every file has its turn.
TEST_F(UpkeepTest, everyShareOfABackupHasItsTurn) {
    const auto backup = temp.path() / "backup";
    (void)stores().upkeep.backup(backup, kGoOn);
    const auto file = backup / db::filesOnShelves(backup).front();
    const std::string whole = test::bytesOf(file);
    std::string rotten = whole;
    rotten.front() ^= 1;
    test::writeBytes(file, rotten);
    const char share = file.filename().string().front();
    for (int i = 0; i < 400 && journal().head().hex().front() != share; ++i) {
        test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("later")));
    }
    ASSERT_EQ(journal().head().hex().front(), share);
    EXPECT_EQ(stores().upkeep.backup(backup, kGoOn).filesCopied, 1);
    EXPECT_EQ(test::bytesOf(file), whole);
}

TEST_F(UpkeepTest, whatIsNotedOfABackupIsThereForEveryWindowAndTheNextDay) {
    const auto other = workshops.open(folder());
    const auto seen = other->stores().records.dataVersion();
    (void)stores().upkeep.backup(temp.path() / "backup", kGoOn);
    EXPECT_NE(other->stores().records.dataVersion(), seen) << "it looks again";
    EXPECT_EQ(other->stores().upkeep.lastOutsideBackup(), stores().upkeep.lastOutsideBackup());
    reopen();
    const auto standing = backupStanding(stores().upkeep, *stores().upkeep.lastOutsideBackup());
    EXPECT_EQ(standing.need, BackupNeed::none);
    EXPECT_EQ(standing.outsideFolder, temp.path() / "backup");
    EXPECT_EQ(journal().latest(1).front().kind, EntryKind::change) << "not work, and not undone";
}

TEST_F(UpkeepTest, whatWasCutOffInTheMakingIsGoneADayLater) {
    const auto made = [&](const std::filesystem::path& name, std::chrono::hours ago) {
        const auto file = folder() / name;
        std::filesystem::create_directories(file.parent_path());
        test::writeBytes(file, "half of it");
        std::filesystem::last_write_time(file, std::filesystem::file_time_type::clock::now() - ago);
        return file;
    };
    const auto day = std::chrono::hours{25};
    const auto copy = made("backups/.new-workshop-2031-03-04T091000Z.sqlite", day);
    const auto journal = made("backups/.new-workshop-2031-03-04T091000Z.sqlite-journal", day);
    const auto picture = made("photos/ab/.incoming-17", day);
    const auto beingMade = made("backups/.new-workshop-2031-03-05T091000Z.sqlite", {});
    open.reset();
    open = db::SqliteWorkshops(clock, {}).open(folder());
    open.reset(); // which waits for what is done aside
    for (const auto& old : {copy, journal, picture}) {
        EXPECT_FALSE(std::filesystem::exists(old)) << old;
    }
    EXPECT_TRUE(std::filesystem::exists(beingMade)) << "another window may be at it";
    open = workshops.open(folder());
    EXPECT_TRUE(verify().isClean());
}

TEST_F(UpkeepTest, knowsWhenTheFirstThingWasPutOnRecord) {
    const auto first = safeKeepingOf(stores().upkeep)->firstWork();
    ASSERT_TRUE(first);
    const auto empty = workshops.create(temp.path() / "empty");
    EXPECT_FALSE(safeKeepingOf(empty->stores().upkeep)->firstWork());
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("later")));
    EXPECT_EQ(safeKeepingOf(stores().upkeep)->firstWork(), first);
}

TEST_F(UpkeepTest, backsUpOnlyWhereItIsSafe) {
    EXPECT_THROW((void)stores().upkeep.backup(folder() / "inside", kGoOn), StoreError);
    EXPECT_THROW((void)stores().upkeep.backup(folder(), kGoOn), StoreError);
    const auto other = workshops.create(temp.path() / "other");
    EXPECT_THROW((void)stores().upkeep.backup(temp.path() / "other", kGoOn), StoreError);
    (void)other->stores().upkeep.backup(temp.path() / "backup", kGoOn);
    EXPECT_THROW((void)stores().upkeep.backup(temp.path() / "backup", kGoOn), StoreError)
        << "it holds the backup of another workshop";
}

TEST_F(UpkeepTest, saysWhatCouldNotBeBackedUpOrRestored) {
    const auto backup = temp.path() / "backup";
    test::writeBytes(stores().files.pathOf(FileStore::Shelf::photograph, photograph.digest), "no");
    try {
        (void)stores().upkeep.backup(backup, kGoOn);
        ADD_FAILURE();
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), StoreError::Code::fileAltered);
    }
    EXPECT_FALSE(stores().upkeep.lastOutsideBackup());
    put(FileStore::Shelf::photograph, "a photograph", ".jpg");
    (void)stores().upkeep.backup(backup, kGoOn);
    for (const auto& kept : std::filesystem::recursive_directory_iterator(backup / "photos")) {
        if (kept.is_regular_file()) {
            test::writeBytes(kept.path(), "damaged");
        }
    }
    EXPECT_THROW(workshops.restore(backup, temp.path() / "restored", kGoOn), StoreError);
    const auto restored = workshops.open(temp.path() / "restored");
    EXPECT_EQ(restored->stores().upkeep.verify(kGoOn).findings.size(), 1U);
    EXPECT_THROW(workshops.restore(temp.path() / "nowhere", temp.path() / "x", kGoOn), StoreError);
    EXPECT_THROW(workshops.restore(backup, folder(), kGoOn), StoreError);
}

TEST_F(UpkeepTest, makesACopyADayAndKeepsTen) {
    db::SqliteWorkshops careful(clock, {});
    const auto copies = [&] {
        std::vector<std::filesystem::path> found;
        for (const auto& copy : std::filesystem::directory_iterator(folder() / "backups")) {
            found.push_back(copy.path());
        }
        return found;
    };
    for (int day = 0; day < 13; ++day) {
        clock.set(clock.now() + std::chrono::hours{25});
        (void)careful.open(folder());
        (void)careful.open(folder());
        EXPECT_EQ(copies().size(), static_cast<std::size_t>(std::min(day + 1, 10)));
    }
    EXPECT_EQ(SQLite::Database(copies().front().string(), SQLite::OPEN_READONLY)
                  .execAndGet("SELECT count(*) FROM finding")
                  .getInt(),
              1);
}

} // namespace
} // namespace headcap::core
