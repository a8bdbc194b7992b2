// A moment as people write it in a log: "14:10" is today, "5 March 14:10" another day. Local time.
#pragma once

#include <optional>

#include <QString>

#include "core/values/time.h"

namespace headcap::app {

[[nodiscard]] QString momentText(core::Instant at, const core::Clock& clock);
[[nodiscard]] std::optional<core::Instant> readMoment(const QString& text,
                                                      const core::Clock& clock);

} // namespace headcap::app
