#include "core/materials/ledger.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/materials/conversion.h"

namespace headcap::core {
namespace {

// An amount as its lot is counted.
struct Counted {
    const Material* kind;
    Amount amount;
};
using Checked = tl::expected<Counted, LedgerProblem>;

Checked checkAmount(const Lot& lot, Amount amount, const Shelf& shelf) {
    const Material* kind = shelf.material(lot.material);
    if (kind == nullptr) {
        return tl::unexpected(LedgerProblem::materialUnknown);
    }
    const auto counted = asCounted(amount, lot, *kind);
    if (!counted) {
        return tl::unexpected(LedgerProblem::unitDiffers);
    }
    if (counted->count <= 0) {
        return tl::unexpected(LedgerProblem::amountNotAbove);
    }
    return Counted{kind, *counted};
}

LedgerEntry entryOf(const Id<Lot>& lot, LedgerKind kind, Amount amount, const Hand& hand,
                    IdSource& ids, const std::string& note = {}) {
    return {.id = ids.next<LedgerEntry>(),
            .lot = lot,
            .at = hand.at,
            .who = hand.who,
            .kind = kind,
            .amount = amount,
            .use = std::nullopt,
            .contraryOf = std::nullopt,
            .note = note};
}

struct Source {
    const Lot* lot;
    Amount amount;
    std::string why;
};

tl::expected<std::vector<Source>, LedgerProblem> sourcesOf(const std::vector<MixPart>& parts,
                                                           const Shelf& shelf) {
    std::vector<Source> sources;
    for (const MixPart& part : parts) {
        const Lot* source = shelf.lot(part.source);
        if (source == nullptr) {
            return tl::unexpected(LedgerProblem::lotUnknown);
        }
        const auto checked = checkAmount(*source, part.amount, shelf);
        if (!checked) {
            return tl::unexpected(checked.error());
        }
        sources.push_back({source, checked->amount, part.why});
    }
    if (sources.empty()) {
        return tl::unexpected(LedgerProblem::sourceMissing);
    }
    return sources;
}

// The lot is kept already; its movements are what is new.
Change withoutTheLot(Change change) {
    std::erase_if(change.writes,
                  [](const Write& write) { return std::holds_alternative<Lot>(write.record); });
    return change;
}

} // namespace

std::optional<Amount> balanceOf(const Id<Lot>& lot, Unit unit,
                                std::span<const LedgerEntry> ledger) {
    std::optional<Amount> balance{Amount{0, unit}};
    for (const LedgerEntry& entry : ledger) {
        if (entry.lot == lot && balance) {
            balance = sum(*balance, entry.amount);
        }
    }
    return balance;
}

tl::expected<Change, LedgerProblem> receiveLot(const Lot& lot, Amount amount, const Shelf& shelf,
                                               const Hand& hand, IdSource& ids) {
    if (lot.number.empty()) {
        return tl::unexpected(LedgerProblem::numberMissing);
    }
    const auto counted = checkAmount(lot, amount, shelf);
    if (!counted) {
        return tl::unexpected(counted.error());
    }
    const bool saved = lot.origin == LotOrigin::saved;
    if (saved && lot.savedFrom.empty()) {
        return tl::unexpected(LedgerProblem::sourceMissing);
    }
    Change change{.sentence =
                      fmt::format("Lot {} {}: {}, {}", lot.number, saved ? "saved" : "received",
                                  counted->kind->name, toText(counted->amount)),
                  .who = hand.who};
    change.add(lot).add(entryOf(lot.id, saved ? LedgerKind::saved : LedgerKind::received,
                                counted->amount, hand, ids));
    return change;
}

tl::expected<Change, LedgerProblem> mixLot(const Lot& lot, const std::vector<MixPart>& parts,
                                           Amount yield, const Shelf& shelf, const Hand& hand,
                                           IdSource& ids) {
    if (lot.number.empty()) {
        return tl::unexpected(LedgerProblem::numberMissing);
    }
    const auto counted = checkAmount(lot, yield, shelf);
    if (!counted) {
        return tl::unexpected(counted.error());
    }
    const auto sources = sourcesOf(parts, shelf);
    if (!sources) {
        return tl::unexpected(sources.error());
    }
    Change change{.who = hand.who};
    change.add(lot);
    std::string from;
    for (const Source& source : *sources) {
        change.add(LotPart{.id = ids.next<LotPart>(),
                           .lot = lot.id,
                           .source = source.lot->id,
                           .amount = source.amount});
        change.add(entryOf(source.lot->id, LedgerKind::mixedOut, source.amount.negated(), hand, ids,
                           "for lot " + lot.number +
                               (source.why.empty() ? "" : "; used because " + source.why)));
        from += fmt::format("{}{} of {}", from.empty() ? "" : ", ", toText(source.amount),
                            source.lot->number);
    }
    change.add(entryOf(lot.id, LedgerKind::mixedIn, counted->amount, hand, ids));
    change.sentence = fmt::format("Lot {} mixed: {}, {} from {}", lot.number, counted->kind->name,
                                  toText(counted->amount), from);
    return change;
}

tl::expected<Change, LedgerProblem> takeIn(const Lot& lot, Amount amount, const Shelf& shelf,
                                           const Hand& hand, IdSource& ids) {
    return receiveLot(lot, amount, shelf, hand, ids).map(withoutTheLot);
}

tl::expected<Change, LedgerProblem> mixInto(const Lot& lot, const std::vector<MixPart>& parts,
                                            Amount yield, const Shelf& shelf, const Hand& hand,
                                            IdSource& ids) {
    return mixLot(lot, parts, yield, shelf, hand, ids).map(withoutTheLot);
}

tl::expected<Change, LedgerProblem> discardFrom(const Lot& lot, Amount amount,
                                                const std::string& why, const Shelf& shelf,
                                                const Hand& hand, IdSource& ids) {
    const auto counted = checkAmount(lot, amount, shelf);
    if (!counted) {
        return tl::unexpected(counted.error());
    }
    if (why.empty()) {
        return tl::unexpected(LedgerProblem::reasonMissing);
    }
    Change change{.sentence = fmt::format("Lot {}: {} thrown away: {}", lot.number,
                                          toText(counted->amount), why),
                  .who = hand.who};
    change.add(entryOf(lot.id, LedgerKind::discarded, counted->amount.negated(), hand, ids, why));
    return change;
}

tl::expected<Change, LedgerProblem> countLot(const Lot& lot, Amount found, const std::string& note,
                                             const Shelf& shelf, const Hand& hand, IdSource& ids) {
    const Material* kind = shelf.material(lot.material);
    if (kind == nullptr) {
        return tl::unexpected(LedgerProblem::materialUnknown);
    }
    const auto counted = asCounted(found, lot, *kind);
    if (!counted) {
        return tl::unexpected(LedgerProblem::unitDiffers);
    }
    if (counted->count < 0) {
        return tl::unexpected(LedgerProblem::amountNotAbove);
    }
    const auto balance = balanceOf(lot.id, kind->unit, shelf.ledger);
    const auto difference = balance ? sum(*counted, balance->negated()) : std::nullopt;
    if (!difference) {
        return tl::unexpected(LedgerProblem::balanceUnknown);
    }
    Change change{.sentence = fmt::format("Lot {} counted: {}", lot.number, toText(*counted)),
                  .who = hand.who};
    change.add(entryOf(lot.id, LedgerKind::counted, *difference, hand, ids, note));
    return change;
}

} // namespace headcap::core
