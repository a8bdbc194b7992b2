// The schema agrees with what the records say of themselves.
#include <gtest/gtest.h>

#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

class SchemaTest : public test::WorkshopFixture {};

TEST_F(SchemaTest, hasATableAKindWithItsColumnsInOrder) {
    auto database = test::openBeside(folder());
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        const auto kind = static_cast<RecordKind>(i);
        const std::string table{nameOf(kind)};
        SQLite::Statement info(database, "SELECT name, type, \"notnull\", pk FROM "
                                         "pragma_table_info('" +
                                             table + "') ORDER BY cid");
        std::string there;
        while (info.executeStep()) {
            there += info.getColumn(0).getString() + " " + info.getColumn(1).getString() +
                     (info.getColumn(2).getInt() != 0 ? " not null" : "") +
                     (info.getColumn(3).getInt() != 0 ? " key" : "") + "\n";
        }
        std::string said;
        for (const Column& column : columnsOf(kind)) {
            said += column.name + (column.isText ? " TEXT" : " INTEGER") +
                    (column.mayBeNull ? "" : " not null") +
                    (&column == &columnsOf(kind).front() ? " key" : "") + "\n";
        }
        EXPECT_EQ(there, said) << table;
    }
}

TEST_F(SchemaTest, keepsTheReferencesOfEveryColumnAndCascadesNowhere) {
    auto database = test::openBeside(folder());
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        const auto kind = static_cast<RecordKind>(i);
        std::set<std::string> there;
        SQLite::Statement keys(database, "SELECT \"from\", \"table\", on_delete, on_update FROM "
                                         "pragma_foreign_key_list('" +
                                             std::string{nameOf(kind)} + "')");
        while (keys.executeStep()) {
            there.insert(keys.getColumn(0).getString() + " " + keys.getColumn(1).getString());
            EXPECT_EQ(keys.getColumn(2).getString(), "NO ACTION");
            EXPECT_EQ(keys.getColumn(3).getString(), "NO ACTION");
        }
        std::set<std::string> said;
        for (const Column& column : columnsOf(kind)) {
            if (column.references) {
                said.insert(column.name + " " + std::string{nameOf(*column.references)});
            }
        }
        EXPECT_EQ(there, said) << nameOf(kind);
    }
}

TEST_F(SchemaTest, isStrictAndHoldsBackEveryDeletionOfWhatIsPermanent) {
    auto database = test::openBeside(folder());
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        const auto kind = static_cast<RecordKind>(i);
        const std::string table{nameOf(kind)};
        EXPECT_EQ(
            database.execAndGet("SELECT strict FROM pragma_table_list WHERE name = '" + table + "'")
                .getInt(),
            1)
            << table;
        const int triggers =
            database
                .execAndGet(
                    "SELECT count(*) FROM sqlite_schema WHERE type = 'trigger' AND name = '" +
                    table + "_is_permanent'")
                .getInt();
        EXPECT_EQ(triggers, permanenceOf(kind) == Permanence::permanent ? 1 : 0) << table;
    }
}

TEST_F(SchemaTest, letsNobodyEditTheJournal) {
    auto database = test::openBeside(folder());
    EXPECT_THROW(database.exec("UPDATE journal SET sentence = 'otherwise'"), SQLite::Exception);
    EXPECT_THROW(database.exec("DELETE FROM journal"), SQLite::Exception);
    EXPECT_THROW(database.exec("UPDATE journal_record SET after = NULL"), SQLite::Exception);
    EXPECT_THROW(database.exec("DELETE FROM journal_record"), SQLite::Exception);
}

TEST_F(SchemaTest, keepsTheIndexAndTheJournalOutOfEveryChangeSet) {
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("tear")));
    auto database = test::openBeside(folder());
    SQLite::Statement query(database,
                            "SELECT change_set FROM journal ORDER BY sequence DESC LIMIT 1");
    ASSERT_TRUE(query.executeStep());
    const std::string changes = query.getColumn(0).getString();
    EXPECT_NE(changes.find("finding"), std::string::npos);
    for (const char* derived : {"search", "journal", "meta"}) {
        EXPECT_EQ(changes.find(derived), std::string::npos) << derived;
    }
}

} // namespace
} // namespace headcap::core
