// A file read back before it is kept for good.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <QString>

#include "core/values/digest.h"

namespace headcap::app {

// Its bytes, where the whole of it can be read and is what was written.
[[nodiscard]] std::optional<std::vector<std::byte>> bytesAsWritten(const QString& path,
                                                                   const core::Digest& digest);

} // namespace headcap::app
