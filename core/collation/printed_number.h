// The numbers a book prints on its pages or leaves: arabic or roman, in the first numbering or a
// later one that starts again. A page number and a folio number are different things.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace headcap::core {

enum class NumeralStyle : unsigned char { arabic, romanLower, romanUpper };

struct PrintedNumber {
    int value = 1;
    NumeralStyle style = NumeralStyle::arabic;
    int sequence = 1; // 2 where the book counts from 1 a second time (written ²44)

    friend bool operator==(const PrintedNumber&, const PrintedNumber&) = default;
};

struct PageNumber {
    PrintedNumber number;
    friend bool operator==(const PageNumber&, const PageNumber&) = default;
};

struct FolioNumber {
    PrintedNumber number;
    friend bool operator==(const FolioNumber&, const FolioNumber&) = default;
};

// As printed in old books too: iiij, xxxx, lxxxx, j for a last i, Cxx. None where the letters are
// no number or stand for more than 9999.
[[nodiscard]] std::optional<int> romanValue(std::string_view letters);
[[nodiscard]] std::string toRoman(int value, bool upper);

// "44", "xii", "²44".
[[nodiscard]] std::string toText(const PrintedNumber& number);

} // namespace headcap::core
