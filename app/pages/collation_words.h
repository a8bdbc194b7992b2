// What the collation page says of a reading, a finding and a supplied leaf.
#pragma once

#include <algorithm>
#include <iterator>
#include <optional>
#include <vector>

#include <QString>

#include "app/form/choices.h"
#include "app/form/ruled_list.h"
#include "core/collation/collate.h"
#include "core/record/job_file.h"

namespace headcap::app {

class Session;

// Those of the records that are of one volume.
template <class Record>
[[nodiscard]] std::vector<Record> ofVolume(const std::vector<Record>& records,
                                           const std::optional<core::Id<core::Item>>& volume) {
    std::vector<Record> found;
    std::ranges::copy_if(records, std::back_inserter(found),
                         [&](const Record& record) { return record.part == volume; });
    return found;
}

// "83 leaves called for · 81 present · extent agrees".
[[nodiscard]] QString tallyWords(const core::CollateAnswer& answer,
                                 const core::Collation& collation);
// What could not be read, what was assumed, where formula and extent differ: a sentence a line.
[[nodiscard]] QString remarksOf(const core::CollateAnswer& answer);

// What is typed so far comes to, for the line under the field.
[[nodiscard]] QString formulaUnderstood(const QString& typed);

[[nodiscard]] RowWords describeFinding(const core::CollationFinding& finding);
[[nodiscard]] RowWords describeFacsimile(const core::Facsimile& leaf);

// The steps of the file that is shown, by day and description.
[[nodiscard]] Choices stepsOf(const Session& session, const std::optional<core::JobFile>& file);

} // namespace headcap::app
