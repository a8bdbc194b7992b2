// The shelf as a whole in rows: stock on a day, what goes off or runs out, use by kind and year,
// and where saved paper went.
#pragma once

#include "app/form/ruled_table.h"
#include "core/materials/stock_report.h"

namespace headcap::app {

[[nodiscard]] std::vector<TableRow> stockRows(const core::Shelf& shelf, core::Day day,
                                              const core::Clock& clock);
[[nodiscard]] std::vector<TableRow> endingRows(const core::Shelf& shelf, core::Day today,
                                               const core::Clock& clock, core::IdSource& keys);
[[nodiscard]] std::vector<TableRow> useRows(const core::Shelf& shelf, const core::Clock& clock,
                                            core::IdSource& keys);
[[nodiscard]] std::vector<TableRow> savedRows(const core::Shelf& shelf,
                                              const core::RecordStore& records);

} // namespace headcap::app
