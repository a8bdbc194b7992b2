// A file is on the disk, and its folder too, before a record may name it. The calls of the system
// are watched: this program's own fsync and rename stand before the library's.
#include <dlfcn.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <mutex>
#include <vector>

#include <gtest/gtest.h>

#include "db/files/disk_errors.h"
#include "db/files/file_store.h"
#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace {

// What the disk does to what is written into a file in the making.
std::atomic<int> writeFails = 0; // an errno
std::atomic<int> syncFails = 0;
std::atomic<std::size_t> writesAtOnce = 0;

std::mutex watching;
std::atomic<bool> isWatching = false;
std::vector<std::string> seen;

void note(const std::string& call) {
    if (isWatching) {
        const std::lock_guard lock(watching);
        seen.push_back(call);
    }
}

std::string pathOf(int descriptor) {
    std::error_code error;
    return std::filesystem::read_symlink("/proc/self/fd/" + std::to_string(descriptor), error)
        .filename()
        .string();
}

// ".incoming-…" has a number by chance.
std::string shortened(const std::string& name) {
    return name.starts_with(".incoming-") ? "incoming" : name;
}

template <class Function>
Function* theSystems(const char* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" int fsync(int descriptor) {
    note("sync " + shortened(pathOf(descriptor)));
    if (syncFails != 0 && pathOf(descriptor).starts_with(".incoming-")) {
        errno = syncFails;
        return -1;
    }
    static const auto kSystems = theSystems<int(int)>("fsync");
    return kSystems(descriptor);
}

extern "C" ssize_t write(int descriptor, const void* bytes, size_t count) {
    static const auto kSystems = theSystems<ssize_t(int, const void*, size_t)>("write");
    if (writeFails == 0 && writesAtOnce == 0) {
        return kSystems(descriptor, bytes, count);
    }
    const bool isOurs = pathOf(descriptor).starts_with(".incoming-");
    if (isOurs && writeFails != 0) {
        errno = writeFails;
        return -1;
    }
    return kSystems(descriptor, bytes, isOurs ? std::min<size_t>(count, writesAtOnce) : count);
}

extern "C" int rename(const char* from, const char* to) noexcept {
    note("name " + shortened(std::filesystem::path(from).filename().string()) + " " +
         std::filesystem::path(to).filename().string());
    static const auto kSystems = theSystems<int(const char*, const char*)>("rename");
    return kSystems(from, to);
}

namespace headcap::core {
namespace {

using Shelf = FileStore::Shelf;

class FileStoreTest : public ::testing::Test {
protected:
    Digest put(std::string_view bytes, std::string_view suffix = ".jpg") {
        return files.put(Shelf::photograph, std::as_bytes(std::span{bytes}), suffix);
    }

    // Nothing was kept, nothing is left lying about, and it can be put when the disk is well again.
    void expectNotKept(std::atomic<int>& fails, int error, StoreError::Code code) {
        put("kept before");
        const auto before = test::everythingIn(temp.path() / "photos");
        fails = error;
        try {
            put("a photograph");
            ADD_FAILURE() << "it was kept";
        } catch (const StoreError& refused) {
            EXPECT_EQ(refused.code(), code) << refused.what();
        }
        fails = 0;
        auto after = test::everythingIn(temp.path() / "photos");
        std::erase_if(after, [](const auto& one) { return one.second == "folder"; });
        for (const auto& [name, bytes] : after) {
            EXPECT_TRUE(before.contains(name)) << name;
        }
        EXPECT_FALSE(files.has(Shelf::photograph, sha256(std::string_view{"a photograph"})));
        EXPECT_EQ(test::bytesOf(files.pathOf(Shelf::photograph, put("a photograph"))),
                  "a photograph");
    }

    test::TempFolder temp;
    db::FolderFileStore files{temp.path()};
};

TEST_F(FileStoreTest, syncsTheFileThenNamesItThenSyncsItsFolder) {
    seen.clear();
    isWatching = true;
    const std::string hex = put("a photograph").hex();
    isWatching = false;
    const std::string folder = hex.substr(0, 2);
    EXPECT_EQ(seen, (std::vector<std::string>{
                        "sync " + temp.path().filename().string(), // photos made in it
                        "sync photos",                             // ab made in it
                        "sync incoming", "name incoming " + hex + ".jpg", "sync " + folder}));
}

TEST_F(FileStoreTest, keepsNothingWhereTheDiskIsFull) {
    expectNotKept(writeFails, ENOSPC, StoreError::Code::diskFull);
}

TEST_F(FileStoreTest, keepsNothingWhereTheDiskFails) {
    expectNotKept(writeFails, EIO, StoreError::Code::ioFailed);
}

TEST_F(FileStoreTest, keepsNothingWhereTheDiskFailsAtTheSync) {
    expectNotKept(syncFails, EIO, StoreError::Code::ioFailed);
}

TEST_F(FileStoreTest, goesOnWhereTheDiskTakesAFewBytesAtATime) {
    writesAtOnce = 5;
    const auto digest = put("a photograph of the joint, before");
    writesAtOnce = 0;
    EXPECT_EQ(test::bytesOf(files.pathOf(Shelf::photograph, digest)),
              "a photograph of the joint, before");
}

TEST_F(FileStoreTest, namesAFileByItsDigest) {
    // SHA-256 of "abc": FIPS 180-2, appendix B.1.
    const std::string hex = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    EXPECT_EQ(put("abc").hex(), hex);
    EXPECT_EQ(files.pathOf(Shelf::photograph, *Digest::fromHex(hex)),
              temp.path() / "photos" / "ba" / (hex + ".jpg"));
    EXPECT_TRUE(files.has(Shelf::photograph, *Digest::fromHex(hex)));
    EXPECT_FALSE(files.has(Shelf::attachment, *Digest::fromHex(hex)));
}

TEST_F(FileStoreTest, keepsTheSameBytesOnce) {
    const auto digest = put("the same", ".jpg");
    EXPECT_EQ(put("the same", ".png"), digest);
    EXPECT_EQ(test::everythingIn(temp.path() / "photos").size(), 2U); // a folder and a file
}

TEST_F(FileStoreTest, takesSuffixesAsTheyComeAndNoPaths) {
    EXPECT_TRUE(files.pathOf(Shelf::photograph, put("1", "JPEG")).string().ends_with(".jpeg"));
    EXPECT_TRUE(files.pathOf(Shelf::photograph, put("2", ".TIFF")).string().ends_with(".tiff"));
    for (const char* odd : {"", "../../etc", ".a/b", ".tar.gz", "x y", "é"}) {
        const auto path = files.pathOf(Shelf::photograph, put(odd, odd));
        EXPECT_FALSE(path.has_extension()) << path;
    }
}

// As a disk that fails does: what the standard library throws is told as our own.
TEST_F(FileStoreTest, whatTheFileSystemRefusesIsAStoreError) {
    const Digest digest = sha256(std::string_view{"abc"});
    std::filesystem::create_directories(temp.path() / "photos" / "ba" / (digest.hex() + ".jpg"));
    EXPECT_THROW(put("abc"), StoreError); // a folder has no length
    const auto loop = temp.path() / "photos" / sha256(std::string_view{"loop"}).hex().substr(0, 2);
    std::filesystem::create_symlink(loop, loop);
    EXPECT_THROW(put("loop"), StoreError);
    using std::filesystem::filesystem_error;
    const auto codeOf = [](int error) {
        try {
            db::onDisk([&] {
                throw filesystem_error("reading", "/card", {error, std::generic_category()});
            });
        } catch (const StoreError& refused) {
            EXPECT_NE(std::string{refused.what()}.find("/card"), std::string::npos);
            return refused.code();
        }
        return StoreError::Code::internal;
    };
    EXPECT_EQ(codeOf(EIO), StoreError::Code::ioFailed);
    EXPECT_EQ(codeOf(EACCES), StoreError::Code::readOnly);
    EXPECT_EQ(codeOf(ENOSPC), StoreError::Code::diskFull);
    EXPECT_EQ(db::onDisk([] { return 7; }), 7);
}

TEST_F(FileStoreTest, throwsWhereAFileIsMissing) {
    try {
        (void)files.pathOf(Shelf::report, sha256(std::string_view{"never kept"}));
        ADD_FAILURE();
    } catch (const StoreError& error) {
        EXPECT_EQ(error.code(), StoreError::Code::fileMissing);
    }
}

} // namespace
} // namespace headcap::core
