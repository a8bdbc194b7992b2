// One sheet and the rectangles that may come out of it, stripped to what the search needs. Lengths
// are whole ticks, every one with the kerf already added (the sheet's too), so that rectangles may
// touch. A type of piece has one rectangle for each way it may lie.
#pragma once

#include <cstdint>
#include <vector>

namespace headcap::core {

struct SheetOption {
    int type = 0;
    std::int64_t width = 0, height = 0;
};

struct SheetTask {
    std::int64_t width = 0, height = 0;
    std::vector<SheetOption> options;
    std::vector<int> most;           // by type
    std::vector<std::int64_t> value; // by type, above nothing
    std::int64_t leastSlack = 0;     // what is cut off beside a piece is nothing, or at least this
};

// A way to take the sheet apart: joined upward, from pieces to the whole.
struct CutTree {
    struct Node {
        int option = -1;           // of a piece; -1 where two parts are joined
        bool isSideBySide = false; // joined along x, else along y
        int first = -1, second = -1;
    };
    std::vector<Node> nodes; // parts stand before what they are joined into
    int root = -1;           // -1: nothing is cut

    int addPiece(int option) {
        nodes.push_back({option, false, -1, -1});
        return static_cast<int>(nodes.size()) - 1;
    }
    int addJoin(bool sideBySide, int first, int second) {
        nodes.push_back({-1, sideBySide, first, second});
        return static_cast<int>(nodes.size()) - 1;
    }
};

struct TaskRect {
    std::int64_t x = 0, y = 0, width = 0, height = 0;
};
struct TaskPlaced {
    int option = 0;
    std::int64_t x = 0, y = 0;
};
struct TaskCut {
    bool isAtX = false; // at constant x, running along y
    std::int64_t at = 0, from = 0, to = 0;
};

// The sheet taken apart downward: the cuts in their order, and what is free at the end.
struct SheetLayout {
    std::vector<TaskPlaced> placed;
    std::vector<TaskCut> cuts;
    std::vector<TaskRect> free;
};

// How many of each type a tree holds; types are those of the task.
[[nodiscard]] std::vector<int> countsOf(const CutTree& tree, const SheetTask& task);

[[nodiscard]] std::int64_t valueOf(const std::vector<int>& counts, const SheetTask& task);

// Whether the tree fits the sheet with every strip cut off wide enough, and within what is wanted.
[[nodiscard]] bool isAllowed(const CutTree& tree, const SheetTask& task);

// Lays an allowed tree out from the corner.
[[nodiscard]] SheetLayout layOut(const CutTree& tree, const SheetTask& task);

} // namespace headcap::core
