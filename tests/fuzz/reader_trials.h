// Every reader of the program over any bytes: no crash, no hang, and what was read prints to
// something that reads back the same.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace headcap::fuzz {

struct Reader {
    const char* name;
    std::span<const char* const> seeds; // what people write
    void (*read)(std::string_view bytes);
};

[[nodiscard]] std::span<const Reader> readers();

// Says what is wrong and ends the program, so that any fuzzer sees it.
[[noreturn]] void wrong(std::string_view what, std::string_view bytes);

} // namespace headcap::fuzz
