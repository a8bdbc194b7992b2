// The formula: what bibliographers and cataloguers write, read into a make-up and printed back in
// one canonical form (DCRMR 6.215.44; Bowers 196–254: real superscripts, π and χ, en dashes in
// ranges, "−" for leaves taken out). What is printed reads back to the same make-up.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/collation/expansion.h"
#include "core/collation/make_up.h"
#include "core/collation/terms.h"

namespace headcap::core {

struct FormulaReading {
    std::string format; // "8o"; empty where the formula gives none
    MakeUp makeUp;      // what could be read, also where something could not
    std::vector<Assumption> assumptions;
    std::vector<ReadingProblem> problems; // empty exactly when every part was read
};

// The formula alone: a leaf count that is not printed stays unknown.
[[nodiscard]] FormulaReading readFormula(std::string_view formula);

[[nodiscard]] std::string toFormula(const MakeUp& makeUp);

} // namespace headcap::core
