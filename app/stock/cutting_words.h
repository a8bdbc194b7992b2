// What the cutting window says of sheets and plans.
#pragma once

#include <QString>

#include "app/form/ruled_list.h"
#include "core/cutting/plan_cuts.h"
#include "core/materials/cutting_booking.h"
#include "core/materials/sheet_stock.h"

namespace headcap::app {

[[nodiscard]] RowWords sheetWords(const core::Shelf& shelf, const core::SheetOfLot& sheet,
                                  bool isSpared, core::Day today);
[[nodiscard]] QString standingWords(const core::CutProblem& problem, const core::CutPlan& plan);
// Which pieces would lie with their grain across the spine; empty: none.
[[nodiscard]] QString grainAgainst(const core::CutProblem& problem, const core::CutPlan& plan);
[[nodiscard]] QString sentenceFor(const core::CutProblemError& error,
                                  const core::CutProblem& problem);
[[nodiscard]] QString sentenceFor(core::CuttingFault fault);

} // namespace headcap::app
