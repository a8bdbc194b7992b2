// A write transaction: begun at once (BEGIN IMMEDIATE), so that what it reads is what it writes
// over; rolled back when it goes, unless it was committed.
#pragma once

#include "db/sqlite/connection.h"

namespace headcap::db {

class WriteTransaction {
public:
    // Waits for other writers as long as the connection's patience. Throws StoreError busy.
    explicit WriteTransaction(Connection& connection);
    ~WriteTransaction();
    WriteTransaction(const WriteTransaction&) = delete;
    WriteTransaction& operator=(const WriteTransaction&) = delete;

    // Throws StoreError: diskFull where nothing was kept; outcomeUnknown where the disk failed
    // under it, and only opening anew can tell.
    void commit();
    void rollBack();
    [[nodiscard]] Connection& connection() const { return m_connection; }

private:
    Connection& m_connection;
    bool m_open = false;
};

} // namespace headcap::db
