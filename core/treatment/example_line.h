// An example of how a line of this job's log may be said, from what the job itself has: an
// approved line that nothing has carried out yet, its place, a lot on the shelf. Nothing that does
// not exist.
#pragma once

#include <string>

#include "core/materials/shelf.h"

namespace headcap::core {

// "mended SR 11 with paste 31-006 0.4 g 20 min"
[[nodiscard]] std::string exampleLine(const JobFile& file, const Shelf& shelf);

} // namespace headcap::core
