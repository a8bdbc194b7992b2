// Builds the demo workshop: an invented bindery with its people, owners, books, lots and jobs,
// from the readable data beside this file, and photographs drawn for it. Two builds give the same
// workshop but for keys and times, which count from the day it is built.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

#include "core/record/workshops.h"

namespace headcap::demo {

struct DemoWishes {
    // Of the photographs' width and height; under 1 for tests, which look at the records.
    double photographScale = 1;
    // Issues the report of a job whose work has passed, on the day the story tells of it; left out
    // where nothing can issue one.
    std::function<void(const core::Stores&, const core::Clock&, const core::Id<core::Job>&,
                       const core::Id<core::Person>&)>
        issueReport{};
};

// In a folder that is missing or empty; the number of the finished job whose report is shown
// first. Throws core::StoreError where the workshop can't be made.
std::string buildDemo(core::Workshops& workshops, const core::Clock& clock,
                      const std::filesystem::path& folder, const DemoWishes& wishes = {});

} // namespace headcap::demo
