#include "core/cutting/plan_cuts.h"

#include <algorithm>
#include <string_view>

#include "core/cutting/all_pieces.h"
#include "core/cutting/bench_order.h"
#include "core/cutting/most_value.h"
#include "core/cutting/plan_check.h"
#include "core/cutting/plan_writer.h"
#include "core/values/contract.h"

namespace headcap::core {

namespace {

using Found = std::optional<CutProblemError>;
using Fault = CutProblemFault;
using Place = CutProblemPlace;

constexpr std::int64_t kMostStretchPpm = 200'000;
constexpr std::int64_t kMostValueSum = 4'000'000'000'000'000; // millionths, of all that could fit

struct At {
    Place place;
    std::size_t index;

    [[nodiscard]] CutProblemError error(Fault fault, const char* field) const {
        return {fault, place, index, field};
    }
    [[nodiscard]] Found side(Length length, const char* field) const {
        if (length <= Length{}) {
            return error(Fault::notPositive, field);
        }
        return length > kLongestSheetSide ? Found(error(Fault::tooLarge, field)) : std::nullopt;
    }
    [[nodiscard]] Found allowance(Length length, const char* field) const {
        if (length.isNegative()) {
            return error(Fault::negative, field);
        }
        return length > kLongestSheetSide ? Found(error(Fault::tooLarge, field)) : std::nullopt;
    }
    [[nodiscard]] Found number(std::int64_t value, std::int64_t most, const char* field) const {
        if (value < 0) {
            return error(Fault::negative, field);
        }
        return value > most ? Found(error(Fault::tooLarge, field)) : std::nullopt;
    }
};

Found firstOf(std::initializer_list<Found> found) {
    for (const Found& one : found) {
        if (one) {
            return one;
        }
    }
    return std::nullopt;
}

Found faultOf(const StockSheet& sheet, const CutRules& rules, std::size_t index) {
    const At at{Place::sheet, index};
    const EdgeTrim& trim = sheet.trim;
    Found found = firstOf({
        at.side(sheet.width, "width"),
        at.side(sheet.height, "height"),
        sheet.count <= 0 ? Found(at.error(Fault::notPositive, "count")) : std::nullopt,
        at.number(sheet.cost.value_or(0), kMostValueSum, "value"),
        at.allowance(trim.left, "trim"),
        at.allowance(trim.right, "trim"),
        at.allowance(trim.top, "trim"),
        at.allowance(trim.bottom, "trim"),
        at.number(sheet.stretch.acrossPpm, kMostStretchPpm, "stretch"),
        at.number(sheet.stretch.alongPpm, kMostStretchPpm, "stretch"),
    });
    const auto leaves = [&](Length whole, Length first, Length last) {
        return whole - last - (first.isZero() ? first : std::max(first, rules.kerf)) > Length{};
    };
    if (!found && (!leaves(sheet.width, trim.left, trim.right) ||
                   !leaves(sheet.height, trim.top, trim.bottom))) {
        return at.error(Fault::trimmedAway, "trim");
    }
    return found;
}

Found faultOf(const WantedPiece& piece, std::size_t index) {
    const At at{Place::piece, index};
    return firstOf({
        at.side(piece.width, "width"),
        at.side(piece.height, "height"),
        piece.count <= 0 ? Found(at.error(Fault::notPositive, "count")) : std::nullopt,
        at.number(piece.value.value_or(0), kMostValueSum, "value"),
        at.allowance(piece.overlap, "overlap"),
    });
}

Found faultOfCounts(const CutProblem& problem) {
    std::int64_t sheets = 0, pieces = 0;
    double area = 0, values = 0;
    for (const StockSheet& sheet : problem.sheets) {
        sheets += sheet.count;
        area += sheet.count * static_cast<double>(areaOf(sheet.width, sheet.height).count());
    }
    for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
        const WantedPiece& piece = problem.pieces[i];
        pieces += piece.count;
        const auto size = static_cast<double>(areaOf(piece.width, piece.height).count());
        values += static_cast<double>(piece.value.value_or(0)) *
                  std::min(static_cast<double>(piece.count), area / std::max(size, 1.0));
        if (values > kMostValueSum) {
            return At{Place::piece, i}.error(Fault::tooLarge, "value");
        }
    }
    const int most =
        problem.objective == CutObjective::allPieces ? kMostPiecesToPlace : kMostPiecesToChoose;
    if (sheets > kMostSheetsToCut) {
        return CutProblemError{Fault::tooManySheets, Place::plan, 0, "sheets"};
    }
    if (pieces > most) {
        return CutProblemError{Fault::tooManyPieces, Place::plan, 0, "pieces"};
    }
    return std::nullopt;
}

} // namespace

bool operator==(const CutProblemError& a, const CutProblemError& b) {
    return a.fault == b.fault && a.place == b.place && a.index == b.index &&
           std::string_view(a.field) == b.field;
}

std::optional<CutProblemError> faultOf(const CutProblem& problem) {
    const At plan{Place::plan, 0};
    if (problem.sheets.empty() || problem.pieces.empty()) {
        return problem.sheets.empty() ? plan.error(Fault::noSheets, "sheets")
                                      : plan.error(Fault::noPieces, "pieces");
    }
    if (problem.sheets.size() > kMostCutRows || problem.pieces.size() > kMostCutRows) {
        return plan.error(Fault::tooManyRows,
                          problem.sheets.size() > kMostCutRows ? "sheets" : "pieces");
    }
    Found found = firstOf({
        plan.allowance(problem.rules.kerf, "kerf"),
        plan.allowance(problem.rules.leastStrip, "least_strip"),
        plan.allowance(problem.rules.leastOffcut, "least_offcut"),
    });
    for (std::size_t i = 0; !found && i < problem.sheets.size(); ++i) {
        found = faultOf(problem.sheets[i], problem.rules, i);
    }
    for (std::size_t i = 0; !found && i < problem.pieces.size(); ++i) {
        found = faultOf(problem.pieces[i], i);
    }
    return found ? found : faultOfCounts(problem);
}

SearchLimits usualLimits(CutObjective objective) {
    const bool isQuick = objective == CutObjective::allPieces;
    SearchLimits limits = untilDeadline(std::chrono::steady_clock::now() +
                                        std::chrono::milliseconds(isQuick ? 600 : 8'000));
    limits.work = isQuick ? 500'000'000 : 9'000'000'000;
    return limits;
}

tl::expected<CutPlan, CutProblemError> planCuts(const CutProblem& problem,
                                                const SearchLimits& limits) {
    if (const std::optional<CutProblemError> fault = faultOf(problem)) {
        return tl::unexpected(*fault);
    }
    const StockTasks tasks = stockTasks(problem);
    SearchBudget budget(limits);
    const auto written = [&](auto answer) {
        for (FilledSheet& filled : answer.filling) {
            setInBenchOrder(filled.layout, tasks.sheets[filled.sheet].task);
        }
        return writePlan(problem, tasks, answer.filling, answer.isProvedBest);
    };
    const CutPlan plan = problem.objective == CutObjective::mostValue
                             ? written(cutMostValue(problem, tasks, budget))
                             : written(cutAllPieces(problem, tasks, budget));
    HEADCAP_CONTRACT(checkPlan(problem, plan).empty());
    return plan;
}

} // namespace headcap::core
