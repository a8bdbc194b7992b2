// The label of a lot, scanned or typed: alone, or into a line of the bench log.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/materials/shelf.h"

namespace headcap::core {

// A label carries its number alone, or with a sign or a word before it: "#26-014", "LOT:26-014".
[[nodiscard]] std::string_view numberOnLabel(std::string_view word);

// The lot whose label a word says; null where there is none.
[[nodiscard]] const Lot* lotOnLabel(std::string_view word, const Shelf& shelf);

// A label scanned into a line with the cursor at `at`: its number set apart by blanks. Gives the
// line and the cursor after it.
struct Dropped {
    std::string line;
    std::size_t cursor = 0;
};
[[nodiscard]] Dropped dropInto(std::string_view line, std::size_t at, const Lot& lot);

} // namespace headcap::core
