#include "core/collation/collate.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/collation/format_name.h"
#include "core/collation/readings.h"

namespace headcap::core {
namespace {

template <class T>
void append(std::vector<T>& to, const std::vector<T>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

void takeFormatOf(CollateAnswer& answer, const CollateRequest& request, const Terms& terms) {
    answer.format = terms.format;
    if (request.format.empty()) {
        return;
    }
    const std::optional<std::string> given = formatName(request.format);
    if (!given) {
        answer.assumptions.push_back(
            {fmt::format("the format '{}' is not one the program knows", request.format),
             Ground::request});
        return;
    }
    if (!terms.format.empty() && terms.format != *given) {
        answer.assumptions.push_back({fmt::format("the format is given as {}, the formula says {}",
                                                  formatText(*given), formatText(terms.format)),
                                      Ground::request});
    }
    answer.format = *given;
}

// The statement to compare with: the one given, or the one inside the formula's own text.
std::string statementFor(const CollateRequest& request, const Terms& terms) {
    if (!request.extent.empty()) {
        return request.extent;
    }
    if (!terms.extentStated.empty()) {
        return terms.extentStated;
    }
    return terms.leavesStated ? fmt::format("{} leaves", *terms.leavesStated) : std::string();
}

void compareExtent(CollateAnswer& answer, const Terms& terms, int perhapsBlank, Extent extent,
                   std::string statement, bool assumed) {
    ExtentAnswer out;
    out.statement = std::move(statement);
    out.assumedFromExtent = assumed;
    if (extent.counted()) {
        const ExtentComparison compared = compare(answer.makeUp, perhapsBlank, extent);
        out.leafTotal = compared.extentLeaves;
        out.pageTotal = pageTotal(extent);
        out.agrees = compared.agrees && extent.problems.empty();
        out.explanation = compared.explanation;
        if (answer.leafTotal) {
            out.difference = compared.difference;
        }
        if (out.agrees) {
            answer.numbers = layNumbers(answer.leaves, extent, compared.blanksUncounted);
        }
    } else {
        out.explanation = "the extent gives no pages or leaves that could be counted";
    }
    if (terms.leavesStated && answer.leafTotal && *terms.leavesStated != *answer.leafTotal) {
        out.agrees = false;
        out.explanation += fmt::format("{}{} leaves are stated beside the formula, which has {}",
                                       out.explanation.empty() ? "" : "; ", *terms.leavesStated,
                                       *answer.leafTotal);
    }
    append(answer.assumptions, extent.assumptions);
    append(answer.problems, extent.problems);
    out.extent = std::move(extent);
    answer.extent = std::move(out);
}

void noteUnknown(CollateAnswer& answer) {
    const int unknown = tally(answer.makeUp).unknown;
    if (unknown > 0) {
        answer.assumptions.push_back(
            {fmt::format("the leaf count of {} gathering{} is not printed and stays unknown",
                         unknown, unknown == 1 ? "" : "s"),
             Ground::formula});
    }
}

} // namespace

CollateAnswer collate(const CollateRequest& request) {
    CollateAnswer answer;
    const Terms terms = readTerms(request.formula);
    takeFormatOf(answer, request, terms);
    const std::string statement = statementFor(request, terms);

    ConfirmedReading chosen{plainReading(terms), 0, {}};
    Extent extent;
    if (!statement.empty()) {
        extent = readExtent(statement);
        std::vector<int> totals;
        for (int i = 0; i < extent.readings; ++i) {
            const Extent one = i == 0 ? extent : readExtent(statement, i);
            if (one.counted() && !one.approximate) {
                totals.push_back(leafTotal(one));
            }
        }
        chosen = confirm(terms, totals);
        extent = chosen.extentReading > 0 ? readExtent(statement, chosen.extentReading) : extent;
    }
    Expansion expansion = expand(terms, chosen.reading);
    answer.makeUp = std::move(expansion.makeUp);
    answer.formula = toFormula(answer.makeUp);
    answer.leaves = leavesOf(answer.makeUp);
    answer.numbers.resize(answer.leaves.size());
    const LeafTally counted = tally(answer.makeUp);
    if (counted.complete()) {
        answer.leafTotal = counted.known;
        answer.presentTotal = counted.known - counted.lacking;
    }
    append(answer.assumptions, terms.assumptions);
    append(answer.assumptions, expansion.assumptions);
    append(answer.problems, terms.problems);
    append(answer.problems, expansion.problems);
    for (const std::string& note : chosen.notes) {
        answer.assumptions.push_back({note, Ground::extent});
    }
    noteUnknown(answer);
    if (!statement.empty()) {
        compareExtent(answer, terms, expansion.perhapsBlank, std::move(extent), statement,
                      !chosen.notes.empty());
    }
    return answer;
}

int exitStatus(const CollateAnswer& answer) {
    if (!answer.problems.empty()) {
        return 2;
    }
    return answer.extent && !answer.extent->agrees ? 1 : 0;
}

} // namespace headcap::core
