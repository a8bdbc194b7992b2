// What is kept as a choice, in the words of a report.
#pragma once

#include <string_view>

#include "core/record/any_record.h"

namespace headcap::core::report {

[[nodiscard]] std::string_view wordsFor(CollationKind kind);
[[nodiscard]] std::string_view wordsFor(CollationDecision decision);
[[nodiscard]] std::string_view wordsFor(PlatePresence presence);
[[nodiscard]] std::string_view wordsFor(Verdict verdict);
[[nodiscard]] std::string_view wordsFor(DecisionKind kind);
[[nodiscard]] std::string_view wordsFor(DecisionMeans means);
[[nodiscard]] std::string_view wordsFor(NoticeSubject subject);
[[nodiscard]] std::string_view wordsFor(NoticeMeans means);
[[nodiscard]] std::string_view wordsFor(Reversibility reversibility);
[[nodiscard]] std::string_view wordsFor(LotOrigin origin);

} // namespace headcap::core::report
