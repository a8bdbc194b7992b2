// What a camera wrote into a photograph's file.
#pragma once

#include <optional>

#include <QString>

#include "core/values/time.h"

namespace headcap::app::photo {

// When it was taken: EXIF DateTimeOriginal, with its offset from UTC where the camera knew one
// (EXIF 2.31), else by the local time of this place. Nothing where the file does not say.
[[nodiscard]] std::optional<core::Instant> captureTime(const QString& path);

} // namespace headcap::app::photo
