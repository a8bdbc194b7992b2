// Writes records and their journal into a workshop in bulk: the rows, the entries with what they
// touched, the change sets and the chain of hashes, byte for byte what the store would write, but
// many entries in one transaction and nothing synced. verify finds nothing against it; a test says
// so.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/record/any_record.h"
#include "core/values/time.h"

namespace headcap::bench {

class BulkWriter {
public:
    // Of a workshop that was just made.
    explicit BulkWriter(const std::filesystem::path& workshop);
    ~BulkWriter(); // commits
    BulkWriter(const BulkWriter&) = delete;
    BulkWriter& operator=(const BulkWriter&) = delete;

    // One entry of the journal that adds these.
    void add(core::Instant at, const core::Id<core::Person>& who, const std::string& sentence,
             const std::vector<core::AnyRecord>& records);
    // The search index, once all is written.
    void finish();

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace headcap::bench
