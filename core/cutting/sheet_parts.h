// A sheet as its cuts divide it: parts within parts, each divided by parallel cuts.
#pragma once

#include <vector>

#include "core/cutting/sheet_task.h"

namespace headcap::core {

// Whole, a piece or free; or divided by parallel cuts into parts that are whole or divided the
// other way.
struct SheetPart {
    TaskRect rect;
    int option = -1;    // of a piece
    bool isAtX = false; // divided at constant x
    std::vector<SheetPart> parts{};

    [[nodiscard]] bool isDivided() const { return !parts.empty(); }
    [[nodiscard]] bool isFree() const { return !isDivided() && option < 0; }
};

[[nodiscard]] inline std::int64_t beginOf(const TaskRect& rect, bool isAtX) {
    return isAtX ? rect.x : rect.y;
}
[[nodiscard]] inline std::int64_t sizeOf(const TaskRect& rect, bool isAtX) {
    return isAtX ? rect.width : rect.height;
}
[[nodiscard]] inline std::int64_t endOf(const TaskRect& rect, bool isAtX) {
    return beginOf(rect, isAtX) + sizeOf(rect, isAtX);
}
[[nodiscard]] TaskRect between(TaskRect rect, bool isAtX, std::int64_t from, std::int64_t to);

// Puts parts that are divided the same way as their parent into its row.
void flatten(SheetPart& part);
void move(SheetPart& part, bool isAtX, std::int64_t by);
[[nodiscard]] std::size_t cutsOf(const SheetPart& part);

[[nodiscard]] SheetPart partsOf(const SheetLayout& layout, const SheetTask& task);
// Parallel cuts of one part first, then its parts in their order.
[[nodiscard]] SheetLayout layoutOf(const SheetPart& whole);

} // namespace headcap::core
