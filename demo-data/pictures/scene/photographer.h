// Photographs of the demo's books, as their files describe them: what is shown, before or after
// treatment, how it lies on the table and how the camera was held.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "demo-data/loader/moment.h"

namespace headcap::demo {

struct Photographed {
    std::vector<std::byte> jpeg;
    int width = 0; // upright
    int height = 0;
};

// `drawn` is the file's description of its leaves, bindings and pictures. Throws DataError.
[[nodiscard]] Photographed photographed(const Json& drawn, const std::string& scope,
                                        const std::string& name, const std::string& takenAt,
                                        double scale);

} // namespace headcap::demo
