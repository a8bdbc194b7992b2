// The shelf with its ledger in brief, kept between readings. A lot, its kind and its sums are read
// again where the journal says that they were touched.
#pragma once

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

private:
    void readAll(Connection& connection, core::Shelf& shelf);
    // False where nothing of it was touched.
    bool readTouched(Connection& connection, core::Shelf& shelf);

    Readers& m_readers;
    std::mutex m_mutex{};
    core::LedgerInBrief m_ledger{};
    std::int64_t m_sequence = 0; // of the journal when the shelf was read
    std::shared_ptr<const core::Shelf> m_shelf{};
};

} // namespace headcap::db
