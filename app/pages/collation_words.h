// What the collation page says of a reading, a finding and a supplied leaf.
#pragma once

#include <optional>

#include <QString>

#include "app/form/record_form.h"
#include "app/form/ruled_list.h"
#include "core/collation/collate.h"
#include "core/record/job_file.h"

namespace headcap::app {

class Session;

// "83 leaves called for · 81 present · extent agrees".
[[nodiscard]] QString tallyWords(const core::CollateAnswer& answer,
                                 const core::Collation& collation);
// What could not be read, what was assumed, where formula and extent differ: a sentence a line.
[[nodiscard]] QString remarksOf(const core::CollateAnswer& answer);

[[nodiscard]] RowWords describeFinding(const core::CollationFinding& finding);
[[nodiscard]] RowWords describeFacsimile(const core::Facsimile& leaf);

// The steps of the file that is shown, by day and description.
[[nodiscard]] Choices stepsOf(const Session& session, const std::optional<core::JobFile>& file);

} // namespace headcap::app
