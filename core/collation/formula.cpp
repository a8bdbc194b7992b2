#include "core/collation/formula.h"

#include <utility>

namespace headcap::core {

FormulaReading readFormula(std::string_view formula) {
    Terms terms = readTerms(formula);
    TermReading reading;
    reading.plainAreCounts = !terms.raisedCounts;
    Expansion expansion = expand(terms, reading);
    FormulaReading out{std::move(terms.format), std::move(expansion.makeUp),
                       std::move(terms.assumptions), std::move(terms.problems)};
    out.assumptions.insert(out.assumptions.end(), expansion.assumptions.begin(),
                           expansion.assumptions.end());
    out.problems.insert(out.problems.end(), expansion.problems.begin(), expansion.problems.end());
    return out;
}

} // namespace headcap::core
