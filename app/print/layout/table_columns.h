// How wide the columns of a table are: shares by weight, but none narrower than its longest word
// while another has room to give.
#pragma once

#include <vector>

#include "core/report/document.h"

namespace headcap::app::print {

struct ColumnPlace {
    double left = 0;
    double width = 0;
};

[[nodiscard]] std::vector<ColumnPlace> placeColumns(const core::Table& table, double width);

// The widths themselves: shares by weight, raised to their least width at the cost of the others.
[[nodiscard]] std::vector<double> shareWidth(const std::vector<double>& weights,
                                             const std::vector<double>& least, double width);

} // namespace headcap::app::print
