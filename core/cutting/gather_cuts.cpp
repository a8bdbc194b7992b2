#include "core/cutting/gather_cuts.h"

#include <algorithm>
#include <functional>
#include <optional>
#include <span>

#include "core/cutting/filling_score.h"

namespace headcap::core {
namespace {

// The tree that pieces lying on a sheet came apart by, found from where they lie.
class TreeOf {
public:
    TreeOf(const SheetLayout& layout, const SheetTask& task)
        : m_placed(layout.placed), m_task(task) {}

    // Divided along this axis first, where it can be; nothing where it can't be divided at all.
    std::optional<CutTree> divided(bool sideBySideFirst) {
        m_tree = {};
        m_tree.root = part(m_placed, sideBySideFirst);
        return m_tree.root < 0 ? std::nullopt : std::optional{m_tree};
    }

private:
    [[nodiscard]] std::int64_t begin(const TaskPlaced& one, bool isAtX) const {
        return isAtX ? one.x : one.y;
    }
    [[nodiscard]] std::int64_t end(const TaskPlaced& one, bool isAtX) const {
        const SheetOption& size = m_task.options[static_cast<std::size_t>(one.option)];
        return isAtX ? one.x + size.width : one.y + size.height;
    }

    // -1: they don't come apart by straight cuts.
    int part(std::span<TaskPlaced> pieces, bool sideBySide) {
        if (pieces.size() == 1) {
            return m_tree.addPiece(pieces.front().option);
        }
        const int joined = joinedAlong(pieces, sideBySide);
        return joined >= 0 ? joined : joinedAlong(pieces, !sideBySide);
    }

    struct Group {
        int node;
        std::int64_t across; // how far it reaches the other way
    };

    // The parts between cuts that go through; empty: none goes through, or a part can't be divided.
    std::vector<Group> groupsAlong(std::span<TaskPlaced> pieces, bool sideBySide) {
        std::ranges::stable_sort(pieces, {},
                                 [&](const TaskPlaced& one) { return begin(one, sideBySide); });
        std::vector<Group> groups;
        std::size_t from = 0;
        std::int64_t reach = end(pieces.front(), sideBySide);
        for (std::size_t i = 1; i <= pieces.size(); ++i) {
            const bool isLast = i == pieces.size();
            if (!isLast && begin(pieces[i], sideBySide) < reach) {
                reach = std::max(reach, end(pieces[i], sideBySide));
                continue;
            }
            if (isLast && from == 0) {
                return {};
            }
            const std::span<TaskPlaced> group = pieces.subspan(from, i - from);
            const std::int64_t across = extent(group, !sideBySide);
            const int node = part(group, !sideBySide);
            if (node < 0) {
                return {};
            }
            groups.push_back({node, across});
            from = i;
            reach = isLast ? reach : end(pieces[i], sideBySide);
        }
        return groups;
    }

    [[nodiscard]] std::int64_t extent(std::span<const TaskPlaced> pieces, bool isAtX) const {
        std::int64_t first = begin(pieces.front(), isAtX);
        std::int64_t last = end(pieces.front(), isAtX);
        for (const TaskPlaced& one : pieces) {
            first = std::min(first, begin(one, isAtX));
            last = std::max(last, end(one, isAtX));
        }
        return last - first;
    }

    // Those that reach as far stand together, and are one part until it is trimmed.
    int joinedAlong(std::span<TaskPlaced> pieces, bool sideBySide) {
        std::vector<Group> groups = groupsAlong(pieces, sideBySide);
        std::ranges::stable_sort(groups, std::ranges::greater{}, &Group::across);
        int joined = -1;
        for (std::size_t i = 0; i < groups.size();) {
            int alike = groups[i].node;
            std::size_t next = i + 1;
            for (; next < groups.size() && groups[next].across == groups[i].across; ++next) {
                alike = m_tree.addJoin(sideBySide, alike, groups[next].node);
            }
            joined = joined < 0 ? alike : m_tree.addJoin(sideBySide, joined, alike);
            i = next;
        }
        return joined;
    }

    std::vector<TaskPlaced> m_placed;
    const SheetTask& m_task;
    CutTree m_tree;
};

} // namespace

void gatherCuts(const CutProblem& problem, const StockTasks& tasks, Filling& filling) {
    for (FilledSheet& filled : filling) {
        if (filled.layout.placed.size() < 2) {
            continue;
        }
        SheetTask task = tasks.sheets[filled.sheet].task;
        task.most = placedIn(tasks, {filled});
        for (const bool sideBySideFirst : {true, false}) {
            const auto tree = TreeOf{filled.layout, task}.divided(sideBySideFirst);
            if (!tree || !isAllowed(*tree, task)) {
                continue;
            }
            SheetLayout gathered = layOut(*tree, task);
            if (gathered.cuts.size() < filled.layout.cuts.size() &&
                offcutScore(problem, gathered) >= offcutScore(problem, filled.layout)) {
                filled.layout = std::move(gathered);
            }
        }
    }
}

} // namespace headcap::core
