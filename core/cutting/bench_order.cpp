#include "core/cutting/bench_order.h"

#include <algorithm>
#include <optional>
#include <tuple>
#include <utility>

#include "core/cutting/sheet_parts.h"

namespace headcap::core {

namespace {

// Beyond it nobody cuts by hand, and the parts would be nested too deep.
constexpr std::size_t kMostCuts = 2'000;

class Gatherer {
public:
    static void gather(SheetPart& part) {
        for (SheetPart& one : part.parts) {
            gather(one);
        }
        flatten(part);
        arrange(part);
        joinFree(part);
        while (trimOneRun(part) || partOneRow(part)) {
            if (part.parts.size() == 1) {
                part = SheetPart{std::move(part.parts.front())};
            }
        }
    }

private:
    // How far what is used of it reaches across the row, how deep its first part is, and how wide
    // it is: alike ones are to stand together, what is free at the end.
    static auto likenessOf(const SheetPart& one, bool isAtX) {
        const bool across = !isAtX;
        const auto line = trimOf(one);
        const std::int64_t used =
            line ? *line - beginOf(one.rect, across) : sizeOf(one.rect, across);
        const std::int64_t first = one.isDivided() ? sizeOf(one.parts.front().rect, across) : used;
        return std::tuple(one.isFree(), -used, -first, -sizeOf(one.rect, isAtX));
    }

    static void arrange(SheetPart& part) {
        std::ranges::stable_sort(part.parts, {},
                                 [&](const SheetPart& one) { return likenessOf(one, part.isAtX); });
        std::int64_t at = beginOf(part.rect, part.isAtX);
        for (SheetPart& one : part.parts) {
            move(one, part.isAtX, at - beginOf(one.rect, part.isAtX));
            at = endOf(one.rect, part.isAtX);
        }
    }

    // They stand at the end.
    static void joinFree(SheetPart& part) {
        while (part.parts.size() > 1 && part.parts.back().isFree() &&
               part.parts[part.parts.size() - 2].isFree()) {
            const std::int64_t end = endOf(part.parts.back().rect, part.isAtX);
            part.parts.pop_back();
            TaskRect& rect = part.parts.back().rect;
            rect = between(rect, part.isAtX, beginOf(rect, part.isAtX), end);
        }
        if (part.parts.size() == 1) {
            part = SheetPart{std::move(part.parts.front())};
        }
    }

    // The line at which something free is trimmed off its end.
    static std::optional<std::int64_t> trimOf(const SheetPart& part) {
        return part.isDivided() && part.parts.back().isFree()
                   ? std::optional{beginOf(part.parts.back().rect, part.isAtX)}
                   : std::nullopt;
    }
    // The line of its first cut.
    static std::optional<std::int64_t> firstLineOf(const SheetPart& part) {
        return part.isDivided() ? std::optional{endOf(part.parts.front().rect, part.isAtX)}
                                : std::nullopt;
    }

    using LineOf = std::optional<std::int64_t> (*)(const SheetPart&);

    // The end of the neighbours from there on that are cut at the same line.
    static std::size_t endOfRun(const SheetPart& part, std::size_t from, LineOf lineOf) {
        const auto line = lineOf(part.parts[from]);
        std::size_t end = from + 1;
        while (line && end < part.parts.size() && lineOf(part.parts[end]) == line) {
            ++end;
        }
        return line ? end : from;
    }

    // Neighbours that are trimmed at one line are trimmed before they are cut apart.
    static bool trimOneRun(SheetPart& part) {
        for (std::size_t i = 0; i < part.parts.size(); ++i) {
            const std::size_t end = endOfRun(part, i, trimOf);
            if (end >= i + 2) {
                put(part, i, end, cutThrough(part, i, end, *trimOf(part.parts[i]), true));
                return true;
            }
        }
        return false;
    }

    // Neighbours that are cut at one line come apart as two rows, where that takes fewer cuts.
    static bool partOneRow(SheetPart& part) {
        for (std::size_t i = 0; i < part.parts.size(); ++i) {
            const std::size_t end = endOfRun(part, i, firstLineOf);
            if (end < i + 2) {
                continue;
            }
            std::size_t before = end - i - 1;
            for (std::size_t k = i; k < end; ++k) {
                before += cutsOf(part.parts[k]);
            }
            SheetPart made = cutThrough(part, i, end, *firstLineOf(part.parts[i]), false);
            if (cutsOf(made) < before) {
                put(part, i, end, std::move(made));
                return true;
            }
        }
        return false;
    }

    static void put(SheetPart& part, std::size_t from, std::size_t to, SheetPart made) {
        const auto first = part.parts.begin() + static_cast<std::ptrdiff_t>(from);
        *first = std::move(made);
        part.parts.erase(first + 1, part.parts.begin() + static_cast<std::ptrdiff_t>(to));
    }

    // The neighbours cut through at a line that all of them have: two rows, one behind the other.
    static SheetPart cutThrough(const SheetPart& part, std::size_t from, std::size_t to,
                                std::int64_t line, bool isTrim) {
        const bool across = !part.isAtX;
        const TaskRect rect =
            between(part.rect, part.isAtX, beginOf(part.parts[from].rect, part.isAtX),
                    endOf(part.parts[to - 1].rect, part.isAtX));
        SheetPart near{between(rect, across, beginOf(rect, across), line)};
        SheetPart far{between(rect, across, line, endOf(rect, across))};
        near.isAtX = part.isAtX;
        far.isAtX = part.isAtX;
        for (std::size_t i = from; i < to; ++i) {
            const SheetPart& one = part.parts[i];
            const auto middle = isTrim ? one.parts.end() - 1 : one.parts.begin() + 1;
            near.parts.push_back(side(one, near.rect, across, {one.parts.begin(), middle}));
            if (!isTrim) {
                far.parts.push_back(side(one, far.rect, across, {middle, one.parts.end()}));
            }
        }
        gather(near);
        gather(far);
        SheetPart made{rect};
        made.isAtX = across;
        made.parts.push_back(std::move(near));
        made.parts.push_back(std::move(far));
        flatten(made);
        return made;
    }

    static SheetPart side(const SheetPart& one, const TaskRect& row, bool across,
                          std::vector<SheetPart> parts) {
        if (parts.size() == 1) {
            return std::move(parts.front());
        }
        SheetPart made{between(one.rect, across, beginOf(row, across), endOf(row, across))};
        made.isAtX = across;
        made.parts = std::move(parts);
        return made;
    }
};

} // namespace

void setInBenchOrder(SheetLayout& layout, const SheetTask& task) {
    if (layout.placed.empty() || layout.cuts.size() > kMostCuts) {
        return;
    }
    SheetPart whole = partsOf(layout, task);
    // What was brought together may stand beside its like now.
    for (std::size_t cuts = cutsOf(whole) + 1; cutsOf(whole) < cuts;) {
        cuts = cutsOf(whole);
        Gatherer::gather(whole);
    }
    layout = layoutOf(whole);
}

} // namespace headcap::core
