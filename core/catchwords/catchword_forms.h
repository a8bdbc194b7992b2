// Catchwords and page beginnings that are no plain words: a note's mark, a formula, a passage left
// out by the transcriber.
#pragma once

#include <string_view>

namespace headcap::core {

// As in "(b) Auf" or "c) Es": the catchword of the notes at the foot.
[[nodiscard]] bool isNoteMark(std::string_view catchword);
// What the transcriber did not spell out stands in square brackets: [formula].
[[nodiscard]] bool beginsUnspelt(std::string_view text);
[[nodiscard]] bool looksLikeFormula(std::string_view text);

} // namespace headcap::core
