// The ledger of lots: every amount that came or went. Entries are never edited; a correction is
// a further entry, and an entry undone has its contrary beside it.
#pragma once

#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/amount.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Lot;
struct MaterialUse;
struct Person;

// mixed_out leaves a lot for a mix, mixed_in is what the mix gave; counted sets a balance right.
enum class LedgerKind {
    received,
    saved,
    mixedIn,
    mixedOut,
    used,
    cut,
    discarded,
    counted,
    contrary
};

struct LedgerEntry {
    Id<LedgerEntry> id;
    Id<Lot> lot;
    Instant at;
    std::optional<Id<Person>> who;
    LedgerKind kind = LedgerKind::received;
    Amount amount{};                    // signed: what came is above nothing
    std::optional<Id<MaterialUse>> use; // the use in a step it answers for
    std::optional<Id<LedgerEntry>> contraryOf;
    std::string note{};

    friend bool operator==(const LedgerEntry&, const LedgerEntry&) = default;
};

template <>
struct EnumNames<LedgerKind> {
    static constexpr std::array<std::string_view, 9> kNames{"received",  "saved",   "mixed_in",
                                                            "mixed_out", "used",    "cut",
                                                            "discarded", "counted", "contrary"};
};

template <>
struct Description<LedgerEntry> {
    static constexpr std::string_view kKind = "ledger_entry";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = LedgerEntry>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),     field("lot", &R::lot),
                          field("at", &R::at),     field("who", &R::who),
                          field("kind", &R::kind), field("amount", &R::amount),
                          field("use", &R::use),   field("contrary_of", &R::contraryOf),
                          field("note", &R::note)};
    }
};

} // namespace headcap::core
