// One byte changed, anywhere in the history or in a file that is kept, is found, and what holds it
// is named.
#include <gtest/gtest.h>

#include "db/sqlite/journal_sql.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/support/random_record.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;
using Shelf = FileStore::Shelf;

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };
constexpr int kTries = 25;

class TamperingTest : public test::WorkshopFixture {
protected:
    TamperingTest() : m_beside(test::openBeside(folder())) {
        photograph.digest = put(Shelf::photograph, photographBytes, ".jpg");
        report.digest = put(Shelf::report, reportBytes, ".pdf");
        test::mustApply(records(), Change{.sentence = "Joint found split", .who = person.id}
                                       .add(aFinding("joint split"))
                                       .add(photograph)
                                       .add(report));
        last = journal().latest(1)[0].sequence;
        test::mustApply(records(), Change{.sentence = "Later"}.add(aFinding("later")));
        for (const char* trigger : {"journal_is_not_edited", "journal_record_is_not_edited"}) {
            m_beside.exec(std::string{"DROP TRIGGER "} + trigger);
        }
    }

    Digest put(Shelf shelf, const std::string& bytes, std::string_view suffix) {
        return stores().files.put(shelf, std::as_bytes(std::span{bytes}), suffix);
    }
    std::string flipped(std::string bytes) {
        const auto at = chance.between(0, static_cast<std::int64_t>(bytes.size()) - 1);
        // Letters and digits stay such, so that no other check finds it first.
        char& byte = bytes[static_cast<std::size_t>(at)];
        byte = static_cast<char>(byte ^ (chance.oneIn(2) ? 1 : 2));
        return bytes;
    }
    // Bytes of a column of one row, written as they are.
    void write(const std::string& table, const std::string& column, const std::string& where,
               const std::string& bytes, bool isBlob) {
        SQLite::Statement update(m_beside, "UPDATE " + table + " SET " + column + " = CAST(? AS " +
                                               (isBlob ? "BLOB" : "TEXT") + ") WHERE " + where);
        update.bind(1, bytes.data(), static_cast<int>(bytes.size()));
        ASSERT_EQ(update.exec(), 1);
    }
    void expectNamed(const std::string& words, const std::string& what) {
        const auto findings = stores().upkeep.verify(kGoOn).findings;
        const bool isNamed =
            std::any_of(findings.begin(), findings.end(), [&](const VerifyFinding& finding) {
                return finding.sentence.find(words) != std::string::npos;
            });
        EXPECT_TRUE(isNamed) << what << ": " << words;
    }
    void tamperColumn(const std::string& table, const std::string& column, const std::string& where,
                      bool isBlob) {
        SQLite::Statement read(m_beside, "SELECT CAST(" + column + " AS BLOB) FROM " + table +
                                             " WHERE " + where);
        ASSERT_TRUE(read.executeStep()) << column;
        const std::string whole = read.getColumn(0).getString();
        read.reset();
        ASSERT_FALSE(whole.empty()) << column;
        for (int i = 0; i < kTries; ++i) {
            write(table, column, where, flipped(whole), isBlob);
            expectNamed("Entry " + std::to_string(last), table + "." + column);
        }
        write(table, column, where, whole, isBlob);
        EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
    }

    test::Chance chance{1755};
    std::string photographBytes = std::string(5'000, 'p') + "a photograph";
    std::string reportBytes = std::string(3'000, 'r') + "a report";
    Photograph photograph{.id = ids.next<Photograph>(),
                          .job = job.id,
                          .fileName = "IMG_1.jpg",
                          .addedAt = clock.now()};
    IssuedReport report{.id = ids.next<IssuedReport>(),
                        .job = job.id,
                        .issuedAt = clock.now(),
                        .fileName = "2031-001.pdf"};
    std::int64_t last = 0;

private:
    SQLite::Database m_beside;
};

TEST_F(TamperingTest, aByteOfAnEntryIsFound) {
    const std::string row = "sequence = " + std::to_string(last);
    for (const char* column : {"sentence", "who", "hash"}) {
        tamperColumn("journal", column, row, false);
    }
}

TEST_F(TamperingTest, aByteOfAChangeSetIsFound) {
    tamperColumn("journal", "change_set", "sequence = " + std::to_string(last), true);
}

// Found by chance: SQLite 3.40 never comes back from some altered change sets, which it is
// therefore never given.
TEST_F(TamperingTest, anAlteredChangeSetIsNotUndone) {
    const auto newest = journal().latest(1)[0].sequence;
    write("journal", "change_set", "sequence = " + std::to_string(newest), std::string(400, 'T'),
          true);
    const auto undone = journal().undo(std::nullopt);
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().code, Refusal::Code::cannotUndo);
    EXPECT_NE(undone.error().detail.find("altered"), std::string::npos) << undone.error().detail;
    EXPECT_EQ(journal().latest(1)[0].sequence, newest);
}

TEST_F(TamperingTest, anEntryThatLostItsRecordsIsNotUndone) {
    const auto newest = journal().latest(1)[0].sequence;
    SQLite::Database beside = test::openBeside(folder());
    beside.exec("DROP TRIGGER journal_record_is_permanent");
    beside.exec("DELETE FROM journal_record WHERE sequence = " + std::to_string(newest));
    const auto undone = journal().undo(std::nullopt);
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().code, Refusal::Code::cannotUndo);
    expectNamed("Entry " + std::to_string(newest), "records deleted");
}

TEST_F(TamperingTest, aByteOfARecordInTheJournalIsFound) {
    const std::string row = "sequence = " + std::to_string(last) + " AND position = ";
    for (const char* position : {"0", "1", "2"}) {
        tamperColumn("journal_record", "after", row + position, false);
        tamperColumn("journal_record", "record_id", row + position, false);
    }
}

// Who knows how the hashes are made can make the chain anew; beside the database it stands how far
// it had come, and with which hash.
TEST_F(TamperingTest, aJournalWrittenAnewWithItsHashesIsFound) {
    const auto newest = journal().latest(1)[0].sequence;
    const std::string row = "sequence = " + std::to_string(newest);
    db::Connection beside(folder() / "workshop.sqlite", db::Access::read, {});
    auto entry = *db::entryRow(beside, newest);
    const auto previous = *db::entryRow(beside, newest - 1);
    ASSERT_EQ(db::hashOf(entry, previous.hash), entry.hash);
    entry.sentence = "Earlier";
    write("journal", "sentence", row, entry.sentence, false);
    write("journal", "hash", row, db::hashOf(entry, previous.hash), false);
    expectNamed("Entry " + std::to_string(newest) + " of the journal is not the one", "made anew");
}

TEST_F(TamperingTest, aByteOfAKeptFileIsFoundAndNamedWithItsJob) {
    const auto tamper = [&](Shelf shelf, const Digest& digest, const std::string& whole,
                            const std::string& words) {
        const fs::path file = stores().files.pathOf(shelf, digest);
        for (int i = 0; i < kTries; ++i) {
            test::writeBytes(file, flipped(whole));
            expectNamed(words, file.filename());
        }
        test::writeBytes(file, whole);
        EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
    };
    tamper(Shelf::photograph, photograph.digest, photographBytes,
           "The photograph \"IMG_1.jpg\" of job 2031-001 is not what was kept.");
    tamper(Shelf::report, report.digest, reportBytes,
           "The issued report \"2031-001.pdf\" of job 2031-001 is not what was kept.");
}

} // namespace
} // namespace headcap::core
