// A text file built into the program: a vocabulary, a migration.
#pragma once

#include <string_view>

namespace headcap {

struct EmbeddedFile {
    std::string_view name; // without its folder
    std::string_view text;
};

} // namespace headcap
