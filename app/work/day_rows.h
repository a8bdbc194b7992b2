// The rows of a day's work, as its view shows them.
#pragma once

#include <vector>

#include "app/form/ruled_table.h"
#include "core/report/day_sheet.h"

namespace headcap::app {

[[nodiscard]] std::vector<TableRow> stepRows(const core::DayOfWork& day,
                                             const core::TechniquesInForce& techniques);
[[nodiscard]] std::vector<TableRow> sumRows(const core::DayOfWork& day, core::IdSource& ids);
[[nodiscard]] std::vector<TableRow> settingRows(const core::DayOfWork& day,
                                                const core::Clock& clock);
[[nodiscard]] std::vector<TableRow> hourRows(const core::DayOfWork& day, core::IdSource& ids);

} // namespace headcap::app
