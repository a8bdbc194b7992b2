// Builds the demo workshop: an invented bindery with its people, owners, books, lots and jobs,
// from the readable data beside this file, and photographs drawn for it. Two builds give the same
// workshop but for keys and times, which count from the day it is built.
#pragma once

#include <filesystem>
#include <string>

#include "core/record/workshops.h"

namespace headcap::demo {

// In a folder that is missing or empty; the number of the finished job whose report is shown
// first. Throws core::StoreError where the workshop can't be made.
std::string buildDemo(core::Workshops& workshops, const core::Clock& clock,
                      const std::filesystem::path& folder);

} // namespace headcap::demo
