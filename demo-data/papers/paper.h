// Letters that came to the workshop or left it: plain text, or a PDF of one page in the letter
// face every reader of PDF has.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace headcap::demo {

[[nodiscard]] std::vector<std::byte> textFile(std::string_view text);
// Latin letters only; a line a line of the page.
[[nodiscard]] std::vector<std::byte> letterPdf(std::string_view text);

} // namespace headcap::demo
