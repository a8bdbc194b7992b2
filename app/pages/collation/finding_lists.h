// The findings of a volume and the leaves supplied to it.
#pragma once

#include "app/pages/collation/volume_lists.h"
#include "core/record/job_file.h"

namespace headcap::app {

using FindingList = RecordList<core::CollationFinding>;
[[nodiscard]] FindingList* makeFindingList(Session& session, PageEdits& edits,
                                           const BookOfVolume& book);

using FacsimileList = RecordList<core::Facsimile>;
// `file`: that of the page, for the steps a leaf can be put in by.
[[nodiscard]] FacsimileList* makeFacsimileList(Session& session, PageEdits& edits,
                                               const BookOfVolume& book,
                                               const std::optional<core::JobFile>& file);

} // namespace headcap::app
