// The lists of a volume on the collation page: the plates it calls for, and the leaf-by-leaf sheet
// of work. Places are turned into their other forms as they are typed, and checked against the
// volume's make-up.
#pragma once

#include "app/form/record_list.h"
#include "core/collation/leaf_places.h"
#include "core/collation/walk_record.h"

namespace headcap::core {
// Beside its type, where forms look for the words of a choice.
[[nodiscard]] QString words(PlatePresence presence);
} // namespace headcap::core

namespace headcap::app {

// The leaves of the volume that is shown; the list asks it each time.
using BookOfVolume = std::function<const core::LaidBook&()>;

using PlateList = RecordList<core::CalledPlate>;
[[nodiscard]] PlateList* makePlateList(Session& session, PageEdits& edits,
                                       const BookOfVolume& book);

using TaskList = RecordList<core::LeafTask>;
[[nodiscard]] TaskList* makeTaskList(Session& session, PageEdits& edits, const BookOfVolume& book);

// What a place comes to in the book, under its field: "K5 · pp. 149–150", or why it is not there.
[[nodiscard]] std::function<QString(const QString&)> placeUnderstood(const BookOfVolume& book);

// "12 of 16 leaves done".
[[nodiscard]] RowWords describeTask(const core::LeafTask& task, const core::LaidBook& book,
                                    const std::vector<Choice>& techniques);

} // namespace headcap::app
