#include "core/materials/stock_report.h"

#include <algorithm>
#include <tuple>

#include "core/materials/by_key.h"

namespace headcap::core {
namespace {

constexpr int kYear = 365;

// Balances over what an entry must be to count.
template <class Counts>
std::map<Id<Lot>, std::int64_t> balances(const Shelf& shelf, Counts counts) {
    std::map<Id<Lot>, std::int64_t> sums;
    for (const LedgerEntry& entry : shelf.ledger) {
        if (counts(entry)) {
            sums[entry.lot] += entry.amount.count;
        }
    }
    return sums;
}

bool isBefore(const StockLine& a, const StockLine& b) {
    return std::tie(a.kind->kind, a.kind->name, a.lot->number) <
           std::tie(b.kind->kind, b.kind->name, b.lot->number);
}

// What a lot gave away to be used; a contrary counts as what it takes back.
class Spending {
public:
    explicit Spending(const Shelf& shelf)
        : m_lots(shelf.lots), m_materials(shelf.materials), m_entries(shelf.ledger) {}

    // The material and how much; nothing where the entry is no use.
    [[nodiscard]] std::optional<std::pair<const Material*, std::int64_t>>
    of(const LedgerEntry& entry) const {
        const LedgerEntry* first = m_entries.find(entry.contraryOf);
        const LedgerKind kind = first == nullptr ? entry.kind : first->kind;
        const bool isUse = kind == LedgerKind::used || kind == LedgerKind::mixedOut ||
                           (kind == LedgerKind::cut && isOut(first == nullptr ? entry : *first));
        const Lot* lot = isUse ? m_lots.find(entry.lot) : nullptr;
        const Material* material = lot == nullptr ? nullptr : m_materials.find(lot->material);
        return material == nullptr ? std::nullopt
                                   : std::optional{std::pair{material, -entry.amount.count}};
    }

private:
    static bool isOut(const LedgerEntry& entry) { return entry.amount.count < 0; }
    ByKey<Lot> m_lots;
    ByKey<Material> m_materials;
    ByKey<LedgerEntry> m_entries;
};

} // namespace

std::vector<StockLine> stockOn(const Shelf& shelf, Day day, const Clock& clock) {
    const auto sums =
        balances(shelf, [&](const LedgerEntry& entry) { return clock.dayOf(entry.at) <= day; });
    std::vector<StockLine> lines;
    for (const Lot& lot : shelf.lots) {
        const Material* kind = shelf.material(lot.material);
        const auto at = sums.find(lot.id);
        if (kind != nullptr && at != sums.end() && at->second != 0) {
            lines.push_back({&lot,
                             kind,
                             {at->second, kind->unit},
                             goodUntilOf(lot, kind),
                             ageOf(lot, kind, day)});
        }
    }
    std::ranges::stable_sort(lines, isBefore);
    return lines;
}

std::vector<StockLine> goingOff(const Shelf& shelf, Day today, int withinDays, const Clock& clock) {
    std::vector<StockLine> lines = stockOn(shelf, today, clock);
    std::erase_if(lines, [&](const StockLine& line) {
        return line.lot->finished || line.balance.count <= 0 || !line.goodUntil ||
               daysBetween(today, *line.goodUntil) > withinDays;
    });
    std::ranges::stable_sort(
        lines, [](const StockLine& a, const StockLine& b) { return *a.goodUntil < *b.goodUntil; });
    return lines;
}

std::vector<RunningOut> runningOut(const Shelf& shelf, Day today, int withinDays,
                                   const Clock& clock) {
    const Spending spending{shelf};
    std::map<const Material*, std::int64_t> used;
    for (const LedgerEntry& entry : shelf.ledger) {
        const int ago = daysBetween(clock.dayOf(entry.at), today);
        if (const auto spent = spending.of(entry); spent && ago >= 0 && ago < kYear) {
            used[spent->first] += spent->second;
        }
    }
    std::map<const Material*, std::int64_t> left;
    for (const StockLine& line : stockOn(shelf, today, clock)) {
        if (!line.lot->finished && line.age != LotAge::overdue && line.balance.count > 0) {
            left[line.kind] += line.balance.count;
        }
    }
    std::vector<RunningOut> out;
    for (const auto& [kind, count] : used) {
        if (count <= 0) {
            continue;
        }
        const std::int64_t there = left[kind];
        const double days = static_cast<double>(there) / static_cast<double>(count) * kYear;
        // What is mixed or cut as it is needed is never stocked up.
        const bool isMade = std::ranges::any_of(shelf.lots, [&made = kind->id](const Lot& lot) {
            return lot.material == made && lot.origin == LotOrigin::mixed;
        });
        if (!isMade && days <= withinDays) {
            out.push_back({kind, {there, kind->unit}, {count, kind->unit}, static_cast<int>(days)});
        }
    }
    std::ranges::stable_sort(
        out, {}, [](const RunningOut& one) { return std::tie(one.days, one.kind->name); });
    return out;
}

std::vector<YearsUse> useByYear(const Shelf& shelf, const Clock& clock) {
    const Spending spending{shelf};
    std::map<const Material*, YearsUse> uses;
    for (const LedgerEntry& entry : shelf.ledger) {
        if (const auto spent = spending.of(entry)) {
            YearsUse& use = uses[spent->first];
            use.kind = spent->first;
            Amount& amount = use.byYear[static_cast<int>(clock.dayOf(entry.at).year())];
            amount = {amount.count + spent->second, spent->first->unit};
        }
    }
    std::vector<YearsUse> all;
    for (auto& [kind, use] : uses) {
        std::erase_if(use.byYear, [](const auto& year) { return year.second.count == 0; });
        if (!use.byYear.empty()) {
            all.push_back(std::move(use));
        }
    }
    std::ranges::stable_sort(all, [](const YearsUse& a, const YearsUse& b) {
        return std::tie(a.kind->kind, a.kind->name) < std::tie(b.kind->kind, b.kind->name);
    });
    return all;
}

} // namespace headcap::core
