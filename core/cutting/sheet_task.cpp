#include "core/cutting/sheet_task.h"

#include <algorithm>

namespace headcap::core {

namespace {

struct Size {
    std::int64_t width = 0, height = 0;
};

// The narrowest strip that two parts can be cut out of: what is cut off beside either is nothing
// or wide enough.
std::int64_t meet(std::int64_t a, std::int64_t b, std::int64_t leastSlack) {
    const std::int64_t difference = a < b ? b - a : a - b;
    const std::int64_t larger = std::max(a, b);
    return difference == 0 || difference >= leastSlack ? larger : larger + leastSlack;
}

std::vector<Size> sizesOf(const CutTree& tree, const SheetTask& task) {
    std::vector<Size> sizes(tree.nodes.size());
    for (std::size_t i = 0; i < tree.nodes.size(); ++i) {
        const CutTree::Node& node = tree.nodes[i];
        if (node.option >= 0) {
            const SheetOption& option = task.options[static_cast<std::size_t>(node.option)];
            sizes[i] = {option.width, option.height};
            continue;
        }
        const Size a = sizes[static_cast<std::size_t>(node.first)];
        const Size b = sizes[static_cast<std::size_t>(node.second)];
        sizes[i] = node.isSideBySide
                       ? Size{a.width + b.width, meet(a.height, b.height, task.leastSlack)}
                       : Size{meet(a.width, b.width, task.leastSlack), a.height + b.height};
    }
    return sizes;
}

bool isSlackAllowed(std::int64_t slack, std::int64_t least) {
    return slack == 0 || slack >= least;
}

class Layer {
public:
    Layer(const CutTree& tree, const SheetTask& task)
        : m_tree(tree), m_sizes(sizesOf(tree, task)) {}

    void lay(int index, TaskRect room) {
        const Size size = m_sizes[static_cast<std::size_t>(index)];
        const std::int64_t right = room.width - size.width;
        const std::int64_t below = room.height - size.height;
        // The first cut decides which remainder gets the corner: give it to the larger.
        const bool rightFirst = right * room.height >= below * room.width;
        if (rightFirst) {
            cutOffRight(room, size.width);
            cutOffBelow(room, size.height);
        } else {
            cutOffBelow(room, size.height);
            cutOffRight(room, size.width);
        }
        const CutTree::Node& node = m_tree.nodes[static_cast<std::size_t>(index)];
        if (node.option >= 0) {
            m_layout.placed.push_back({node.option, room.x, room.y});
            return;
        }
        const Size first = m_sizes[static_cast<std::size_t>(node.first)];
        TaskRect a = room, b = room;
        if (node.isSideBySide) {
            a.width = first.width;
            b.x += first.width;
            b.width -= first.width;
            m_layout.cuts.push_back({true, b.x, room.y, room.y + room.height});
        } else {
            a.height = first.height;
            b.y += first.height;
            b.height -= first.height;
            m_layout.cuts.push_back({false, b.y, room.x, room.x + room.width});
        }
        lay(node.first, a);
        lay(node.second, b);
    }

    SheetLayout take() { return std::move(m_layout); }

private:
    void cutOffRight(TaskRect& room, std::int64_t width) {
        if (room.width == width) {
            return;
        }
        m_layout.cuts.push_back({true, room.x + width, room.y, room.y + room.height});
        m_layout.free.push_back({room.x + width, room.y, room.width - width, room.height});
        room.width = width;
    }
    void cutOffBelow(TaskRect& room, std::int64_t height) {
        if (room.height == height) {
            return;
        }
        m_layout.cuts.push_back({false, room.y + height, room.x, room.x + room.width});
        m_layout.free.push_back({room.x, room.y + height, room.width, room.height - height});
        room.height = height;
    }

    const CutTree& m_tree;
    std::vector<Size> m_sizes;
    SheetLayout m_layout;
};

} // namespace

std::vector<int> countsOf(const CutTree& tree, const SheetTask& task) {
    std::vector<int> counts(task.most.size());
    for (const CutTree::Node& node : tree.nodes) {
        if (node.option >= 0) {
            const int type = task.options[static_cast<std::size_t>(node.option)].type;
            ++counts[static_cast<std::size_t>(type)];
        }
    }
    return counts;
}

std::int64_t valueOf(const std::vector<int>& counts, const SheetTask& task) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        sum += counts[i] * task.value[i];
    }
    return sum;
}

bool isAllowed(const CutTree& tree, const SheetTask& task) {
    if (tree.root < 0) {
        return true;
    }
    const std::vector<int> counts = countsOf(tree, task);
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] > task.most[i]) {
            return false;
        }
    }
    const Size whole = sizesOf(tree, task)[static_cast<std::size_t>(tree.root)];
    return whole.width <= task.width && whole.height <= task.height &&
           isSlackAllowed(task.width - whole.width, task.leastSlack) &&
           isSlackAllowed(task.height - whole.height, task.leastSlack);
}

SheetLayout layOut(const CutTree& tree, const SheetTask& task) {
    if (tree.root < 0) {
        return {};
    }
    Layer layer(tree, task);
    layer.lay(tree.root, {0, 0, task.width, task.height});
    return layer.take();
}

} // namespace headcap::core
