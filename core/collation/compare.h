// Formula against extent: both figures, whether they agree, and the likely cause where they don't.
// Neither is corrected. They agree when the leaves are equal, or differ by exactly the leaves the
// same statement says are blank, which many catalogues leave out of the extent.
#pragma once

#include <string>

#include "core/collation/extent.h"
#include "core/collation/make_up.h"

namespace headcap::core {

struct ExtentComparison {
    int formulaLeaves = 0;
    int extentLeaves = 0;
    int difference = 0; // extent less formula, in leaves
    bool agrees = false;
    bool blanksUncounted = false; // the difference is the blanks, all of them
    std::string explanation;      // a sentence; empty where there is nothing to explain
};

[[nodiscard]] ExtentComparison compare(const MakeUp& makeUp, int perhapsBlank,
                                       const Extent& extent);

} // namespace headcap::core
