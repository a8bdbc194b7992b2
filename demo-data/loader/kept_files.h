// The files that the demo's records name: photographs and papers, made and kept before a record
// may name them.
#pragma once

#include <cstdint>
#include <string>

#include "core/values/digest.h"

namespace headcap::demo {

struct KeptFile {
    core::Digest digest{};
    std::string fileName{};
    std::string mediaType{};
    std::int64_t bytes = 0;
    std::int64_t widthPx = 0; // of a picture, upright
    std::int64_t heightPx = 0;
};

class KeptFiles {
public:
    virtual ~KeptFiles() = default;
    // Of the file with that scope, by the name its data give. Throws DataError.
    virtual KeptFile picture(const std::string& scope, const std::string& name) = 0;
    virtual KeptFile paper(const std::string& scope, const std::string& name) = 0;
};

} // namespace headcap::demo
