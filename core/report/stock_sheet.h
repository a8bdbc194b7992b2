// The stock on a day as a sheet: every lot of which there was something, by kind, with what was
// left of it, where it lies and until when it is good.
#pragma once

#include <string>

#include "core/materials/shelf.h"
#include "core/report/document.h"

namespace headcap::core {

[[nodiscard]] Document stockSheet(const Shelf& shelf, Day day, const std::string& workshop,
                                  const Clock& clock);

} // namespace headcap::core
