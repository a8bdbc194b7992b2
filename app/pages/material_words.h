// The materials of a job as rows, keyed by use or by facsimile: a heading for each lot with its
// origin and how it stands, and under it every use of it and every facsimile printed on it or held
// by it.
#pragma once

#include "app/form/ruled_table.h"
#include "core/materials/cutting_record.h"
#include "core/record/job_file.h"

namespace headcap::app {

[[nodiscard]] std::vector<TableRow> materialRows(const core::JobFile& file,
                                                 const core::Clock& clock);
// The pieces cut for the job, under one heading; alike ones in one row.
[[nodiscard]] std::vector<TableRow> pieceRows(const core::JobFile& file,
                                              const std::vector<core::CutPart>& pieces,
                                              const core::Clock& clock);
// The row of a use or a facsimile, or the first row of a lot or a material; nothing where it has
// none.
[[nodiscard]] std::optional<core::Uuid>
materialRow(const core::JobFile& file, const core::Clock& clock, const core::RecordRef& ref);

} // namespace headcap::app
