// Roman numerals as printers and scribes set them: "MDCXII", "M. DC. XV.", "xiij", the apostrophus
// "CIƆ IƆ CX", "MDXXCV" with its XXC for 80, the multiplied "iiij c" and "iiij xx".
// Forms after the tables of Jacobi, Spofford and Wheatley.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace headcap::core {

// The number; nothing where the letters make none. Spaces and points are of no account.
[[nodiscard]] std::optional<std::int64_t> romanNumber(std::string_view utf8);

} // namespace headcap::core
