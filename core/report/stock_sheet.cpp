#include "core/report/stock_sheet.h"

#include "core/materials/material_kinds.h"
#include "core/materials/stock_report.h"
#include "core/report/writing.h"
#include "core/values/english.h"
#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

using report::row;

std::string standing(const StockLine& line) {
    if (!line.goodUntil) {
        return {};
    }
    return (line.age == LotAge::overdue ? "past its date, " : "good until ") +
           dayText(*line.goodUntil);
}

std::string sizeText(const Lot& lot) {
    return lot.sheetWidth && lot.sheetHeight
               ? toText(*lot.sheetWidth) + " by " + toText(*lot.sheetHeight)
               : std::string{};
}

} // namespace

Document stockSheet(const Shelf& shelf, Day day, const std::string& workshop, const Clock& clock) {
    Document document{.title = "Stock",
                      .subtitle = "at the end of " + dayText(day),
                      .date = clock.today(),
                      .isDraft = false};
    document.author = workshop;
    document.letterhead.name = workshop;
    const auto lines = stockOn(shelf, day, clock);
    if (lines.empty()) {
        document.sections.push_back({.key = "stock",
                                     .title = "Stock",
                                     .blocks = {Statement{"There was nothing on the shelf."}}});
    }
    for (const StockLine& line : lines) {
        const std::string kind = capitalised(wordsFor(line.kind->kind));
        if (document.sections.empty() || document.sections.back().title != kind) {
            document.sections.push_back({.key = "stock",
                                         .title = kind,
                                         .blocks = {Table{.columns = {{"Lot", 2},
                                                                      {"What it is", 5},
                                                                      {"Sheet", 3},
                                                                      {"Kept at", 3},
                                                                      {"Stands", 4},
                                                                      {"Left", 2, true}}}}});
        }
        auto& table = std::get<Table>(document.sections.back().blocks.front());
        table.rows.push_back(row({line.lot->number, line.kind->name, sizeText(*line.lot),
                                  line.lot->keptAt, standing(line), toText(line.balance)},
                                 refOf(line.lot->id)));
    }
    return document;
}

} // namespace headcap::core
