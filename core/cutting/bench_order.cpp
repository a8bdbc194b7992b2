#include "core/cutting/bench_order.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

namespace headcap::core {

namespace {

// Beyond it nobody cuts by hand, and the parts would be nested too deep.
constexpr std::size_t kMostCuts = 2'000;

// A part of the sheet: whole, or divided by parallel cuts into parts that are whole or divided the
// other way.
struct Part {
    TaskRect rect;
    bool isFree = false; // whole, and no piece
    bool isAtX = false;  // divided at constant x
    std::vector<Part> parts{};

    [[nodiscard]] bool isDivided() const { return !parts.empty(); }
};

std::int64_t beginOf(const TaskRect& rect, bool isAtX) {
    return isAtX ? rect.x : rect.y;
}
std::int64_t sizeOf(const TaskRect& rect, bool isAtX) {
    return isAtX ? rect.width : rect.height;
}
std::int64_t endOf(const TaskRect& rect, bool isAtX) {
    return beginOf(rect, isAtX) + sizeOf(rect, isAtX);
}

TaskRect between(TaskRect rect, bool isAtX, std::int64_t from, std::int64_t to) {
    (isAtX ? rect.x : rect.y) = from;
    (isAtX ? rect.width : rect.height) = to - from;
    return rect;
}

TaskRect around(const TaskRect& first, const TaskRect& last, bool isAtX) {
    return between(first, isAtX, beginOf(first, isAtX), endOf(last, isAtX));
}

bool liesIn(const TaskCut& cut, const TaskRect& rect) {
    return cut.at > beginOf(rect, cut.isAtX) && cut.at < endOf(rect, cut.isAtX) &&
           cut.from >= beginOf(rect, !cut.isAtX) && cut.to <= endOf(rect, !cut.isAtX);
}

// Puts the parts that are divided the same way into the row of their parent.
void flatten(Part& part) {
    std::vector<Part> row;
    for (Part& one : part.parts) {
        if (one.isDivided() && one.isAtX == part.isAtX) {
            std::ranges::move(one.parts, std::back_inserter(row));
        } else {
            row.push_back(std::move(one));
        }
    }
    part.parts = std::move(row);
}

void divide(Part& whole, const TaskCut& cut) {
    Part* part = &whole;
    while (part->isDivided()) {
        part = &*std::ranges::find_if(part->parts,
                                      [&](const Part& one) { return liesIn(cut, one.rect); });
    }
    part->isAtX = cut.isAtX;
    part->parts = {Part{between(part->rect, cut.isAtX, beginOf(part->rect, cut.isAtX), cut.at)},
                   Part{between(part->rect, cut.isAtX, cut.at, endOf(part->rect, cut.isAtX))}};
}

void settle(Part& part, const std::set<std::pair<std::int64_t, std::int64_t>>& pieces) {
    part.isFree = !part.isDivided() && !pieces.contains({part.rect.x, part.rect.y});
    for (Part& one : part.parts) {
        settle(one, pieces);
    }
    flatten(part);
}

Part partsOf(const SheetLayout& layout, const SheetTask& task) {
    Part whole{{0, 0, task.width, task.height}};
    for (const TaskCut& cut : layout.cuts) {
        divide(whole, cut);
    }
    std::set<std::pair<std::int64_t, std::int64_t>> pieces;
    for (const TaskPlaced& placed : layout.placed) {
        pieces.insert({placed.x, placed.y});
    }
    settle(whole, pieces);
    return whole;
}

class Gatherer {
public:
    static void gather(Part& part) {
        for (Part& one : part.parts) {
            gather(one);
        }
        flatten(part);
        joinFree(part);
        for (const bool atEnd : {true, false}) {
            while (trimOneRun(part, atEnd)) {
                if (part.parts.size() == 1) {
                    part = Part{std::move(part.parts.front())};
                }
            }
        }
    }

private:
    static void joinFree(Part& part) {
        std::vector<Part> row;
        for (Part& one : part.parts) {
            if (one.isFree && !row.empty() && row.back().isFree) {
                row.back().rect = around(row.back().rect, one.rect, part.isAtX);
            } else {
                row.push_back(std::move(one));
            }
        }
        part.parts = std::move(row);
        if (part.parts.size() == 1) {
            part = Part{std::move(part.parts.front())};
        }
    }

    // The line at which something free is trimmed off a part's end or beginning.
    static std::optional<std::int64_t> trimOf(const Part& part, bool atEnd) {
        if (!part.isDivided()) {
            return std::nullopt;
        }
        const Part& trimmed = atEnd ? part.parts.back() : part.parts.front();
        if (!trimmed.isFree) {
            return std::nullopt;
        }
        return atEnd ? beginOf(trimmed.rect, part.isAtX) : endOf(trimmed.rect, part.isAtX);
    }

    static bool trimOneRun(Part& part, bool atEnd) {
        for (std::size_t i = 0; i + 1 < part.parts.size(); ++i) {
            const auto line = trimOf(part.parts[i], atEnd);
            std::size_t end = i + 1;
            while (line && end < part.parts.size() && trimOf(part.parts[end], atEnd) == line) {
                ++end;
            }
            if (end - i >= 2) {
                trim(part, i, end, *line, atEnd);
                return true;
            }
        }
        return false;
    }

    static void trim(Part& part, std::size_t from, std::size_t to, std::int64_t line, bool atEnd) {
        const bool across = !part.isAtX;
        const auto first = part.parts.begin() + static_cast<std::ptrdiff_t>(from);
        const auto last = part.parts.begin() + static_cast<std::ptrdiff_t>(to);
        const TaskRect rect = around(first->rect, (last - 1)->rect, part.isAtX);
        const auto side = [&](bool isSecond) {
            return isSecond ? between(rect, across, line, endOf(rect, across))
                            : between(rect, across, beginOf(rect, across), line);
        };
        Part kept{side(!atEnd), false, part.isAtX};
        Part free{side(atEnd), true};
        for (auto one = first; one != last; ++one) {
            one->parts.erase(atEnd ? one->parts.end() - 1 : one->parts.begin());
            one->rect =
                between(one->rect, across, beginOf(kept.rect, across), endOf(kept.rect, across));
            kept.parts.push_back(one->parts.size() == 1 ? Part{std::move(one->parts.front())}
                                                        : std::move(*one));
        }
        gather(kept);
        Part made{rect, false, across};
        made.parts.push_back(std::move(kept));
        made.parts.push_back(std::move(free));
        if (!atEnd) {
            std::swap(made.parts[0], made.parts[1]);
        }
        flatten(made);
        *first = std::move(made);
        part.parts.erase(first + 1, last);
    }
};

void write(const Part& part, SheetLayout& layout) {
    if (part.isFree) {
        layout.free.push_back(part.rect);
    }
    for (std::size_t i = 1; i < part.parts.size(); ++i) {
        layout.cuts.push_back({part.isAtX, beginOf(part.parts[i].rect, part.isAtX),
                               beginOf(part.rect, !part.isAtX), endOf(part.rect, !part.isAtX)});
    }
    for (const Part& one : part.parts) {
        write(one, layout);
    }
}

} // namespace

void setInBenchOrder(SheetLayout& layout, const SheetTask& task) {
    if (layout.placed.empty() || layout.cuts.size() > kMostCuts) {
        return;
    }
    Part whole = partsOf(layout, task);
    Gatherer::gather(whole);
    layout.cuts.clear();
    layout.free.clear();
    write(whole, layout);
}

} // namespace headcap::core
