#include <algorithm>
#include <iterator>
#include <numeric>
#include <utility>

#include "app/print/layout/blocks.h"
#include "app/print/layout/page_setup.h"
#include "app/print/layout/row_slabs.h"
#include "app/print/layout/table_columns.h"
#include "app/print/layout/types.h"
#include "core/report/sign_line.h"

namespace headcap::app::print {

namespace {

// A row of the log may run to many lines; up to this many it is never parted.
const RowStyle kTableRow{kTable.leading, 3.5, 3.5, 8, 3};
const RowStyle kGroupRow{kTable.leading, 9, 3, 12, 3};
constexpr double kHeadPad = 3;

Mark acrossRule(double y, double width, Ink ink) {
    return Rule{{0, y}, {kBlockWidth, y}, width, ink};
}

Align alignOf(const core::TableColumn& column) {
    return column.alignRight ? Align::right : Align::left;
}

// Titles stand on the rule below them.
Slab headSlab(const core::Table& table, const std::vector<ColumnPlace>& places) {
    std::vector<SetText> titles;
    double highest = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        titles.push_back(setText(fromUtf8(table.columns[i].title), kColumnHead, places[i].width,
                                 alignOf(table.columns[i])));
        highest = std::max(highest, titles.back().height());
    }
    Slab slab;
    slab.height = highest + 2 * kHeadPad;
    slab.keepWithNext = true;
    slab.clearsSide = true;
    slab.marks.push_back(acrossRule(0, 0.6, Ink::text));
    slab.marks.push_back(acrossRule(slab.height, kHair, Ink::rule));
    for (std::size_t i = 0; i < titles.size(); ++i) {
        const double y = kHeadPad + highest - titles[i].height();
        for (const TextLine& line : titles[i].lines) {
            slab.marks.push_back(moved(line, {places[i].left, y}));
        }
    }
    return slab;
}

// A stroke through every line of a row that is kept but no longer said.
void strike(std::vector<Slab>& slabs) {
    for (Slab& slab : slabs) {
        std::vector<Mark> strokes;
        for (Mark& mark : slab.marks) {
            if (auto* line = std::get_if<TextLine>(&mark); line != nullptr && line->width > 0) {
                line->ink = Ink::quiet;
                const double y = line->at.y() - line->ascent * 0.36;
                strokes.emplace_back(
                    Rule{{line->at.x(), y}, {line->at.x() + line->width, y}, 0.5, Ink::text});
            }
        }
        std::move(strokes.begin(), strokes.end(), std::back_inserter(slab.marks));
    }
}

// Words at the left and what the rows below come to at the right, across all columns.
std::vector<Slab> groupRow(Flow& flow, const core::TableRow& row) {
    const auto set = [&](std::size_t at, double width, Align align) {
        SetText text =
            row.cells.size() > at ? setText(row.cells[at], kTable, width, align) : SetText{};
        noteSigns(flow, text.signsWithoutFace);
        return text;
    };
    SetText sum = set(1, kBlockWidth / 3, Align::right);
    std::vector<Slab> slabs = rowSlabs({{0, set(0, kBlockWidth * 2 / 3 - kHeadPad, Align::left)},
                                        {kBlockWidth * 2 / 3, std::move(sum)}},
                                       kGroupRow);
    slabs.back().marks.push_back(acrossRule(slabs.back().height, kHair, Ink::faint));
    for (Slab& slab : slabs) {
        slab.keepWithNext = true;
    }
    return slabs;
}

bool isBlank(const std::vector<core::Run>& cell) {
    return core::plainText(cell) == core::report::kSignLine;
}

bool hasBlank(const core::TableRow& row) {
    return std::ranges::any_of(row.cells, isBlank);
}

// Something is written into the row by hand: it is as high as a line that is signed, its words
// stand on the ruled line.
Slab signRow(Flow& flow, const core::Table& table, const core::TableRow& row,
             const std::vector<ColumnPlace>& places) {
    std::vector<std::pair<double, SetText>> texts;
    double highest = 0;
    for (std::size_t i = 0; i < std::min(row.cells.size(), places.size()); ++i) {
        SetText text = isBlank(row.cells[i]) ? SetText{}
                                             : setText(row.cells[i], kTable, places[i].width,
                                                       alignOf(table.columns[i]));
        noteSigns(flow, text.signsWithoutFace);
        highest = std::max(highest, text.height());
        texts.emplace_back(places[i].left, std::move(text));
    }
    Slab slab;
    slab.height = std::max(kSignHeight, highest + 2 * kTableRow.padBelow);
    const double foot = slab.height - kTableRow.padBelow;
    for (const auto& [left, text] : texts) {
        for (const TextLine& line : text.lines) {
            slab.marks.push_back(moved(line, {left, foot - text.height()}));
        }
    }
    slab.marks.push_back(acrossRule(slab.height, kHair, Ink::faint));
    for (std::size_t i = 0; i < std::min(row.cells.size(), places.size()); ++i) {
        if (isBlank(row.cells[i])) {
            const double right = places[i].left + places[i].width;
            slab.marks.push_back(
                Rule{{places[i].left, slab.height}, {right, slab.height}, kHair, Ink::text});
        }
    }
    return slab;
}

std::vector<Slab> bodyRow(Flow& flow, const core::Table& table, const core::TableRow& row,
                          const std::vector<ColumnPlace>& places, bool beginsTotals) {
    if (hasBlank(row)) {
        return {signRow(flow, table, row, places)};
    }
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < std::min(row.cells.size(), places.size()); ++i) {
        SetText text = setText(row.cells[i], kTable, places[i].width, alignOf(table.columns[i]));
        noteSigns(flow, text.signsWithoutFace);
        cells.push_back({places[i].left, std::move(text)});
    }
    std::vector<Slab> slabs = rowSlabs(cells, kTableRow);
    if (row.struck) {
        strike(slabs);
    }
    if (beginsTotals) {
        slabs.front().marks.push_back(acrossRule(0, 0.6, Ink::text));
    }
    slabs.back().marks.push_back(acrossRule(slabs.back().height, kHair, Ink::faint));
    return slabs;
}

bool isTotal(const core::Table& table, std::size_t row) {
    return row < table.rows.size() && table.rows[row].kind == core::TableRow::Kind::total;
}

} // namespace

void addBlock(Flow& flow, const core::Table& table, double gap) {
    if (table.columns.empty()) {
        return;
    }
    const std::vector<ColumnPlace> places = placeColumns(table, kBlockWidth);
    const std::size_t head = flow.heads.size();
    flow.heads.push_back(headSlab(table, places));
    append(flow, {flow.heads[head]}, gap);
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const bool isGroup = table.rows[i].kind == core::TableRow::Kind::group;
        std::vector<Slab> slabs =
            isGroup ? groupRow(flow, table.rows[i])
                    : bodyRow(flow, table, table.rows[i], places,
                              isTotal(table, i) && i > 0 && !isTotal(table, i - 1));
        for (Slab& slab : slabs) {
            slab.head = head;
        }
        // Why an entry is struck stands under it.
        if (table.rows[i].struck) {
            slabs.back().keepWithNext = true;
        }
        // A single low row at the foot or the head of a page looks lost.
        const bool isLow = slabs.size() == 1 && slabs.front().height < 4 * kTable.leading;
        if (isLow && table.rows.size() > 1 && (i == 0 || i + 2 == table.rows.size())) {
            slabs.back().keepWithNext = true;
        }
        // Nor does a sum stand on a page without what it adds up.
        if (isTotal(table, i + 1)) {
            slabs.back().keepWithNext = true;
        }
        append(flow, std::move(slabs), 0, false);
    }
}

} // namespace headcap::app::print
