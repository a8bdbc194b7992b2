// Kinds of record as people call them, for the sentences that name one or count them.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/record_kind.h"

namespace headcap::core {

// "step", "follow-up", "line of the proposal".
[[nodiscard]] std::string_view nounOf(RecordKind kind);

// "a step", "an issued report".
[[nodiscard]] std::string oneOf(RecordKind kind);

// So many records of a kind.
struct KindCount {
    RecordKind kind;
    std::int64_t count = 0;
};

// "1 finding and 2 steps".
[[nodiscard]] std::string countsText(const std::vector<KindCount>& counts);

} // namespace headcap::core
