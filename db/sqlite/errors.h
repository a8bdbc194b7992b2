// What SQLite's result codes mean to the rest of the program.
#pragma once

#include <string>

#include "core/record/stores.h"

namespace headcap::db {

// Of an extended result code.
[[nodiscard]] core::StoreError::Code storeCodeOf(int extendedCode);

// Throws the StoreError for a result code, its detail saying what was being done.
[[noreturn]] void throwStoreError(int extendedCode, const std::string& detail);

} // namespace headcap::db
