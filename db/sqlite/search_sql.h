// The search index: one row of folded words a record, and FTS5 over them. All of it is derived
// from the records and can be made anew. A job is found by the words of its item and its owner's
// name as well.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/sqlite/connection.h"
#include "db/sqlite/journal_sql.h"

namespace headcap::db {

// The words a record is found by, folded, in the order of its fields; empty where there are none.
[[nodiscard]] std::string indexedWords(Connection& connection, const core::AnyRecord& record);

// Brings the index up to date with what a transaction did, within it.
void updateSearch(Connection& connection, const TouchedRecords& touched);

// Makes all of it anew, within a write transaction.
void rebuildSearchIndex(Connection& connection);

// The words of a question, folded: what lies between signs that no word holds.
[[nodiscard]] std::vector<std::string> wordsOf(std::string_view folded);

} // namespace headcap::db
