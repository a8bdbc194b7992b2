#include "core/treatment/cost.h"

#include <algorithm>

#include "core/treatment/totals.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kMillion = 1'000'000;

// Half away from nothing, in 128 bits, so that no sum of money overflows on its way.
std::int64_t scaled(std::int64_t value, std::int64_t by, std::int64_t over) {
    __extension__ using Wide = __int128;
    const Wide product = static_cast<Wide>(value) * by;
    const Wide half = over / 2;
    return static_cast<std::int64_t>((product < 0 ? product - half : product + half) / over);
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

void addUp(std::vector<CostTotal>& totals, const LineCost& cost) {
    if (!cost.net) {
        return;
    }
    const std::string& currency = cost.net->currency;
    auto total = std::ranges::find(totals, currency, &CostTotal::currency);
    if (total == totals.end()) {
        const Money nothing{0, currency};
        totals.push_back({currency, nothing, nothing, nothing, nothing, nothing});
        total = totals.end() - 1;
    }
    const auto add = [](Money& into, const std::optional<Money>& what) {
        into = what ? sum(into, *what).value_or(into) : into;
    };
    add(total->work, cost.work);
    add(total->materials, cost.materials);
    add(total->net, cost.net);
    add(total->tax, cost.tax);
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
        addUp(all.totals, all.lines.back());
        all.unpriced += all.lines.back().net ? 0 : 1;
    }
    for (CostTotal& total : all.totals) {
        if (!proposal.taxPerLine) {
            total.tax = shareOf(total.net, proposal.taxPpm);
        }
        total.gross = sum(total.net, total.tax).value_or(total.net);
    }
    return all;
}

} // namespace headcap::core
