// Letters of scribes and printers that ICU leaves as they are: what a person types for each.
// From the names of the characters in Unicode (Latin Extended-D, MUFI's proposals) and the usual
// resolution of each mark of abbreviation; where a mark has several, the letter it is cut from.
#pragma once

#include <string_view>

namespace headcap::core {

// What is typed for a letter that case folding has passed; empty where the table has none.
[[nodiscard]] std::string_view printersLetter(char32_t letter);

} // namespace headcap::core
