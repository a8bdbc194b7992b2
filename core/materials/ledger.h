// The ledger of a lot: its balance, and the changes that move an amount in or out. Entries are
// never edited. A lot is counted in its material's unit all its life; an amount of another unit is
// entered as it converts to that (conversion.h), or refused.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/materials/shelf.h"

namespace headcap::core {

// The sum of a lot's entries; nothing where one is of another unit or the sum is beyond counting.
[[nodiscard]] std::optional<Amount> balanceOf(const Id<Lot>& lot, Unit unit,
                                              std::span<const LedgerEntry> ledger);

enum class LedgerProblem {
    numberMissing,   // the lot has no number for its label
    materialUnknown, // the shelf does not hold the lot's kind
    lotUnknown,      // nor a source of the mix
    amountNotAbove,  // nothing, or less than nothing
    unitDiffers,     // and nothing leads to the unit the lot is counted in
    sourceMissing,   // a mix of nothing; a saved lot that does not say from what
    reasonMissing,   // thrown away, and no word why
    balanceUnknown,  // the entries there are do not add up
};

// Who moves it, and when.
struct Hand {
    std::optional<Id<Person>> who;
    Instant at;
};

// A lot bought, or saved from another binding (by its origin), with what came of it.
[[nodiscard]] tl::expected<Change, LedgerProblem>
receiveLot(const Lot& lot, Amount amount, const Shelf& shelf, const Hand& hand, IdSource& ids);

// The same for a lot that is on the shelf already: what came of it, or more of it.
[[nodiscard]] tl::expected<Change, LedgerProblem>
takeIn(const Lot& lot, Amount amount, const Shelf& shelf, const Hand& hand, IdSource& ids);

struct MixPart {
    Id<Lot> source;
    Amount amount;
    std::string why{}; // a lot that is not fit was used all the same
};
// A lot mixed from others: what each gave, and what the mix came to.
[[nodiscard]] tl::expected<Change, LedgerProblem> mixLot(const Lot& lot,
                                                         const std::vector<MixPart>& parts,
                                                         Amount yield, const Shelf& shelf,
                                                         const Hand& hand, IdSource& ids);

// The same for a lot that is on the shelf already, of which nothing had been mixed.
[[nodiscard]] tl::expected<Change, LedgerProblem> mixInto(const Lot& lot,
                                                          const std::vector<MixPart>& parts,
                                                          Amount yield, const Shelf& shelf,
                                                          const Hand& hand, IdSource& ids);

// Some of a lot thrown away, or all that is left of it.
[[nodiscard]] tl::expected<Change, LedgerProblem> discardFrom(const Lot& lot, Amount amount,
                                                              const std::string& why,
                                                              const Shelf& shelf, const Hand& hand,
                                                              IdSource& ids);

// What was found on counting; the entry is the difference. An equal count is an entry of nothing,
// so that the counting itself is on record.
[[nodiscard]] tl::expected<Change, LedgerProblem> countLot(const Lot& lot, Amount counted,
                                                           const std::string& note,
                                                           const Shelf& shelf, const Hand& hand,
                                                           IdSource& ids);

} // namespace headcap::core
