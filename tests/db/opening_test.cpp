// A workshop that can't be opened says why, and is left as it was.
#include <gtest/gtest.h>

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "db/files/file_system.h"
#include "db/sqlite/connection.h"
#include "tests/db/database_look.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

using Code = StoreError::Code;

class OpeningTest : public test::WorkshopFixture {
protected:
    [[nodiscard]] std::filesystem::path database() const { return folder() / "workshop.sqlite"; }

    void expectRefusal(Code code) { expectRefusal(code, workshops); }
    void expectRefusal(Code code, db::SqliteWorkshops& through) {
        const auto before = test::everythingIn(temp.path());
        try {
            (void)through.open(folder());
            ADD_FAILURE() << "it was opened";
        } catch (const StoreError& error) {
            EXPECT_EQ(error.code(), code) << error.what();
            EXPECT_STRNE(error.what(), "");
        }
        EXPECT_EQ(test::everythingIn(temp.path()), before);
    }
};

TEST_F(OpeningTest, refusesWhatIsNotThere) {
    open.reset();
    std::filesystem::remove_all(folder());
    expectRefusal(Code::missing);
    std::filesystem::create_directory(folder());
    expectRefusal(Code::missing);
}

TEST_F(OpeningTest, refusesAFileThatIsNoDatabase) {
    open.reset();
    test::writeBytes(database(), std::string(20'000, 'x'));
    expectRefusal(Code::notAWorkshop);
    test::writeBytes(database(), "short");
    expectRefusal(Code::notAWorkshop);
}

TEST_F(OpeningTest, refusesAnotherProgramsDatabase) {
    open.reset();
    std::filesystem::remove(database());
    SQLite::Database(database().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec("CREATE TABLE job(id); PRAGMA user_version = 1");
    expectRefusal(Code::notAWorkshop);
}

TEST_F(OpeningTest, refusesAFileCutShort) {
    open.reset();
    const std::string whole = test::bytesOf(database());
    test::writeBytes(database(), whole.substr(0, whole.size() / 2));
    expectRefusal(Code::truncated);
    test::writeBytes(database(), "");
    expectRefusal(Code::truncated);
}

TEST_F(OpeningTest, refusesAWorkshopOfANewerProgram) {
    open.reset();
    test::openBeside(folder()).exec("PRAGMA user_version = 999");
    expectRefusal(Code::newerProgram);
}

TEST_F(OpeningTest, seesANewerVersionThatStandsInTheWal) {
    open.reset();
    // A connection that stays open keeps the WAL from being written back.
    auto newer = test::openBeside(folder());
    newer.exec("PRAGMA wal_autocheckpoint = 0");
    newer.exec("PRAGMA user_version = 999");
    ASSERT_GT(std::filesystem::file_size(database().string() + "-wal"), 0U);
    expectRefusal(Code::newerProgram);
}

TEST_F(OpeningTest, doesNotBelieveAVersionInTheWalThatWasNotCommitted) {
    open.reset();
    {
        auto newer = test::openBeside(folder());
        newer.exec("PRAGMA wal_autocheckpoint = 0");
        newer.exec("UPDATE meta SET value = value");
        newer.exec("PRAGMA user_version = 999");
        std::string wal = test::bytesOf(database().string() + "-wal");
        // The last frame is torn: its transaction never was.
        wal.back() = static_cast<char>(wal.back() ^ 1);
        test::writeBytes(temp.path() / "torn", wal);
        std::filesystem::copy_file(database(), temp.path() / "copy");
    }
    std::filesystem::rename(temp.path() / "copy", database());
    std::filesystem::rename(temp.path() / "torn", database().string() + "-wal");
    EXPECT_NO_THROW((void)workshops.open(folder()));
}

TEST_F(OpeningTest, refusesANetworkFileSystem) {
    open.reset();
    db::SqliteWorkshops far(
        clock, {.makesBackups = false, .fileSystemOf = [](const auto&) { return "nfs4"; }});
    expectRefusal(Code::networkFolder, far);
    std::filesystem::create_directory(temp.path() / "empty");
    EXPECT_THROW((void)far.create(temp.path() / "empty"), StoreError);
}

// Root may write anywhere: another user tries, in a process of its own.
int codeForNobody(db::SqliteWorkshops& workshops, const std::filesystem::path& folder) {
    const ::pid_t child = ::fork();
    if (child == 0) {
        if (::setgid(65'534) != 0 || ::setuid(65'534) != 0) {
            ::_exit(200);
        }
        try {
            (void)workshops.open(folder);
            ::_exit(100);
        } catch (const StoreError& error) {
            ::_exit(static_cast<int>(error.code()));
        }
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_F(OpeningTest, refusesAReadOnlyFolder) {
    open.reset();
    ::chmod(temp.path().c_str(), 0755);
    ::chmod(folder().c_str(), 0555);
    ::chmod(database().c_str(), 0444);
    const auto before = test::everythingIn(folder());
    if (::getuid() == 0) {
        EXPECT_EQ(codeForNobody(workshops, folder()), static_cast<int>(Code::readOnly));
    } else {
        expectRefusal(Code::readOnly);
    }
    EXPECT_EQ(test::everythingIn(folder()), before);
    ::chmod(folder().c_str(), 0755);
}

TEST_F(OpeningTest, saysSoWhereAnotherWindowWritesForTooLong) {
    db::SqliteWorkshops hasty(clock,
                              {.patience = std::chrono::milliseconds{50}, .makesBackups = false});
    const auto second = hasty.open(folder());
    auto other = test::openBeside(folder());
    other.exec("BEGIN IMMEDIATE");
    try {
        (void)second->stores().records.apply(Change{.sentence = "Finding"}.add(aFinding("tear")));
        ADD_FAILURE() << "it was written";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), Code::busy) << error.what();
    }
    // Reading does not wait.
    EXPECT_TRUE(find(second->stores().records, job.id));
    other.exec("ROLLBACK");
    test::mustApply(second->stores().records, Change{.sentence = "Finding"}.add(aFinding("tear")));
}

TEST_F(OpeningTest, waitsForAnotherWindowThatWrites) {
    auto other = test::openBeside(folder());
    other.exec("BEGIN IMMEDIATE");
    std::thread later([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds{200});
        other.exec("COMMIT");
    });
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("tear")));
    later.join();
}

TEST_F(OpeningTest, makesNoWorkshopWhereThereIsSomething) {
    EXPECT_THROW((void)workshops.create(folder()), StoreError);
    std::filesystem::create_directory(temp.path() / "letters");
    test::writeBytes(temp.path() / "letters" / "one.txt", "dear sir");
    EXPECT_THROW((void)workshops.create(temp.path() / "letters"), StoreError);
    EXPECT_EQ(test::everythingIn(temp.path() / "letters").size(), 1U);
}

TEST_F(OpeningTest, makesAWorkshopWhereAMakingWasCutOff) {
    const auto cut = temp.path() / "cut";
    std::filesystem::create_directory(cut);
    test::writeBytes(cut / ".new-workshop.sqlite", "half");
    EXPECT_NO_THROW((void)workshops.create(cut));
    EXPECT_FALSE(std::filesystem::exists(cut / ".new-workshop.sqlite"));
}

TEST_F(OpeningTest, keepsEverythingReadableByItsUserOnly) {
    stores().files.put(FileStore::Shelf::photograph, std::as_bytes(std::span{"photo", 5}), ".jpg");
    (void)stores().files.cacheFolder();
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("tear")));
    (void)stores().upkeep.backup(temp.path() / "backup",
                                 [](std::int64_t, std::int64_t) { return true; });
    for (const auto& entry : std::filesystem::recursive_directory_iterator(temp.path())) {
        EXPECT_EQ(entry.status().permissions() &
                      (std::filesystem::perms::group_all | std::filesystem::perms::others_all),
                  std::filesystem::perms::none)
            << entry.path();
    }
}

// The last connection that closes writes the WAL into the database, a reader's too.
// https://www.sqlite.org/pragma.html#pragma_synchronous: 2 is FULL.
TEST_F(OpeningTest, syncsInFullWhetherItReadsOrWrites) {
    for (const db::Access access : {db::Access::read, db::Access::write}) {
        db::Connection connection(database(), access, {});
        db::Query query(connection, "PRAGMA synchronous");
        ASSERT_TRUE(query.step());
        EXPECT_EQ(query.number(0), 2);
    }
}

// No database can be closed that has a statement left: it goes with the opening it was made in.
TEST_F(OpeningTest, aQueryThatOutlivesItsOpeningReadsNoMore) {
    db::Connection connection(database(), db::Access::write, {});
    const std::string ofThatOpening = "SELECT count(*) FROM passing";
    connection.run("CREATE TEMP TABLE passing(x)");
    {
        db::Query live(connection, ofThatOpening);
        ASSERT_TRUE(live.step());
        connection.reopen();
        EXPECT_THROW((void)live.step(), StoreError);
        EXPECT_THROW((void)live.number(0), StoreError);
    }
    EXPECT_THROW(db::Query(connection, ofThatOpening), StoreError);
    db::Query after(connection, "SELECT count(*) FROM job");
    EXPECT_TRUE(after.step());
}

TEST(FileSystem, isToldByTheMountThatHoldsTheFolder) {
    const std::string mounts = "22 1 8:1 / / rw - ext4 /dev/sda1 rw\n"
                               "30 22 0:40 / /home/una\\040thole rw shared:1 - nfs4 kell:/home rw\n"
                               "31 22 0:41 / /home rw - xfs /dev/sdb1 rw\n";
    EXPECT_EQ(db::fileSystemIn(mounts, "/home/una thole/workshop"), "nfs4");
    EXPECT_EQ(db::fileSystemIn(mounts, "/home/una tholes"), "xfs");
    EXPECT_EQ(db::fileSystemIn(mounts, "/homeward"), "ext4");
    EXPECT_TRUE(db::isNetworkFileSystem("nfs4"));
    EXPECT_TRUE(db::isNetworkFileSystem("fuse.sshfs"));
    // A share opened in the file manager, under /run/user/…/gvfs or kio-fuse.
    EXPECT_TRUE(db::isNetworkFileSystem("fuse.gvfsd-fuse"));
    EXPECT_TRUE(db::isNetworkFileSystem("fuse.kio-fuse"));
    EXPECT_FALSE(db::isNetworkFileSystem("ext4"));
    EXPECT_FALSE(db::isNetworkFileSystem("fuseblk"));
}

} // namespace
} // namespace headcap::core
