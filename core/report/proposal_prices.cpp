#include "core/report/proposal_prices.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/report/work_words.h"
#include "core/report/writing.h"
#include "core/values/decimal.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string taxName(const Proposal& proposal) {
    constexpr int kPercentPlaces = 4; // of parts per million
    return fmt::format("Tax {} %", decimalText(proposal.taxPpm, kPercentPlaces));
}

// What is done, and what goes into the book with it.
std::vector<Run> lineRuns(const JobFile& file, const ProposalLine& line) {
    const std::string what = workWords(file, line.technique, line.description, line.count);
    if (line.materials.empty()) {
        return plain(what);
    }
    return {{sentence(what) + " "}, {"With " + sentence(line.materials), Run::Style::italic}};
}

// What stands in the columns of a cost table: an empty column is left out.
struct CostColumns {
    bool hasPlace = false;
    bool hasTime = false;
    bool hasMaterials = false; // at a price of their own
    bool hasTax = false;       // by line
    [[nodiscard]] bool hasSum() const { return hasMaterials || hasTax; }
};

CostColumns columnsOf(const OptionCost& cost, const Proposal& proposal) {
    CostColumns columns{.hasTax = proposal.taxPerLine && proposal.taxPpm != 0};
    for (const LineCost& one : cost.lines) {
        columns.hasPlace = columns.hasPlace || !one.line->place.empty();
        columns.hasTime = columns.hasTime || one.line->minutes > Minutes{0};
        columns.hasMaterials = columns.hasMaterials || one.materials.has_value();
    }
    return columns;
}

// A row of the money columns, with what stands before them.
TableRow moneyRow(const CostColumns& columns, std::vector<Run> what, std::string place,
                  std::string time, const std::vector<std::string>& sums) {
    TableRow made;
    made.cells.push_back(std::move(what));
    if (columns.hasPlace) {
        made.cells.push_back(plain(std::move(place)));
    }
    if (columns.hasTime) {
        made.cells.push_back(plain(std::move(time)));
    }
    const std::vector<bool> has{true, columns.hasMaterials, columns.hasTax, columns.hasSum()};
    for (std::size_t i = 0; i < sums.size(); ++i) {
        if (has[i]) {
            made.cells.push_back(plain(sums[i]));
        }
    }
    return made;
}

// What the columns add up to, and what the whole comes to, in the last of them.
void addTotals(Table& table, const CostColumns& columns, const OptionCost& cost,
               const Proposal& proposal) {
    const auto last = [&](std::vector<Run> what, const Money& sum, bool isBold) {
        const std::string text = toText(sum);
        TableRow made = moneyRow(columns, std::move(what), "", "",
                                 columns.hasSum() ? std::vector<std::string>{"", "", "", text}
                                                  : std::vector<std::string>{text, "", "", ""});
        if (isBold) {
            made.cells.back() = bold(text);
        }
        made.kind = TableRow::Kind::total;
        table.rows.push_back(std::move(made));
    };
    for (const CostTotal& total : cost.totals) {
        if (columns.hasSum()) {
            table.rows.push_back(
                moneyRow(columns, plain("Together"), "", "",
                         {toText(total.work), toText(total.materials), toText(total.tax),
                          toText(columns.hasTax ? total.gross : total.net)}));
            table.rows.back().kind = TableRow::Kind::total;
        } else if (proposal.taxPpm != 0) {
            last(plain("Before tax"), total.net, false);
        }
        if (proposal.taxPpm == 0) {
            last(bold("In all; no tax is added"), total.gross, true);
            continue;
        }
        if (!columns.hasTax) {
            last(plain(taxName(proposal) + ", on the total"), total.tax, false);
        }
        last(
            bold(columns.hasTax ? "In all, with its tax, rounded by line" : "In all, with its tax"),
            total.gross, true);
    }
}

} // namespace

std::string money(const std::optional<Money>& sum) {
    return sum ? toText(*sum) : std::string{};
}

Table priceTable(const JobFile& file, const OptionCost& cost, const Proposal& proposal) {
    const CostColumns columns = columnsOf(cost, proposal);
    Table table{{{"What is done", 7}}, {}};
    const auto add = [&](bool isThere, std::string title, int weight, bool isRight) {
        if (isThere) {
            table.columns.push_back({std::move(title), weight, isRight});
        }
    };
    add(columns.hasPlace, "Place", 3, false);
    add(columns.hasTime, "Time", 2, true);
    add(true, columns.hasSum() ? "For the work" : "Price", 2, true);
    add(columns.hasMaterials, "For materials", 2, true);
    add(columns.hasTax, taxName(proposal), 2, true);
    add(columns.hasSum(), "In all", 2, true);
    for (const LineCost& one : cost.lines) {
        TableRow made =
            moneyRow(columns, lineRuns(file, *one.line), one.line->place,
                     one.line->minutes > Minutes{0} ? minutesText(one.line->minutes) : "",
                     {money(one.work), money(one.materials), money(one.tax),
                      money(columns.hasTax ? one.gross : one.net)});
        made.source = refOf(one.line->id);
        table.rows.push_back(std::move(made));
    }
    addTotals(table, columns, cost, proposal);
    return table;
}

} // namespace headcap::core::report
