#include "core/treatment/cost.h"

#include <algorithm>

#include "core/treatment/totals.h"
#include "core/values/wide.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kMillion = 1'000'000;

// What is beyond counting is the most that can be counted, and no sum with it is.
std::int64_t scaled(std::int64_t value, std::int64_t by, std::int64_t over) {
    return clampedCount(nearest(static_cast<Wide>(value) * by, over));
}

LineCost costOf(const ProposalLine& line, const Proposal& proposal,
                const std::optional<Workshop>& workshop) {
    LineCost cost{.line = &line, .work = line.price, .materials = line.materialsCost};
    const bool hasRate = workshop && workshop->hourlyRate;
    if (!cost.work && hasRate && line.minutes > Minutes{0}) {
        cost.work = priceAt(*workshop->hourlyRate, line.minutes);
        cost.isByRate = true;
    }
    if (cost.work && cost.materials) {
        cost.net = sum(*cost.work, *cost.materials);
    } else {
        cost.net = cost.work ? cost.work : cost.materials;
    }
    if (cost.net && proposal.taxPerLine) {
        cost.tax = shareOf(*cost.net, proposal.taxPpm);
        cost.gross = sum(*cost.net, *cost.tax);
    }
    return cost;
}

CostTotal& totalIn(std::vector<CostTotal>& totals, const std::string& currency) {
    const auto same = std::ranges::find(totals, currency, &CostTotal::currency);
    if (same != totals.end()) {
        return *same;
    }
    const Money nothing{0, currency};
    return totals.emplace_back(CostTotal{currency, nothing, nothing, nothing, nothing, nothing});
}

// False where the sum is beyond counting.
bool add(Money& into, const Money& what) {
    const auto both = sum(into, what);
    into = both.value_or(into);
    return both.has_value();
}

// What a line costs in one currency; with its tax, or that of the whole.
bool addPart(std::vector<CostTotal>& totals, const LineCost& part, const Proposal& proposal) {
    CostTotal& total = totalIn(totals, part.net->currency);
    bool isCounted = add(total.net, *part.net) && (!part.work || add(total.work, *part.work)) &&
                     (!part.materials || add(total.materials, *part.materials));
    if (proposal.taxPerLine) {
        isCounted = isCounted && add(total.tax, shareOf(*part.net, proposal.taxPpm));
    } else {
        total.tax = shareOf(total.net, proposal.taxPpm);
    }
    total.gross = total.net;
    return isCounted && add(total.gross, total.tax);
}

// False where nothing of the line is added: it has no price, or one beyond counting. Work and
// materials of two currencies go each to its own total.
bool addUp(std::vector<CostTotal>& totals, const LineCost& cost, const Proposal& proposal) {
    std::vector<LineCost> parts;
    if (cost.net) {
        parts.push_back(cost);
    } else if (cost.work && cost.materials && cost.work->currency != cost.materials->currency) {
        parts.push_back({.work = cost.work, .net = cost.work});
        parts.push_back({.materials = cost.materials, .net = cost.materials});
    }
    std::vector<CostTotal> with = totals;
    const bool isCounted = !parts.empty() && std::ranges::all_of(parts, [&](const LineCost& part) {
        return addPart(with, part, proposal);
    });
    if (isCounted) {
        totals = std::move(with);
    }
    return isCounted;
}

} // namespace

Money shareOf(const Money& of, std::int64_t partsPerMillion) {
    return {scaled(of.minor, partsPerMillion, kMillion), of.currency};
}

Money inProportion(const Money& of, Minutes part, Minutes whole) {
    return {scaled(of.minor, part.count(), whole.count()), of.currency};
}

Money priceAt(const Money& hourly, Minutes minutes) {
    return inProportion(hourly, minutes, std::chrono::hours{1});
}

OptionCost costOf(const JobFile& file, const Proposal& proposal, const Id<ProposalOption>& option) {
    OptionCost all;
    for (const ProposalLine* line : linesOf(file, option)) {
        all.lines.push_back(costOf(*line, proposal, file.workshop));
        all.unpriced += addUp(all.totals, all.lines.back(), proposal) ? 0 : 1;
    }
    return all;
}

} // namespace headcap::core
