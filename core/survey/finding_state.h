// How a finding stands, in words: how severe it is, whether it goes on, whether the book may be
// handled. What nobody has said is not said for them.
#pragma once

#include <cstdint>
#include <string>

#include "core/survey/finding.h"

namespace headcap::core {

// Of Finding::severity: with it nothing is said of the handling either, where that is "yes".
inline constexpr std::int64_t kSeverityNotSaid = -1;

[[nodiscard]] bool isJudged(const Finding& finding);

// "moderate, stable, may be handled"; "how severe, and whether it may be handled, is not said".
[[nodiscard]] std::string stateWords(const Finding& finding);

} // namespace headcap::core
