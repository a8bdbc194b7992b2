#include "core/cutting/sheet_parts.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

namespace headcap::core {

namespace {

using Pieces = std::map<std::pair<std::int64_t, std::int64_t>, int>; // by their corner

bool liesIn(const TaskCut& cut, const TaskRect& rect) {
    return cut.at > beginOf(rect, cut.isAtX) && cut.at < endOf(rect, cut.isAtX) &&
           cut.from >= beginOf(rect, !cut.isAtX) && cut.to <= endOf(rect, !cut.isAtX);
}

void divide(SheetPart& whole, const TaskCut& cut) {
    SheetPart* part = &whole;
    while (part->isDivided()) {
        part = &*std::ranges::find_if(part->parts,
                                      [&](const SheetPart& one) { return liesIn(cut, one.rect); });
    }
    const TaskRect rect = part->rect;
    part->isAtX = cut.isAtX;
    part->parts = {{between(rect, cut.isAtX, beginOf(rect, cut.isAtX), cut.at)},
                   {between(rect, cut.isAtX, cut.at, endOf(rect, cut.isAtX))}};
}

void settle(SheetPart& part, const Pieces& pieces) {
    if (!part.isDivided()) {
        const auto at = pieces.find({part.rect.x, part.rect.y});
        part.option = at == pieces.end() ? -1 : at->second;
    }
    for (SheetPart& one : part.parts) {
        settle(one, pieces);
    }
    flatten(part);
}

void write(const SheetPart& part, SheetLayout& layout) {
    if (part.isFree()) {
        layout.free.push_back(part.rect);
    } else if (!part.isDivided()) {
        layout.placed.push_back({part.option, part.rect.x, part.rect.y});
    }
    for (std::size_t i = 1; i < part.parts.size(); ++i) {
        layout.cuts.push_back({part.isAtX, beginOf(part.parts[i].rect, part.isAtX),
                               beginOf(part.rect, !part.isAtX), endOf(part.rect, !part.isAtX)});
    }
    for (const SheetPart& one : part.parts) {
        write(one, layout);
    }
}

} // namespace

TaskRect between(TaskRect rect, bool isAtX, std::int64_t from, std::int64_t to) {
    (isAtX ? rect.x : rect.y) = from;
    (isAtX ? rect.width : rect.height) = to - from;
    return rect;
}

void flatten(SheetPart& part) {
    std::vector<SheetPart> row;
    for (SheetPart& one : part.parts) {
        if (one.isDivided() && one.isAtX == part.isAtX) {
            std::ranges::move(one.parts, std::back_inserter(row));
        } else {
            row.push_back(std::move(one));
        }
    }
    part.parts = std::move(row);
}

void move(SheetPart& part, bool isAtX, std::int64_t by) {
    (isAtX ? part.rect.x : part.rect.y) += by;
    for (SheetPart& one : part.parts) {
        move(one, isAtX, by);
    }
}

std::size_t cutsOf(const SheetPart& part) {
    std::size_t cuts = part.isDivided() ? part.parts.size() - 1 : 0;
    for (const SheetPart& one : part.parts) {
        cuts += cutsOf(one);
    }
    return cuts;
}

SheetPart partsOf(const SheetLayout& layout, const SheetTask& task) {
    SheetPart whole{{0, 0, task.width, task.height}};
    for (const TaskCut& cut : layout.cuts) {
        divide(whole, cut);
    }
    Pieces pieces;
    for (const TaskPlaced& placed : layout.placed) {
        pieces[{placed.x, placed.y}] = placed.option;
    }
    settle(whole, pieces);
    return whole;
}

SheetLayout layoutOf(const SheetPart& whole) {
    SheetLayout layout;
    write(whole, layout);
    return layout;
}

} // namespace headcap::core
