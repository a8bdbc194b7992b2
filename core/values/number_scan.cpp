#include "core/values/number_scan.h"

#include <array>
#include <limits>
#include <numeric>
#include <optional>
#include <utility>

#include "core/values/contract.h"
#include "core/values/wide.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();
constexpr std::array<std::string_view, 6> kBlanks = {
    " ", "\t", "\u00A0", "\u2009", "\u202F", "\u2007",
};

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

std::size_t digitsAtHead(std::string_view text) {
    std::size_t n = 0;
    while (n < text.size() && isDigit(text[n])) {
        ++n;
    }
    return n;
}

std::size_t signAtHead(std::string_view text, bool& negative) {
    for (const std::string_view minus : {"-", "\u2212"}) {
        if (text.starts_with(minus)) {
            negative = true;
            return minus.size();
        }
    }
    return text.starts_with('+') ? 1 : 0;
}

// Adds digits to a value; false where it leaves int64.
bool takeDigits(std::string_view digits, std::int64_t& value) {
    for (const char c : digits) {
        const std::int64_t digit = c - '0';
        if (value > (kMost - digit) / 10) {
            return false;
        }
        value = value * 10 + digit;
    }
    return true;
}

// One blank and three digits that are not the head of a longer number or of a fraction.
std::size_t groupAtHead(std::string_view text) {
    const std::size_t blank = blanksAtHead(text);
    const std::string_view rest = text.substr(blank);
    if (blank == 0 || digitsAtHead(rest) != 3 || rest.substr(3).starts_with('/')) {
        return 0;
    }
    return blank + 3;
}

struct Fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    std::size_t length = 0;
};

std::optional<Fraction> vulgarAtHead(std::string_view text) {
    struct Sign {
        std::string_view text;
        std::int64_t numerator;
        std::int64_t denominator;
    };
    static constexpr std::array<Sign, 9> kSigns = {{
        {"\u00BC", 1, 4},
        {"\u00BD", 1, 2},
        {"\u00BE", 3, 4},
        {"\u2153", 1, 3},
        {"\u2154", 2, 3},
        {"\u215B", 1, 8},
        {"\u215C", 3, 8},
        {"\u215D", 5, 8},
        {"\u215E", 7, 8},
    }};
    for (const Sign& sign : kSigns) {
        if (text.starts_with(sign.text)) {
            return Fraction{sign.numerator, sign.denominator, sign.text.size()};
        }
    }
    const std::size_t above = digitsAtHead(text);
    std::size_t bar = 0;
    for (const std::string_view mark : {"/", "\u2044"}) {
        bar = text.substr(above).starts_with(mark) ? mark.size() : bar;
    }
    const std::string_view below = text.substr(above + bar);
    const std::size_t belowDigits = digitsAtHead(below);
    Fraction fraction{0, 0, above + bar + belowDigits};
    if (above == 0 || bar == 0 || belowDigits == 0 ||
        !takeDigits(text.substr(0, above), fraction.numerator) ||
        !takeDigits(below.substr(0, belowDigits), fraction.denominator) ||
        fraction.denominator == 0) {
        return std::nullopt;
    }
    return fraction;
}

TextError problemAt(TextProblem problem, std::size_t at) {
    return {problem, at};
}

// The part after the point or comma, if one with digits stands at `at`.
std::optional<TextProblem> takeDecimals(std::string_view text, std::size_t& at,
                                        ScannedNumber& number) {
    const std::string_view rest = text.substr(at);
    if (!rest.starts_with('.') && !rest.starts_with(',')) {
        return std::nullopt;
    }
    const std::size_t count = digitsAtHead(rest.substr(1));
    if (count == 0) {
        return std::nullopt;
    }
    std::string_view decimals = rest.substr(1, count);
    while (decimals.ends_with('0')) {
        decimals.remove_suffix(1);
    }
    if (decimals.size() > 18) {
        return TextProblem::tooFine;
    }
    if (!takeDigits(decimals, number.numerator)) {
        return TextProblem::tooLarge;
    }
    number.denominator = powerOfTen(static_cast<int>(decimals.size()));
    at += 1 + count;
    return std::nullopt;
}

} // namespace

std::int64_t powerOfTen(int exponent) {
    HEADCAP_CONTRACT(exponent >= 0 && exponent <= 18);
    std::int64_t power = 1;
    for (int i = 0; i < exponent; ++i) {
        power *= 10;
    }
    return power;
}

std::size_t blanksAtHead(std::string_view text) {
    std::size_t n = 0;
    for (bool found = true; found;) {
        found = false;
        for (const std::string_view blank : kBlanks) {
            if (text.substr(n).starts_with(blank)) {
                n += blank.size();
                found = true;
            }
        }
    }
    return n;
}

std::string_view trimmed(std::string_view text) {
    text.remove_prefix(blanksAtHead(text));
    for (bool found = true; found;) {
        found = false;
        for (const std::string_view blank : kBlanks) {
            if (text.ends_with(blank)) {
                text.remove_suffix(blank.size());
                found = true;
            }
        }
    }
    return text;
}

tl::expected<ScannedNumber, TextError> scanNumber(std::string_view text, NumberForms forms) {
    bool negative = false;
    const std::size_t head = signAtHead(text, negative);
    std::size_t at = head;
    ScannedNumber number;
    const auto finish = [&] {
        number.numerator = negative ? -number.numerator : number.numerator;
        number.length = at;
        return number;
    };

    if (forms.fractions) {
        if (const auto fraction = vulgarAtHead(text.substr(at))) {
            number = {fraction->numerator, fraction->denominator, 0, true};
            at += fraction->length;
            return finish();
        }
    }
    const std::size_t whole = digitsAtHead(text.substr(at));
    if (!takeDigits(text.substr(at, whole), number.numerator)) {
        return tl::unexpected(problemAt(TextProblem::tooLarge, head));
    }
    at += whole;
    while (forms.groups && whole >= 1 && whole <= 3) {
        const std::size_t group = groupAtHead(text.substr(at));
        if (group == 0) {
            break;
        }
        if (!takeDigits(text.substr(at + group - 3, 3), number.numerator)) {
            return tl::unexpected(problemAt(TextProblem::tooLarge, head));
        }
        at += group;
    }
    if (forms.fractions && whole > 0) {
        const std::size_t blank = blanksAtHead(text.substr(at));
        const auto fraction = vulgarAtHead(text.substr(at + blank));
        if (fraction && (blank > 0 || !isDigit(text[at]))) {
            const Wide sum =
                static_cast<Wide>(number.numerator) * fraction->denominator + fraction->numerator;
            if (sum > kMost) {
                return tl::unexpected(problemAt(TextProblem::tooLarge, head));
            }
            number = {static_cast<std::int64_t>(sum), fraction->denominator, 0, true};
            at += blank + fraction->length;
            return finish();
        }
    }
    if (const auto problem = takeDecimals(text, at, number)) {
        return tl::unexpected(problemAt(*problem, head));
    }
    if (at == head) {
        return tl::unexpected(
            problemAt(text.empty() ? TextProblem::empty : TextProblem::notANumber, 0));
    }
    return finish();
}

tl::expected<std::int64_t, TextProblem> wholeCount(const ScannedNumber& number,
                                                   std::int64_t perUnit) {
    const Wide count = static_cast<Wide>(number.numerator) * perUnit;
    if (count % number.denominator != 0) {
        return tl::unexpected(TextProblem::tooFine);
    }
    const Wide whole = count / number.denominator;
    if (whole > kMost || whole < -kMost) {
        return tl::unexpected(TextProblem::tooLarge);
    }
    return static_cast<std::int64_t>(whole);
}

} // namespace headcap::core
