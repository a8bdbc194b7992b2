#include "core/report/stock_sheet.h"

#include "core/materials/material_kinds.h"
#include "core/materials/stock_report.h"
#include "core/report/writing.h"
#include "core/values/amount_words.h"
#include "core/values/decimal.h"
#include "core/values/english.h"
#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

using report::addOr;
using report::row;

std::string until(const StockLine& line) {
    if (!line.goodUntil) {
        return {};
    }
    return (line.age == LotAge::overdue ? "past it: " : "") + dayText(*line.goodUntil);
}

// "560 × 760 mm, grain along 760": what one looks for in the drawer.
std::string sheetText(const Lot& lot) {
    if (!lot.sheetWidth || !lot.sheetHeight) {
        return {};
    }
    const auto mm = [](Length length) {
        return decimalText((length.count() + 50'000) / 100'000, 1);
    };
    const std::string grain = lot.grain == Grain::none ? "no grain"
                              : lot.grain == Grain::alongWidth
                                  ? "grain along " + mm(*lot.sheetWidth)
                                  : "grain along " + mm(*lot.sheetHeight);
    return mm(*lot.sheetWidth) + "\u00a0×\u00a0" + mm(*lot.sheetHeight) + "\u00a0mm, " + grain;
}

// With its caution, which must be read at the shelf.
std::string nameText(const Material& kind) {
    return report::told({kind.name, kind.caution});
}

} // namespace

Document stockSheet(const Shelf& shelf, Day day, const std::string& workshop, const Clock& clock) {
    Document document{.title = "Stock",
                      .subtitle = "as of " + dayText(day),
                      .date = clock.today(),
                      .isDraft = false};
    document.letterhead.name = workshop;
    Section section{.key = "stock", .title = "On the shelf"};
    Table table{.columns = {{"Lot", 2},
                            {"What it is", 9},
                            {"Sheet", 5},
                            {"Kept at", 5},
                            {"Good until", 5},
                            {"Left", 3, true}}};
    const Material* last = nullptr;
    for (const StockLine& line : stockOn(shelf, day, clock)) {
        if (last == nullptr || last->kind != line.kind->kind) {
            table.rows.push_back(report::group(capitalised(wordsFor(line.kind->kind))));
        }
        last = line.kind;
        table.rows.push_back(
            row({line.lot->number, nameText(*line.kind), sheetText(*line.lot), line.lot->keptAt,
                 until(line), aboutWords(line.balance, pieceName(line.kind->kind))},
                refOf(line.lot->id)));
    }
    addOr(section, std::move(table), "There was nothing on the shelf.");
    document.sections.push_back(std::move(section));
    return document;
}

} // namespace headcap::core
