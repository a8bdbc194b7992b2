// Whether two texts that say where in a book may mean a leaf in common: "K5" and "K4–K6", "pl. 7"
// and "plate 7". What can't be settled without the book's make-up ("A1–C4" and "B2") counts as in
// common; what can't be read as leaves is compared word for word.
#pragma once

#include <string>

namespace headcap::core {

[[nodiscard]] bool mayShareLeaves(const std::string& a, const std::string& b);

} // namespace headcap::core
