// What a place that is typed comes to in the book of the job, for the line under its field: its
// other forms, or that there is no such place. Nothing is refused: it is kept as typed.
#pragma once

#include <functional>
#include <optional>

#include <QString>

#include "core/collation/place_words.h"
#include "core/record/job_file.h"

namespace headcap::app {

// For FieldRow::understood. Null: no file yet.
[[nodiscard]] std::function<QString(const QString&)>
placeInBook(std::function<const core::JobFile*()> file);
// Of a page that keeps its file so.
[[nodiscard]] std::function<QString(const QString&)>
placeInBook(const std::optional<core::JobFile>& file);

[[nodiscard]] QString placeWords(const std::optional<core::PlaceReading>& reading);

} // namespace headcap::app
