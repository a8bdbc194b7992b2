#include "core/materials/job_cost.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/materials/lot_cost.h"
#include "core/treatment/approval.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

// False where the sum is beyond counting.
bool addTo(std::vector<Money>& sums, const Money& money) {
    const auto same = std::ranges::find(sums, money.currency, &Money::currency);
    if (same == sums.end()) {
        sums.push_back(money);
        return true;
    }
    const auto both = sum(*same, money);
    *same = both.value_or(*same);
    return both.has_value();
}

} // namespace

JobCost jobCost(const JobFile& file) {
    JobCost cost;
    const Shelf shelf = shelfOf(file);
    for (const MaterialUse& use : file.uses) {
        const Step* step = file.step(use.step);
        if (step == nullptr || step->struckAt) {
            continue;
        }
        const Lot* lot = file.lot(use.lot);
        const auto spent =
            lot != nullptr && use.amount ? costOf(*lot, *use.amount, shelf) : std::nullopt;
        const bool isKnown = spent && (spent->minor == 0 || addTo(cost.spent, *spent));
        cost.unknown += isKnown ? 0 : 1;
    }
    for (const ProposalLine* line : approvedLines(file)) {
        if (line->materialsCost) {
            (void)addTo(cost.estimated, *line->materialsCost);
        }
    }
    return cost;
}

std::string sentenceOf(const JobCost& cost) {
    std::string said;
    if (cost.unknown == 0) {
        said = fmt::format("Materials used: {}.", toText(cost.spent));
    } else if (cost.spent.empty()) {
        said = fmt::format("What the materials cost is not known: the lots of {} have no price.",
                           counted(cost.unknown, "use", "uses"));
    } else {
        said = fmt::format("Materials used: {}. The cost of {} is not known.", toText(cost.spent),
                           counted(cost.unknown, "further use", "further uses"));
    }
    return said + (cost.estimated.empty() ? " Nothing was estimated for them."
                                          : fmt::format(" Estimated: {}.", toText(cost.estimated)));
}

std::string toText(const std::vector<Money>& sums) {
    std::string text;
    for (const Money& money : sums) {
        text += (text.empty() ? "" : " and ") + toText(money);
    }
    return text.empty() ? "nothing" : text;
}

} // namespace headcap::core
