#include "core/collation/compare.h"

#include <algorithm>
#include <cstdlib>
#include <map>

#include <fmt/format.h>

namespace headcap::core {
namespace {

std::string leaves(int count) {
    return fmt::format("{} {}", count, count == 1 ? "leaf" : "leaves");
}

// The size most gatherings have.
int commonSize(const MakeUp& makeUp) {
    std::map<int, int> sizes;
    int best = 0;
    for (const Gathering& gathering : makeUp.gatherings) {
        const int times = ++sizes[gathering.called];
        best = gathering.called > 0 && times >= sizes[best] ? gathering.called : best;
    }
    return best;
}

// What the gatherings of unknown size would come to.
int withEight(const MakeUp& makeUp) {
    int sum = 0;
    for (Gathering gathering : makeUp.gatherings) {
        if (gathering.called == 0) {
            gathering.called = 8;
            sum += idealLeaves(gathering).value_or(0);
        }
    }
    return sum;
}

bool passesV(const MakeUp& makeUp) {
    return std::any_of(makeUp.gatherings.begin(), makeUp.gatherings.end(),
                       [](const Gathering& one) {
                           return one.signature.base == "X" || one.signature.base == "x";
                       });
}

std::string cause(const MakeUp& makeUp, const ExtentComparison& c, int perhapsBlank,
                  const Extent& extent) {
    const int gap = std::abs(c.difference);
    const bool shorter = c.difference < 0;
    if (perhapsBlank > 0 && c.difference == perhapsBlank) {
        return fmt::format(
            "the extent seems to count the {} that the formula takes out as perhaps blank",
            leaves(perhapsBlank));
    }
    if (pageTotal(extent) == c.formulaLeaves && c.formulaLeaves > 1) {
        return "the extent's pages are as many as the formula's leaves: it seems to count one side "
               "of "
               "each leaf";
    }
    if (c.extentLeaves == 2 * c.formulaLeaves) {
        return "the extent has twice the leaves: it seems to count pages as leaves, or the formula "
               "covers half of the work";
    }
    const int size = commonSize(makeUp);
    if (size > 2 && gap == size && !shorter && passesV(makeUp)) {
        return fmt::format("they are a whole gathering of {} apart: a gathering signed W that the "
                           "formula does not "
                           "list, or a number out by one gathering",
                           size);
    }
    if (size > 2 && gap == size) {
        return fmt::format(
            "they are a whole gathering of {} apart: a signature or a number may be out "
            "by one gathering",
            size);
    }
    if (gap == 1) {
        return shorter ? "a blank leaf may have been left out of the extent"
                       : "a leaf may be missing from the formula, or a blank page counted";
    }
    if (gap == 2 && shorter) {
        return "blank leaves may have been left out of the extent";
    }
    if (gap * 2 % 100 == 0 || gap * 2 % 90 == 0) {
        return fmt::format("the page numbers may be out by {}, a printer's slip in the numbering",
                           gap * 2);
    }
    if (size > 2 && gap % size == 0) {
        return fmt::format("they are {} gatherings of {} apart", gap / size, size);
    }
    return "no likely cause is seen";
}

} // namespace

ExtentComparison compare(const MakeUp& makeUp, int perhapsBlank, const Extent& extent) {
    const LeafTally counted = tally(makeUp);
    ExtentComparison out;
    out.formulaLeaves = counted.known;
    out.extentLeaves = leafTotal(extent);
    out.difference = out.extentLeaves - out.formulaLeaves;
    if (!counted.complete()) {
        out.explanation = fmt::format(
            "the leaf count of {} {} is not printed, and the extent's {} confirm no one reading; "
            "with 8 in each the formula would have {}",
            counted.unknown, counted.unknown == 1 ? "gathering" : "gatherings",
            leaves(out.extentLeaves), leaves(counted.known + withEight(makeUp)));
        return out;
    }
    if (out.difference == 0) {
        out.agrees = true;
        return out;
    }
    const std::string figures = fmt::format("the formula has {}, the extent {}",
                                            leaves(out.formulaLeaves), leaves(out.extentLeaves));
    if (out.difference < 0 && -out.difference <= counted.blank) {
        out.agrees = true;
        out.blanksUncounted = -out.difference == counted.blank;
        out.explanation =
            out.blanksUncounted
                ? fmt::format("{}: the extent leaves out the {} said to be blank", figures,
                              leaves(counted.blank))
                : fmt::format("{}: the extent leaves out {} of the {} said to be blank", figures,
                              -out.difference, leaves(counted.blank));
        return out;
    }
    if ((extent.atLeast && out.difference < 0) || (makeUp.continues && out.difference > 0)) {
        out.agrees = true;
        out.explanation = figures + ": a fragment, its figure is a lower bound";
        return out;
    }
    out.explanation = figures + ": " + cause(makeUp, out, perhapsBlank, extent);
    if (extent.approximate) {
        out.explanation += "; the extent is approximate";
    }
    return out;
}

} // namespace headcap::core
