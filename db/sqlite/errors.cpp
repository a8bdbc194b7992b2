#include "db/sqlite/errors.h"

#include <sqlite3.h>

namespace headcap::db {

core::StoreError::Code storeCodeOf(int extendedCode) {
    using Code = core::StoreError::Code;
    switch (extendedCode & 0xff) {
    case SQLITE_FULL:
        return Code::diskFull;
    case SQLITE_READONLY: // 1544, a WAL database in a read-only folder, is one of these
    case SQLITE_PERM:
        return Code::readOnly;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Code::busy;
    case SQLITE_CORRUPT:
        return Code::truncated;
    case SQLITE_NOTADB:
        return Code::notAWorkshop;
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
        return Code::ioFailed;
    default:
        return Code::internal;
    }
}

void throwStoreError(int extendedCode, const std::string& detail) {
    throw core::StoreError(storeCodeOf(extendedCode), detail + " (" + sqlite3_errstr(extendedCode) +
                                                          ", " + std::to_string(extendedCode) +
                                                          ")");
}

} // namespace headcap::db
