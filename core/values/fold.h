// Text folded for finding: the letters a person types find the letters that are printed. Case,
// accents, ligatures, long s, ß, ø, œ, þ and superscripts are levelled (ICU NFKC_Casefold, then
// Latin-ASCII). The same fold is used for what is indexed and for what is asked.
#pragma once

#include <string>
#include <string_view>

namespace headcap::core {

[[nodiscard]] std::string foldForSearch(std::string_view utf8);

} // namespace headcap::core
