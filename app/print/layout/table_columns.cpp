#include "app/print/layout/table_columns.h"

#include <algorithm>
#include <numeric>

#include "app/print/layout/set_text.h"
#include "app/print/layout/types.h"

namespace headcap::app::print {

namespace {

constexpr double kBetween = 12;
constexpr double kUnbroken = 10'000;
constexpr double kShortText = 80; // what is no longer than this is not broken: a date, a name

double leastWidth(const core::Table& table, std::size_t column) {
    double least = longestWord({core::Run{table.columns[column].title}}, kColumnHead);
    for (const core::TableRow& row : table.rows) {
        if (row.kind != core::TableRow::Kind::group && column < row.cells.size()) {
            const double whole = setText(row.cells[column], kTable, kUnbroken).widest();
            least = std::max(least,
                             whole <= kShortText ? whole : longestWord(row.cells[column], kTable));
        }
    }
    return least + 0.5;
}

} // namespace

std::vector<double> shareWidth(const std::vector<double>& weights, const std::vector<double>& least,
                               double width) {
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::vector<double> widths;
    double lack = 0;
    double spare = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        widths.push_back(width * weights[i] / sum);
        lack += std::max(0.0, least[i] - widths[i]);
        spare += std::max(0.0, widths[i] - least[i]);
    }
    if (lack <= 0 || spare <= 0) {
        return widths;
    }
    // Where there is not enough for all, those that lack get an even part of it.
    const double given = std::min(1.0, spare / lack);
    const double taken = std::min(1.0, lack / spare);
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const double over = widths[i] - least[i];
        widths[i] -= over * (over < 0 ? given : taken);
    }
    return widths;
}

std::vector<ColumnPlace> placeColumns(const core::Table& table, double width) {
    std::vector<double> weights;
    std::vector<double> least;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        weights.push_back(std::max(1, table.columns[i].weight));
        least.push_back(leastWidth(table, i));
    }
    const double room = width - kBetween * static_cast<double>(weights.size() - 1);
    std::vector<ColumnPlace> places;
    double left = 0;
    for (const double share : shareWidth(weights, least, room)) {
        places.push_back({left, share});
        left += share + kBetween;
    }
    return places;
}

} // namespace headcap::app::print
