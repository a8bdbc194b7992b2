// A cutting plan, booked in one change: the sheets leave their lots, the pieces go to the job, each
// offcut goes back to stock as a lot with its size and grain, the waste of every sheet is written
// down. Pieces, offcuts and waste make up the sheet.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/cutting/cut_plan.h"
#include "core/materials/cutting_record.h"
#include "core/materials/ledger.h"

namespace headcap::core {

struct CuttingToBook {
    std::optional<Id<Job>> job;
    CutProblem problem;
    CutPlan plan;
    std::vector<Id<Lot>> lots{}; // one for each sheet of the problem
    std::string note{};
};

enum class CuttingFault {
    nothingCut,
    planUnsound,   // it does not stand the independent check
    lotUnknown,    // or its kind
    sheetDiffers,  // the lot's sheets are no longer of that size or grain
    tooFewSheets,  // there are not so many left
    numbersUsedUp, // no number is left for an offcut
};

// Offcuts of one sheet's lot that are of one size and grain become one lot. `lastNumber` is the
// greatest lot number of the year, as nextLotNumber (job_states.h) takes it.
[[nodiscard]] tl::expected<Change, CuttingFault>
bookCutting(const CuttingToBook& cutting, const Shelf& shelf,
            const std::optional<std::string>& lastNumber, Day today, const Hand& hand,
            IdSource& ids);

} // namespace headcap::core
