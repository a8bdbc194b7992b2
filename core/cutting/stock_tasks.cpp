#include "core/cutting/stock_tasks.h"

#include <algorithm>

namespace headcap::core {

namespace {

constexpr std::int64_t kMillion = 1'000'000;
constexpr std::int64_t kTenthOfMillimetre = 100'000;

// The length to cut of one that is to measure `wanted` once it has grown.
std::int64_t beforeStretch(std::int64_t wanted, std::int64_t ppm) {
    if (ppm == 0) {
        return wanted;
    }
    // No overflow: lengths are bounded at 20 m, which is 2·10¹⁰ nm.
    const std::int64_t exact = wanted * kMillion / (kMillion + ppm);
    const std::int64_t tenths = (exact + kTenthOfMillimetre / 2) / kTenthOfMillimetre;
    return tenths * kTenthOfMillimetre;
}

struct CutSize {
    std::int64_t width = 0, height = 0; // as it lies on the sheet
};

CutSize cutSize(const WantedPiece& piece, const StockSheet& sheet, bool isTurned) {
    CutSize size{piece.width.count(), piece.height.count()};
    if (isTurned) {
        std::swap(size.width, size.height);
    }
    if (piece.isPasted) {
        const Stretch& by = sheet.stretch;
        const bool alongWidth = sheet.grain == GrainWay::alongWidth;
        const bool alongHeight = sheet.grain == GrainWay::alongHeight;
        size.width = beforeStretch(size.width, alongWidth ? by.alongPpm : by.acrossPpm);
        size.height = beforeStretch(size.height, alongHeight ? by.alongPpm : by.acrossPpm);
    }
    size.width += 2 * piece.overlap.count();
    size.height += 2 * piece.overlap.count();
    return size;
}

bool mayLie(const WantedPiece& piece, const StockSheet& sheet, bool isTurned, bool mayTurn) {
    if (isTurned && !mayTurn) {
        return false;
    }
    if (piece.grain == GrainWay::none || sheet.grain == GrainWay::none) {
        return true;
    }
    return (piece.grain == sheet.grain) != isTurned;
}

void addOptions(const CutProblem& problem, std::size_t index, const StockSheet& sheet,
                StockTask& stock) {
    const WantedPiece& piece = problem.pieces[index];
    const std::int64_t kerf = problem.rules.kerf.count();
    const std::int64_t least = problem.rules.leastStrip.count();
    const CutSize straight = cutSize(piece, sheet, false);
    const bool isStraightAllowed = mayLie(piece, sheet, false, problem.rules.mayTurn);
    for (const bool isTurned : {false, true}) {
        const CutSize size = isTurned ? cutSize(piece, sheet, true) : straight;
        const bool isSame = isTurned && isStraightAllowed && size.width == straight.width &&
                            size.height == straight.height;
        if (!mayLie(piece, sheet, isTurned, problem.rules.mayTurn) || isSame ||
            size.width < std::max<std::int64_t>(least, 1) ||
            size.height < std::max<std::int64_t>(least, 1)) {
            continue;
        }
        if (size.width + kerf <= stock.task.width && size.height + kerf <= stock.task.height) {
            stock.task.options.push_back(
                {static_cast<int>(index), size.width + kerf, size.height + kerf});
            stock.isTurned.push_back(isTurned);
        }
    }
}

// Where a sheet begins on one side: the blade takes its kerf out of what is trimmed off.
std::int64_t startAfter(Length trim, Length kerf) {
    return trim.isZero() ? 0 : std::max(trim, kerf).count();
}

} // namespace

std::int64_t valueOf(const WantedPiece& piece) {
    return piece.value.value_or(areaOf(piece.width, piece.height).count());
}

std::int64_t costOf(const StockSheet& sheet) {
    return sheet.cost.value_or(areaOf(sheet.width, sheet.height).count());
}

StockTasks stockTasks(const CutProblem& problem) {
    StockTasks tasks;
    tasks.fitsSomewhere.assign(problem.pieces.size(), false);
    const Length kerf = problem.rules.kerf;
    for (const StockSheet& sheet : problem.sheets) {
        StockTask stock;
        stock.x = Length::nanometres(startAfter(sheet.trim.left, kerf));
        stock.y = Length::nanometres(startAfter(sheet.trim.top, kerf));
        stock.task.width = (sheet.width - sheet.trim.right - stock.x + kerf).count();
        stock.task.height = (sheet.height - sheet.trim.bottom - stock.y + kerf).count();
        if (!problem.rules.leastStrip.isZero()) {
            stock.task.leastSlack = (problem.rules.leastStrip + kerf).count();
        }
        for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
            stock.task.most.push_back(problem.pieces[i].count);
            stock.task.value.push_back(valueOf(problem.pieces[i]));
            addOptions(problem, i, sheet, stock);
        }
        for (const SheetOption& option : stock.task.options) {
            tasks.fitsSomewhere[static_cast<std::size_t>(option.type)] = true;
        }
        tasks.sheets.push_back(std::move(stock));
        tasks.cost.push_back(costOf(sheet));
    }
    return tasks;
}

} // namespace headcap::core
