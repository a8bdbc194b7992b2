// What the disk and the file system refuse, told as the rest of the program knows it: no exception
// of the standard library's leaves db.
#pragma once

#include <filesystem>

#include "core/record/stores.h"

namespace headcap::db {

// Of an errno.
[[nodiscard]] core::StoreError::Code storeCodeOfErrno(int error);

[[noreturn]] void throwStoreError(const std::filesystem::filesystem_error& error);

// Runs what asks the file system, and throws a StoreError where it can't be asked.
template <class Work>
decltype(auto) onDisk(Work&& work) {
    try {
        return work();
    } catch (const std::filesystem::filesystem_error& error) {
        throwStoreError(error);
    }
}

} // namespace headcap::db
