#include "core/collation/leaf_sheet.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/collation/finding_places.h"
#include "core/collation/leaf_expectation.h"
#include "core/values/english.h"

namespace headcap::core {

LeafSheet sheetOf(const LaidBook& book, const std::vector<LeafTask>& tasks) {
    LeafSheet sheet;
    std::vector<std::vector<LeafWork>> works(book.leaves.size());
    for (std::size_t at = 0; at < tasks.size(); ++at) {
        const auto leaves = leavesAt(book, tasks[at].leaves);
        const auto done = leavesAt(book, tasks[at].done);
        TaskCount count{.leaves = static_cast<int>(leaves.size()), .isPlaced = !leaves.empty()};
        for (const std::size_t leaf : leaves) {
            const bool isDone = std::ranges::binary_search(done, leaf);
            count.done += isDone ? 1 : 0;
            works[leaf].push_back({at, isDone});
        }
        count.doneElsewhere = std::ranges::any_of(
            done, [&](std::size_t leaf) { return !std::ranges::binary_search(leaves, leaf); });
        sheet.counts.push_back(count);
    }
    for (std::size_t leaf = 0; leaf < works.size(); ++leaf) {
        if (!works[leaf].empty()) {
            sheet.leaves.push_back({leaf, std::move(works[leaf])});
        }
    }
    return sheet;
}

std::string doneWith(const LaidBook& book, const LeafTask& task,
                     const std::vector<std::size_t>& leaves, bool isDone) {
    auto done = leavesAt(book, task.done);
    for (const std::size_t leaf : leaves) {
        std::erase(done, leaf);
        if (isDone) {
            done.push_back(leaf);
        }
    }
    return done.empty() ? std::string{} : toText(toLeafSet(book, std::move(done)));
}

std::vector<std::size_t> toDo(const LaidBook& book, const LeafTask& task) {
    auto leaves = leavesAt(book, task.leaves);
    const auto done = leavesAt(book, task.done);
    std::erase_if(leaves, [&](std::size_t leaf) { return std::ranges::binary_search(done, leaf); });
    return leaves;
}

std::vector<std::size_t> toDoOfGathering(const LaidBook& book, const LeafTask& task,
                                         std::size_t leaf) {
    auto leaves = toDo(book, task);
    const std::size_t last = lastOfGathering(book, leaf);
    std::erase_if(leaves, [&](std::size_t one) { return one < leaf || one > last; });
    return leaves;
}

std::string progressText(const LaidBook& book, const LeafTask& task) {
    const auto leaves = leavesAt(book, task.leaves);
    if (leaves.empty()) {
        return {};
    }
    const auto open = toDo(book, task);
    const std::string all = counted(leaves.size(), "leaf", "leaves");
    if (open.empty()) {
        return all + " done";
    }
    return fmt::format("{} of {} done; to do: {}", leaves.size() - open.size(), all,
                       toText(toLeafSet(book, open)));
}

} // namespace headcap::core
