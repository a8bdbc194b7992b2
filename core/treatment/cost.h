// What a proposal costs: work and materials by line, tax by line or once on the total, as the
// proposal chooses. Every figure is rounded to the minor unit, half away from nothing, and what
// stands in a column is what its foot adds up to.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct LineCost {
    const ProposalLine* line = nullptr;
    std::optional<Money> work{};      // as the line says, or its minutes at the workshop's rate
    bool isByRate = false;            // the latter
    std::optional<Money> materials{}; // beside the work
    std::optional<Money> net{};
    std::optional<Money> tax{}; // where tax is by line
    std::optional<Money> gross{};
};

// The lines of one currency, which is all of them as a rule.
struct CostTotal {
    std::string currency;
    Money work;
    Money materials;
    Money net;
    Money tax;
    Money gross;
};

struct OptionCost {
    std::vector<LineCost> lines;
    std::vector<CostTotal> totals;
    std::size_t unpriced = 0; // lines in no total: nothing says a price, or one beyond counting
};

[[nodiscard]] OptionCost costOf(const JobFile& file, const Proposal& proposal,
                                const Id<ProposalOption>& option);

// A share of a sum, rounded half away from nothing: 19 % of 12.50 EUR.
[[nodiscard]] Money shareOf(const Money& of, std::int64_t partsPerMillion);
// As much of it as the part is of the whole; the whole is above nothing.
[[nodiscard]] Money inProportion(const Money& of, Minutes part, Minutes whole);
// Minutes at so much an hour.
[[nodiscard]] Money priceAt(const Money& hourly, Minutes minutes);

} // namespace headcap::core
