// Quotation marks and apostrophes as they are printed: what is typed with the straight signs of a
// keyboard is set with the curled ones of a text face.
#pragma once

#include <string>
#include <string_view>

namespace headcap::core {

// Each sign for one sign: "can't" with an apostrophe, "the \"Sea-Atlas\"" in double quotation
// marks, 8" and 6' as inches and feet with their primes. What is curled already stays.
[[nodiscard]] std::string typographic(std::string_view utf8);

} // namespace headcap::core
