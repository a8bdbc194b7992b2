// What a mix was made from, as people write it: "26-001 57 g, 26-026 400 ml". Lots by the number
// on their label, parts set apart by commas or semicolons.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/materials/ledger.h"
#include "core/values/text_error.h"

namespace headcap::core {

enum class MixTextProblem { empty, lotUnknown, amountUnread };

struct MixTextError {
    MixTextProblem problem = MixTextProblem::empty;
    std::size_t at = 0; // byte of the part
    friend bool operator==(const MixTextError&, const MixTextError&) = default;
};

[[nodiscard]] tl::expected<std::vector<MixPart>, MixTextError> parseMixParts(std::string_view text,
                                                                             const Shelf& shelf);

} // namespace headcap::core
