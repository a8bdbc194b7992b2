// Several readings of one state of the database, whatever is written meanwhile.
#pragma once

#include "db/sqlite/connection.h"

namespace headcap::db {

class ReadSnapshot {
public:
    explicit ReadSnapshot(Connection& connection) : m_connection(connection) {
        m_connection.run("BEGIN");
    }
    // Nothing was written: that it ends can fail without harm.
    ~ReadSnapshot() { (void)m_connection.tryRun("COMMIT"); }
    ReadSnapshot(const ReadSnapshot&) = delete;
    ReadSnapshot& operator=(const ReadSnapshot&) = delete;

private:
    Connection& m_connection;
};

} // namespace headcap::db
