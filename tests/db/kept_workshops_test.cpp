// A workshop of each earlier schema, kept as a small file, is brought to the newest: every row
// survives, the history from before reads on, and a step that fails leaves it as it was.
#include <algorithm>

#include <gtest/gtest.h>

#include "db/sqlite/open_workshop.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

// Rows by table, in the columns the table had.
using Rows = std::map<std::string, std::string>;

class KeptWorkshop : public ::testing::TestWithParam<int> {
protected:
    KeptWorkshop() {
        fs::create_directory(folder);
        SQLite::Database database((folder / "workshop.sqlite").string(),
                                  SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        database.exec("PRAGMA journal_mode = WAL");
        for (const db::Migration& step : db::migrations()) {
            if (step.version <= GetParam()) {
                database.exec(step.sql);
            }
        }
        fill(database);
        database.exec("PRAGMA application_id = " + std::to_string(db::kApplicationId));
        database.exec("PRAGMA user_version = " + std::to_string(GetParam()));
        for (const auto kind : EnumNames<RecordKind>::kNames) {
            columns[std::string{kind}] = columnsOf(database, std::string{kind});
        }
        before = rowsOf(database);
    }

    // Of the file for this schema or the next; the first schema had no journal yet.
    void fill(SQLite::Database& database) {
        const std::string name = "schema_" + std::to_string(std::max(GetParam(), 2)) + ".sql";
        const std::string sql = test::bytesOf(fs::path{HEADCAP_KEPT_DIR} / name);
        database.exec("PRAGMA foreign_keys = OFF; BEGIN");
        std::size_t at = 0;
        while (at < sql.size()) {
            const std::size_t end = std::min(sql.find(";\n", at), sql.size());
            const std::string statement = sql.substr(at, end - at);
            const bool isOfTheStore = statement.find("INTO journal") != std::string::npos ||
                                      statement.find("INTO meta") != std::string::npos;
            if (GetParam() >= 2 || !isOfTheStore) {
                database.exec(statement);
            }
            at = end + 2;
        }
        database.exec("COMMIT");
    }

    static std::string columnsOf(SQLite::Database& database, const std::string& table) {
        std::string list;
        SQLite::Statement query(database, "SELECT name FROM pragma_table_info(?)");
        query.bind(1, table);
        while (query.executeStep()) {
            list += (list.empty() ? "\"" : ", \"") + query.getColumn(0).getString() + "\"";
        }
        return list;
    }
    Rows rowsOf(SQLite::Database& database) {
        Rows rows;
        for (const auto& [table, list] : columns) {
            if (list.empty()) {
                continue; // not of this schema
            }
            SQLite::Statement query(database,
                                    "SELECT " + list + " FROM \"" + table + "\" ORDER BY id");
            while (query.executeStep()) {
                for (int i = 0; i < query.getColumnCount(); ++i) {
                    const auto value = query.getColumn(i);
                    rows[table] += std::to_string(value.getType()) + value.getString() + "|";
                }
            }
        }
        return rows;
    }
    Rows rowsNow() {
        auto database = test::openBeside(folder);
        return rowsOf(database);
    }
    // Chance files are not kept, nor was there a journal at first.
    std::string verified(Stores stores) {
        std::string all;
        for (const auto& finding : stores.upkeep.verify(kGoOn).findings) {
            const bool isOfFiles = finding.what == "attachment" || finding.what == "photograph";
            const bool isUnknown =
                GetParam() < 2 && finding.sentence.find("knows nothing") != std::string::npos;
            all += isOfFiles || isUnknown ? "" : finding.sentence + "\n";
        }
        return all;
    }

    test::TempFolder temp;
    test::TickingClock clock;
    fs::path folder = temp.path() / "workshop";
    db::SqliteWorkshops workshops{clock, {.makesBackups = false}};
    std::map<std::string, std::string> columns;
    Rows before;
};

TEST_P(KeptWorkshop, isBroughtToTheNewestAndEveryRowSurvives) {
    ASSERT_GT(before.size(), 15U) << "of many kinds";
    const auto open = workshops.open(folder);
    EXPECT_EQ(test::openBeside(folder).execAndGet("PRAGMA user_version").getInt(),
              db::newestVersion(db::migrations()));
    EXPECT_EQ(rowsNow(), before);
    open->stores().upkeep.rebuildSearch();
    EXPECT_EQ(verified(open->stores()), "");
    EXPECT_EQ(std::distance(fs::directory_iterator(folder / "backups"), {}), 1)
        << "a copy was made before";
    EXPECT_FALSE(open->stores().search.find("crumlin", 5).hits.empty());
}

TEST_P(KeptWorkshop, isWorkedInAsBefore) {
    const auto open = workshops.open(folder);
    auto job = all<Job>(open->stores().records).front();
    job.record.note = "looked at again";
    test::mustApply(open->stores().records,
                    Change{.sentence = "Note"}.update(job.record, job.revision));
    ASSERT_TRUE(open->stores().journal.undo(std::nullopt));
    EXPECT_EQ(rowsNow(), before);
}

TEST_P(KeptWorkshop, aStepThatFailsLeavesItAsItWas) {
    auto steps = db::migrations();
    steps[static_cast<std::size_t>(GetParam())].sql += "; UPDATE job SET number = 'x'; NONSENSE;";
    EXPECT_THROW((void)db::openWorkshop(folder, clock, {.makesBackups = false}, steps), StoreError);
    EXPECT_EQ(test::openBeside(folder).execAndGet("PRAGMA user_version").getInt(), GetParam());
    EXPECT_EQ(rowsNow(), before);
    EXPECT_NO_THROW((void)workshops.open(folder));
    EXPECT_EQ(rowsNow(), before);
}

TEST_P(KeptWorkshop, itsHistoryReadsOnAndIsNotUndoneAcrossTheChange) {
    if (GetParam() < 2) {
        GTEST_SKIP() << "the first schema kept no history";
    }
    const auto open = workshops.open(folder);
    const auto stores = open->stores();
    int told = 0;
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        for (const Found& found : stores.records.all(static_cast<RecordKind>(i))) {
            const auto history = stores.journal.historyOf(refOf(found.record));
            ASSERT_FALSE(history.empty());
            EXPECT_NE(history.front().sentence, "");
            for (const JournalRecord& record : history.front().records) {
                if (record.ref == refOf(found.record)) {
                    EXPECT_EQ(record.after, found.record);
                    ++told;
                }
            }
        }
    }
    EXPECT_GT(told, 100);
    const auto who = stores.journal.latest(3).back().who;
    const auto refused = stores.journal.undo(who);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, Refusal::Code::cannotUndo);
}

TEST_P(KeptWorkshop, isSalvagedThroughTheChangesOfSchema) {
    if (GetParam() < 2) {
        GTEST_SKIP() << "the first schema kept no journal";
    }
    const auto report = workshops.salvage(folder, temp.path() / "saved", {}, kGoOn);
    EXPECT_TRUE(report.lost.empty());
    EXPECT_GT(report.entriesReplayed, 10);
    const auto open = workshops.open(temp.path() / "saved");
    EXPECT_EQ(verified(open->stores()), "");
    auto database = test::openBeside(temp.path() / "saved");
    EXPECT_EQ(rowsOf(database), before);
}

INSTANTIATE_TEST_SUITE_P(Schemas, KeptWorkshop, ::testing::Values(1, 2, 3, 4));

} // namespace
} // namespace headcap::core
