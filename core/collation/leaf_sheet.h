// The leaf-by-leaf sheet of work: which leaves are to be mended, washed, guarded, and what is done.
// Each line of it is a piece of work with the set of its leaves; here it is turned round, a leaf
// with its work, and counted.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/collation/leaf_places.h"
#include "core/collation/walk_record.h"

namespace headcap::core {

struct LeafWork {
    std::size_t task = 0; // index among the tasks
    bool isDone = false;
    friend bool operator==(const LeafWork&, const LeafWork&) = default;
};

struct SheetLeaf {
    std::size_t leaf = 0;        // index in the book
    std::vector<LeafWork> works; // in the order of the tasks
};

struct TaskCount {
    int leaves = 0;
    int done = 0;
    bool isPlaced = true;       // its leaves can be read, and are in the book
    bool doneElsewhere = false; // leaves are said to be done that it does not name
};

struct LeafSheet {
    std::vector<SheetLeaf> leaves; // those with work, in the order of the book
    std::vector<TaskCount> counts; // one a task
};

[[nodiscard]] LeafSheet sheetOf(const LaidBook& book, const std::vector<LeafTask>& tasks);

// The task's `done` once these leaves are done, or not: the shortest set that says so.
[[nodiscard]] std::string doneWith(const LaidBook& book, const LeafTask& task,
                                   const std::vector<std::size_t>& leaves, bool isDone);

// Of a task, what is still to do.
[[nodiscard]] std::vector<std::size_t> toDo(const LaidBook& book, const LeafTask& task);
// From `leaf` on, those of its gathering that are still to do.
[[nodiscard]] std::vector<std::size_t> toDoOfGathering(const LaidBook& book, const LeafTask& task,
                                                       std::size_t leaf);
// "5 of 8 leaves done; to do: C1–C3"; empty where its leaves are not in the book.
[[nodiscard]] std::string progressText(const LaidBook& book, const LeafTask& task);

} // namespace headcap::core
