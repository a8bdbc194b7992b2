#include "core/values/money.h"

#include <algorithm>
#include <array>

#include <unicode/ucurr.h>

#include "core/values/decimal.h"
#include "core/values/number_scan.h"

namespace headcap::core {
namespace {

// ISO 4217's minor units where they are not two; from memory of its list one.
constexpr auto kWithoutDecimals = std::to_array<std::string_view>({
    "BIF",
    "CLP",
    "DJF",
    "GNF",
    "ISK",
    "JPY",
    "KMF",
    "KRW",
    "PYG",
    "RWF",
    "UGX",
    "VND",
    "VUV",
    "XAF",
    "XOF",
    "XPF",
});
constexpr auto kThreeDecimals =
    std::to_array<std::string_view>({"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"});

int placesOf(std::string_view currency) {
    if (std::ranges::find(kWithoutDecimals, currency) != kWithoutDecimals.end()) {
        return 0;
    }
    return std::ranges::find(kThreeDecimals, currency) != kThreeDecimals.end() ? 3 : 2;
}

bool isLetter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

std::string upper(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return out;
}

// Whether ISO 4217 has, or once had, the code.
bool isKnownCurrency(std::string_view code) {
    std::array<UChar, 4> wide{};
    if (code.size() != 3) {
        return false;
    }
    std::ranges::copy(code, wide.begin());
    UErrorCode error = U_ZERO_ERROR;
    return ucurr_isAvailable(wide.data(), U_DATE_MIN, U_DATE_MAX, &error) != 0 && U_SUCCESS(error);
}

struct Tag {
    std::string currency; // empty where none was written
    std::size_t length = 0;
};

// A code or a sign at the head. The dollar is of many countries: it only confirms a dollar given.
Tag tagAtHead(std::string_view text, std::string_view given) {
    if (text.starts_with("\u20AC")) {
        return {"EUR", 3};
    }
    if (text.starts_with("\u00A3")) {
        return {"GBP", 2};
    }
    if (text.starts_with('$') && given.size() == 3 && given[2] == 'D') {
        return {std::string(given), 1};
    }
    const auto letters =
        static_cast<std::size_t>(std::ranges::find_if_not(text, isLetter) - text.begin());
    return {upper(text.substr(0, letters)), letters};
}

// Digits between group marks: one to three, then threes.
bool isGrouped(std::string_view whole, char mark) {
    std::size_t at = whole.find(mark);
    if (at == 0 || at > 3) {
        return false;
    }
    for (; at != std::string_view::npos; at = whole.find(mark, at + 1)) {
        const std::size_t next = std::min(whole.find(mark, at + 1), whole.size());
        if (next - at != 4) {
            return false;
        }
    }
    return true;
}

// The figures without group marks. A mark that stands twice groups, and so does the first of two
// marks ("1,250.50"); a lone one before three digits could be either, and is read only where the
// currency has no decimals. Nothing where the marks make no sense.
std::optional<std::string> withoutGroups(std::string_view figures, int places) {
    const std::size_t last = figures.find_last_of(".,");
    if (last == std::string_view::npos) {
        return std::string(figures);
    }
    const std::size_t digits = figures.find_first_of("0123456789");
    if (const std::size_t first = figures.find_first_of(".,"); first < digits && first != last) {
        return std::nullopt;
    }
    const char mark = figures[last];
    const char other = mark == '.' ? ',' : '.';
    const bool lastGroups =
        figures.find(mark) != last || (places == 0 && figures.size() - last == 4);
    const std::string_view grouped =
        figures.substr(digits, (lastGroups ? figures.size() : last) - digits);
    const char group = lastGroups ? mark : other;
    const bool hasGroups = grouped.find(group) != std::string_view::npos;
    const bool couldGroup =
        figures.size() - last == 4 && last - digits <= 3 && figures[digits] != '0';
    const bool isUsualForm = places == 3 && mark == '.';
    if (hasGroups ? !isGrouped(grouped, group) : couldGroup && !isUsualForm) {
        return std::nullopt;
    }
    std::string plain(figures);
    std::erase(plain, group);
    return plain;
}

struct Figures {
    std::int64_t minor = 0;
    std::size_t length = 0;
};

tl::expected<Figures, TextError> readFigures(std::string_view text, int places) {
    const std::size_t run = std::min(text.find_first_not_of("+-0123456789.,"), text.size());
    const bool marked = text.substr(0, run).find_first_of(".,") != std::string_view::npos;
    const auto plain = marked ? withoutGroups(text, places) : std::string(text);
    if (!plain) {
        return tl::unexpected(TextError{TextProblem::malformed, 0});
    }
    const auto number = scanNumber(*plain, {.groups = true});
    if (!number) {
        return tl::unexpected(number.error());
    }
    const auto minor = wholeCount(*number, powerOfTen(places));
    if (!minor) {
        return tl::unexpected(TextError{minor.error(), 0});
    }
    return Figures{*minor, number->length + text.size() - plain->size()};
}

// "1,250.50": the thousands parted.
std::string withGroups(std::string text) {
    const std::size_t first = text.find_first_of("0123456789");
    for (std::size_t at = std::min(text.find('.'), text.size()); at > first + 3;) {
        at -= 3;
        text.insert(at, 1, ',');
    }
    return text;
}

} // namespace

tl::expected<Money, TextError> parseMoney(std::string_view text, std::string_view currency) {
    const std::string_view body = trimmed(text);
    std::size_t at = blanksAtHead(text);
    if (body.empty()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    const auto rest = [&] { return body.substr(at - blanksAtHead(text)); };
    const auto failed = [](TextProblem problem, std::size_t where) {
        return tl::unexpected(TextError{problem, where});
    };
    const std::size_t tagAt = at;
    const Tag before = tagAtHead(rest(), currency);
    at += before.length;
    at += blanksAtHead(rest());
    // The code decides the decimals, so it is looked for behind the figures first.
    const std::size_t figuresAt = at;
    const std::size_t lastFigure = rest().find_last_of("0123456789");
    if (lastFigure == std::string_view::npos) {
        return failed(TextProblem::notANumber, figuresAt);
    }
    const std::string_view tail = rest().substr(lastFigure + 1);
    const std::size_t behindAt = figuresAt + lastFigure + 1 + blanksAtHead(tail);
    const Tag behind = tagAtHead(trimmed(tail), currency);
    if (behind.length != trimmed(tail).size() || (before.length > 0 && behind.length > 0)) {
        return failed(TextProblem::trailing, behindAt);
    }
    const Tag& tag = before.length > 0 ? before : behind;
    const std::string code = tag.length > 0 ? tag.currency : upper(currency);
    if (!isKnownCurrency(code)) {
        return failed(TextProblem::unitUnknown, before.length > 0 ? tagAt : behindAt);
    }
    const auto figures = readFigures(rest().substr(0, lastFigure + 1), placesOf(code));
    if (!figures) {
        return failed(figures.error().problem, figuresAt + figures.error().at);
    }
    if (figures->length != lastFigure + 1) {
        return failed(TextProblem::trailing, figuresAt + figures->length);
    }
    return Money{figures->minor, code};
}

std::string toText(const Money& money) {
    const auto places = static_cast<std::size_t>(placesOf(money.currency));
    std::string text = decimalText(money.minor, static_cast<int>(places));
    const std::size_t point = text.find('.');
    const std::size_t decimals = point == std::string::npos ? 0 : text.size() - point - 1;
    if (places > 0 && point == std::string::npos) {
        text += '.';
    }
    text.append(places - decimals, '0');
    return withGroups(std::move(text)) + ' ' + money.currency;
}

std::optional<Money> sum(const Money& a, const Money& b) {
    Money total{0, a.currency};
    if (a.currency != b.currency || __builtin_add_overflow(a.minor, b.minor, &total.minor)) {
        return std::nullopt;
    }
    return total;
}

} // namespace headcap::core
