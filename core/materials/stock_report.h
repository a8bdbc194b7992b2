// The workshop's shelf looked at as a whole: what there was on a day, what runs out or goes off,
// how much of each kind went in each year, and where saved paper went.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/materials/shelf.h"
#include "core/materials/shelf_life.h"
#include "core/materials/trace.h"

namespace headcap::core {

struct StockLine {
    const Lot* lot = nullptr;
    const Material* kind = nullptr;
    Amount balance{};
    std::optional<Day> goodUntil{};
    LotAge age = LotAge::keeps; // on that day
};
// Every lot of which there was something, at the end of the day; by kind, then by number.
[[nodiscard]] std::vector<StockLine> stockOn(const Shelf& shelf, Day day, const Clock& clock);

// Lots past their date, or that will be within so many days, with something left; the first first.
[[nodiscard]] std::vector<StockLine> goingOff(const Shelf& shelf, Day today, int withinDays,
                                              const Clock& clock);

struct RunningOut {
    const Material* kind = nullptr;
    Amount left{};
    Amount usedInAYear{};
    int days = 0; // at the pace of the last year
};
// Materials that last no longer than so many days at the pace of the year before.
[[nodiscard]] std::vector<RunningOut> runningOut(const Shelf& shelf, Day today, int withinDays,
                                                 const Clock& clock);

struct YearsUse {
    const Material* kind = nullptr;
    std::map<int, Amount> byYear{}; // used, mixed and cut; what was taken back is not in it
};
[[nodiscard]] std::vector<YearsUse> useByYear(const Shelf& shelf, const Clock& clock);

} // namespace headcap::core
