// Plans the cutting of sheets into pieces. The one way in: checks what is asked, searches within
// its limits, and gives a plan that the independent check (plan_check.h) passes.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <tl/expected.hpp>

#include "core/cutting/cut_plan.h"
#include "core/cutting/search_limits.h"

namespace headcap::core {

enum class CutProblemFault {
    noSheets,
    noPieces,
    tooManyRows,   // of sheets or pieces
    tooManySheets, // counted
    tooManyPieces, // counted
    notPositive,   // a side or a count of nothing or less
    tooLarge,      // a side, count, value or allowance beyond what is cut at a bench
    negative,      // an allowance or value below nothing
    trimmedAway,   // nothing is left of the sheet once its edges are trimmed
};

enum class CutProblemPlace { plan, sheet, piece };

struct CutProblemError {
    CutProblemFault fault = CutProblemFault::noSheets;
    CutProblemPlace place = CutProblemPlace::plan;
    std::size_t index = 0;  // of the sheet or piece
    const char* field = ""; // as the plan file names it
    friend bool operator==(const CutProblemError& a, const CutProblemError& b);
};

inline constexpr int kMostCutRows = 1'000;
inline constexpr int kMostSheetsToCut = 1'000;
inline constexpr int kMostPiecesToPlace = 5'000;    // allPieces: every one must find a place
inline constexpr int kMostPiecesToChoose = 999'999; // mostValue: at most so many
inline constexpr Length kLongestSheetSide = Length::millimetres(20'000);

// The first thing wrong with a problem, if any.
[[nodiscard]] std::optional<CutProblemError> faultOf(const CutProblem& problem);

// Limits that answer a workshop's question in under a second, and the hard one in under ten.
[[nodiscard]] SearchLimits usualLimits(CutObjective objective);

[[nodiscard]] tl::expected<CutPlan, CutProblemError> planCuts(const CutProblem& problem,
                                                              const SearchLimits& limits);

} // namespace headcap::core
