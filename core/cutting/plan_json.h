// The plan file of `headcap cut` and its answer: JSON, lengths in millimetres, areas in mm², values
// in the asker's own unit. A number is taken to the nearest nanometre (value: to the millionth), so
// decimals of a workshop are exact. What is not understood is refused, never passed over: a grain
// misspelt would be cut wrong.
//
// Beside what every plan has, these may be given: least_strip, least_offcut (plan); kept_back, trim
// (a number, or left, right, top, bottom), stretch (across, along, in per cent) (sheet); pasted,
// overlap (piece). A cut on axis "x" lies at x = at and runs in y from `from` to `to`.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/cutting/cut_plan.h"
#include "core/cutting/plan_cuts.h"

namespace headcap::core {

enum class PlanFileFault {
    tooLong,   // more than kLongestPlanFile bytes
    notJson,   // `place` is empty; `at` is the byte
    wrongType, // a word where a number belongs …
    missing,
    unknownField,
    unknownWord, // a grain or an objective that there is none of
    notWhole,    // a count with a fraction
    doubleId,
    problem, // readable, but not to be cut: see `problem`
};

struct PlanFileError {
    PlanFileFault fault = PlanFileFault::notJson;
    std::string place;  // a JSON pointer (RFC 6901): "/pieces/3/width"
    std::size_t at = 0; // byte, where it is not JSON
    std::optional<CutProblemFault> problem;
};

inline constexpr std::size_t kLongestPlanFile = 16'000'000;

[[nodiscard]] tl::expected<CutProblem, PlanFileError> readCutProblem(std::string_view json);

// One object, as the plan file's format has it.
[[nodiscard]] std::string cutPlanJson(const CutProblem& problem, const CutPlan& plan);

// Where in a plan file an error of the problem lies.
[[nodiscard]] PlanFileError placeInFile(const CutProblemError& error);

// Reads, plans within the limits usual for what is asked, and writes.
struct CutAnswer {
    CutProblem problem;
    CutPlan plan;
};
[[nodiscard]] tl::expected<CutAnswer, PlanFileError> answerPlanFile(std::string_view json);

} // namespace headcap::core
