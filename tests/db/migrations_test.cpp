// Schema steps: each once and whole, with a copy made before; a step that fails leaves the
// workshop as it was.
#include <gtest/gtest.h>

#include "db/sqlite/open_workshop.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

class MigrationsTest : public test::WorkshopFixture {
protected:
    static std::vector<db::Migration> withStep(std::string sql) {
        auto steps = db::migrations();
        const int version = db::newestVersion(steps) + 1;
        steps.push_back({version, "next", std::move(sql)});
        return steps;
    }
    std::unique_ptr<OpenWorkshop> openWith(const std::vector<db::Migration>& steps) {
        open.reset();
        return db::openWorkshop(folder(), clock, {.makesBackups = false}, steps);
    }
    int version() { return test::openBeside(folder()).execAndGet("PRAGMA user_version").getInt(); }
};

TEST_F(MigrationsTest, aFreshWorkshopHasTheNewestSchema) {
    EXPECT_EQ(version(), db::newestVersion(db::migrations()));
    EXPECT_EQ(test::openBeside(folder()).execAndGet("PRAGMA application_id").getInt(),
              db::kApplicationId);
    EXPECT_EQ(test::openBeside(folder()).execAndGet("PRAGMA journal_mode").getString(), "wal");
}

TEST_F(MigrationsTest, aStepIsTakenOnceWithACopyBeforeAndAnEntry) {
    const auto steps = withStep("CREATE TABLE shelf(id TEXT PRIMARY KEY, note TEXT) STRICT;\n"
                                "INSERT INTO shelf VALUES('a', 'one; two -- three');\n"
                                "CREATE TRIGGER t AFTER INSERT ON shelf BEGIN SELECT 1; END;");
    auto moved = openWith(steps);
    EXPECT_EQ(version(), db::newestVersion(steps));
    EXPECT_EQ(find(moved->stores().records, job.id)->record, job);
    const auto latest = moved->stores().journal.latest(1);
    ASSERT_EQ(latest.size(), 1U);
    EXPECT_EQ(latest[0].kind, EntryKind::migration);
    EXPECT_EQ(latest[0].schemaVersion, db::newestVersion(steps));
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder() / "backups"), {}), 1);
    moved.reset();
    moved = openWith(steps);
    EXPECT_EQ(moved->stores().journal.latest(1)[0].sequence, latest[0].sequence);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder() / "backups"), {}), 1);
    moved.reset();
    EXPECT_THROW((void)workshops.open(folder()), StoreError) << "the program before knows it not";
}

class FailingStep : public MigrationsTest, public ::testing::WithParamInterface<const char*> {};

TEST_P(FailingStep, leavesTheWorkshopAsItWas) {
    const auto tables = test::recordTables(folder());
    const int before = version();
    try {
        (void)openWith(withStep(GetParam()));
        ADD_FAILURE() << "the step was taken";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), StoreError::Code::migrationFailed) << error.what();
    }
    EXPECT_EQ(version(), before);
    EXPECT_EQ(test::recordTables(folder()), tables);
    reopen();
    EXPECT_TRUE(find(records(), job.id));
    EXPECT_TRUE(stores().upkeep.verify([](auto, auto) { return true; }).isClean());
}

INSTANTIATE_TEST_SUITE_P(Steps, FailingStep,
                         ::testing::Values("CREATE TABLE one(id); CREATE TABLE one(id);",
                                           "UPDATE job SET note = 'x'; SELECT nonsense;",
                                           "UPDATE job SET owner = hex(randomblob(18));",
                                           "CREATE TABLE one(id); COMMIT;"));

TEST_F(MigrationsTest, undoStopsAtAChangeOfSchema) {
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("tear")));
    const auto moved = openWith(withStep("ALTER TABLE finding ADD COLUMN extra TEXT;"));
    const auto refused = moved->stores().journal.undo(std::nullopt);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, Refusal::Code::cannotUndo);
}

TEST_F(MigrationsTest, historyFromBeforeReadsOn) {
    const auto finding = aFinding("tear");
    test::mustApply(records(), Change{.sentence = "Finding"}.add(finding));
    const auto moved = openWith(withStep("CREATE TABLE shelf(id TEXT);"));
    const auto history = moved->stores().journal.historyOf(refOf(finding.id));
    ASSERT_EQ(history.size(), 1U);
    EXPECT_EQ(history[0].records[0].after, AnyRecord{finding});
}

TEST_F(MigrationsTest, aWindowOpenBeforeDoesNotWriteIntoTheNewSchema) {
    const auto steps = withStep("CREATE TABLE shelf(id TEXT);");
    const auto newer = db::openWorkshop(folder(), clock, {.makesBackups = false}, steps);
    try {
        (void)records().apply(Change{.sentence = "Finding"}.add(aFinding("tear")));
        ADD_FAILURE() << "it was written";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), StoreError::Code::newerProgram);
    }
}

TEST(MigrationFiles, areNumberedWithoutAGapOrADouble) {
    const std::vector<EmbeddedFile> gap{{"0001_a.sql", ""}, {"0003_b.sql", ""}};
    EXPECT_DEATH((void)db::migrationsFrom(gap), "");
    const std::vector<EmbeddedFile> twice{{"0001_a.sql", ""}, {"0001_b.sql", ""}};
    EXPECT_DEATH((void)db::migrationsFrom(twice), "");
}

} // namespace
} // namespace headcap::core
