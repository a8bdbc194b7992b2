// A page's or leaf's number as printed: 12, (12), fol. 12, xij. In square brackets it was supplied
// by whoever made the table, not printed, and is no evidence; a correction in brackets behind the
// number, 136[134], is passed over. What is no number is nothing.
#pragma once

#include <optional>
#include <string_view>

namespace headcap::core {

enum class PrintedNumerals { arabic, roman };

struct NumberOnPage {
    int value = 0;
    PrintedNumerals style = PrintedNumerals::arabic;
    bool supplied = false;

    friend bool operator==(const NumberOnPage&, const NumberOnPage&) = default;
};

[[nodiscard]] std::optional<NumberOnPage> readNumberOnPage(std::string_view text);

// i, ij, iiij, iv, jv, xij and so on, in either case; j at the end or beginning is i.
[[nodiscard]] std::optional<int> readRoman(std::string_view text);

} // namespace headcap::core
