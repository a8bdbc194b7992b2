// The vocabularies built into the program, as JSON. They are ours and tested: a file that does not
// parse, or lacks a member its reader asks for, is a broken contract.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>

namespace headcap::core::vocabulary {

[[nodiscard]] nlohmann::json file(std::string_view name);

// A member that must be there.
[[nodiscard]] const nlohmann::json& member(const nlohmann::json& object, std::string_view name);
[[nodiscard]] std::string text(const nlohmann::json& object, std::string_view name);

// Members that may be left out: nothing, zero, false.
[[nodiscard]] std::string textOr(const nlohmann::json& object, std::string_view name);
[[nodiscard]] std::int64_t numberOr(const nlohmann::json& object, std::string_view name);
[[nodiscard]] bool flag(const nlohmann::json& object, std::string_view name);
[[nodiscard]] std::vector<std::string> texts(const nlohmann::json& object, std::string_view name);

[[noreturn]] void unknownName(std::string_view name);

// The place of a kept name in an enumeration's names.
template <class Enum, class Names>
Enum named(const Names& names, std::string_view name) {
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == name) {
            return static_cast<Enum>(i);
        }
    }
    unknownName(name);
}

} // namespace headcap::core::vocabulary
