#include "core/report/leaf_sheet_paper.h"

#include <algorithm>

#include "core/collation/job_places.h"
#include "core/collation/leaf_sheet.h"
#include "core/report/hazard_words.h"
#include "core/report/letterhead.h"
#include "core/report/writing.h"
#include "core/treatment/techniques.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

using namespace report;

constexpr std::size_t kWorksAcross = 4; // more would leave no room for a tick
constexpr std::string_view kToDo = "□";
constexpr std::string_view kDone = "✓";

std::string nameOf(const LeafTask& task, const TechniquesInForce& techniques) {
    return task.technique.empty() ? "Work" : techniques.nameOf(task.technique);
}

// Of so many tasks, from `first` on, as fit across.
Table tableOf(const LaidBook& book, const std::vector<LeafTask>& tasks, std::size_t first,
              const TechniquesInForce& techniques) {
    const std::size_t end = std::min(first + kWorksAcross, tasks.size());
    Table table{.columns = {{"Leaf", 2}}};
    for (std::size_t at = first; at < end; ++at) {
        table.columns.push_back({nameOf(tasks[at], techniques), 3});
    }
    table.columns.push_back({"Seen", 5});
    const std::vector<LeafTask> some(tasks.begin() + static_cast<std::ptrdiff_t>(first),
                                     tasks.begin() + static_cast<std::ptrdiff_t>(end));
    for (const SheetLeaf& leaf : sheetOf(book, some).leaves) {
        TableRow row;
        row.cells.push_back(plain(toText(toLeafSet(book, {leaf.leaf}))));
        for (std::size_t at = 0; at < some.size(); ++at) {
            const auto work = std::ranges::find(leaf.works, at, &LeafWork::task);
            row.cells.push_back(plain(work == leaf.works.end() ? std::string{}
                                      : work->isDone           ? std::string{kDone}
                                                               : std::string{kToDo}));
        }
        row.cells.push_back({});
        table.rows.push_back(std::move(row));
    }
    return table;
}

List tasksOf(const LaidBook& book, const std::vector<LeafTask>& tasks,
             const TechniquesInForce& techniques) {
    List list;
    for (const LeafTask& task : tasks) {
        const std::string progress = progressText(book, task);
        list.items.push_back(
            {plain(sentence(
                 told({nameOf(task, techniques) + ": " +
                           (progress.empty() ? task.leaves + ", not found in this book" : progress),
                       task.note}))),
             refOf(task.id)});
    }
    return list;
}

Section sheetOfVolume(const VolumeBook& volume, const std::vector<LeafTask>& tasks,
                      const TechniquesInForce& techniques) {
    Section section{.key = "leaf_sheet",
                    .title = volume.label.empty() ? "Leaf by leaf" : capitalised(volume.label)};
    section.blocks.emplace_back(tasksOf(volume.book, tasks, techniques));
    for (std::size_t first = 0; first < tasks.size(); first += kWorksAcross) {
        if (Table table = tableOf(volume.book, tasks, first, techniques); !table.rows.empty()) {
            section.blocks.emplace_back(std::move(table));
        }
    }
    return section;
}

} // namespace

Document leafSheetPaper(const JobFile& file, const Clock& clock) {
    Document document{.title = "Work on the leaves",
                      .subtitle = headingOf(file.item),
                      .jobNumber = file.job.number,
                      .date = clock.today(),
                      .isDraft = false,
                      .letterhead = letterheadOf(file)};
    Section hazards{.key = "hazards", .title = "Mind"};
    addHazards(hazards, file, HazardReader::bench);
    if (!hazards.blocks.empty()) {
        document.sections.push_back(std::move(hazards));
    }
    const std::size_t before = document.sections.size();
    for (const VolumeBook& volume : booksOf(file)) {
        std::vector<LeafTask> tasks;
        std::ranges::copy_if(file.leafTasks, std::back_inserter(tasks),
                             [&](const LeafTask& task) { return task.part == volume.part; });
        if (!tasks.empty()) {
            document.sections.push_back(sheetOfVolume(volume, tasks, file.techniques));
        }
    }
    if (document.sections.size() == before) {
        document.sections.push_back(
            {.key = "leaf_sheet",
             .title = "Leaf by leaf",
             .blocks = {Statement{booksOf(file).empty()
                                      ? "The make-up of the book is not known."
                                      : "No work on single leaves is planned for it."}}});
    }
    return document;
}

} // namespace headcap::core
