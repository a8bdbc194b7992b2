// The shelf with its ledger in brief, kept between readings. Lots and their kinds are read again
// where the journal says that one was touched; of the ledger, whose rows are never changed nor
// removed, only what was added since is read.
#pragma once

#include <atomic>
#include <cstdint>
#include <memory>
#include <mutex>
#include <vector>

#include "core/materials/ledger_in_brief.h"
#include "db/sqlite/threads.h"

namespace headcap::db {

class ShelfCache {
public:
    explicit ShelfCache(Readers& readers) : m_readers(readers) {}

    [[nodiscard]] std::shared_ptr<const core::Shelf> now();
    // The lines of a lot that are not of this job's uses.
    [[nodiscard]] std::vector<core::LedgerEntry> ofLot(const core::Id<core::Lot>& lot,
                                                       const core::Id<core::Job>& apartFrom) const;
    // Reads ahead what now() will want; ends early once it is told to.
    void warm(const std::atomic_bool& isEnding);

private:
    bool catchUp(Connection& connection, const std::atomic_bool* isEnding);

    Readers& m_readers;
    std::mutex m_mutex{};
    core::LedgerInBrief m_ledger{};
    std::int64_t m_lastRow = 0;
    std::int64_t m_sequence = 0; // of the journal when the shelf was read
    std::shared_ptr<const core::Shelf> m_shelf{};
};

} // namespace headcap::db
