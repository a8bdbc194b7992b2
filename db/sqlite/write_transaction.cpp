#include "db/sqlite/write_transaction.h"

#include <sqlite3.h>

#include "db/sqlite/errors.h"

namespace headcap::db {
namespace {

// Prepared once, unlike what tryRun is given.
int tryPrepared(Connection& connection, const char* sql) {
    return Query(connection, sql).tryWrite();
}

} // namespace

WriteTransaction::WriteTransaction(Connection& connection) : m_connection(connection) {
    if (const int code = tryPrepared(connection, "BEGIN IMMEDIATE"); code != SQLITE_OK) {
        throwStoreError(code, "beginning to write");
    }
    m_open = true;
}

WriteTransaction::~WriteTransaction() {
    rollBack();
}

void WriteTransaction::rollBack() {
    // Some errors have rolled back already; asking again is answered by an error of no weight.
    if (m_open && sqlite3_get_autocommit(m_connection.handle()) == 0) {
        (void)m_connection.tryRun("ROLLBACK");
    }
    m_open = false;
}

void WriteTransaction::commit() {
    const int code = tryPrepared(m_connection, "COMMIT");
    if (code == SQLITE_OK) {
        m_open = false;
        return;
    }
    const std::string message = m_connection.message();
    rollBack();
    const auto meaning = storeCodeOf(code);
    const bool nothingKept = meaning == core::StoreError::Code::diskFull ||
                             meaning == core::StoreError::Code::busy ||
                             (code & 0xff) == SQLITE_CONSTRAINT;
    throw core::StoreError(nothingKept ? meaning : core::StoreError::Code::outcomeUnknown,
                           "saving: " + message + " (" + std::to_string(code) + ")");
}

} // namespace headcap::db
