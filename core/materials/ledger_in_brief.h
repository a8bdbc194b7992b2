// A ledger in brief: as a bookkeeper carries sums forward, the lines of one lot, kind, unit and
// direction become one line, with the key and the time of the last of them. Balances and what came
// in are those of the whole, and a lot that is used for years is read as fast as a new one.
#pragma once

#include <map>
#include <memory>
#include <tuple>
#include <vector>

#include "core/materials/shelf.h"

namespace headcap::core {

// Takes lines as they come; the sums stand at any time.
class LedgerInBrief {
public:
    struct Group {
        Id<Lot> lot;
        LedgerKind kind;
        Unit unit;
        bool isIn; // above nothing
        friend auto operator<=>(const Group&, const Group&) = default;
    };
    // Of any number of lines: a sum in millions and what is left, each far from overflowing.
    struct Sum {
        Id<LedgerEntry> last;
        Instant at;
        std::int64_t millions = 0;
        std::int64_t rest = 0;
    };
    static constexpr std::int64_t kMillion = 1'000'000;

    void add(const LedgerEntry& entry);
    void add(const Group& group, const Sum& sum);
    // Before the sums of a lot are added anew.
    void forget(const Id<Lot>& lot);
    // In the order of their lots. A sum beyond counting is two lines, which no balance can add up.
    [[nodiscard]] std::vector<LedgerEntry> lines() const;

private:
    std::map<Group, Sum> m_sums;
};

[[nodiscard]] std::vector<LedgerEntry> inBrief(const std::vector<LedgerEntry>& whole);

// A store that can answer in brief where the records lie. Others are read whole.
class BriefStore {
public:
    virtual ~BriefStore() = default;
    // The lines of a lot that are not of this job's uses.
    [[nodiscard]] virtual std::vector<LedgerEntry>
    ledgerInBrief(const Id<Lot>& lot, const Id<Job>& apartFrom) const = 0;
    // Read again only where something of it was touched.
    [[nodiscard]] virtual std::shared_ptr<const Shelf> shelfInBrief() const = 0;
};

// All lots with their ledger in brief: for what asks after each change, and for balances.
[[nodiscard]] std::shared_ptr<const Shelf> shelfInBrief(const RecordStore& store);

} // namespace headcap::core
