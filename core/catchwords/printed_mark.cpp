#include "core/catchwords/printed_mark.h"

#include <algorithm>
#include <vector>

#include <fmt/format.h>

#include "core/catchwords/number_on_page.h"

namespace headcap::core {
namespace {

constexpr std::string_view kAlphabet = "ABCDEFGHIKLMNOPQRSTVXYZ";
constexpr int kLetters = 23;
constexpr int kMostLeaves = 40;

bool isLetter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}
bool isLower(char c) {
    return c >= 'a' && c <= 'z';
}
bool isFigure(char c) {
    return c >= '0' && c <= '9';
}
char upper(char c) {
    return isLower(c) ? static_cast<char>(c - 'a' + 'A') : c;
}

// In half steps; -1 for none.
int letterRank(char letter) {
    char c = upper(letter);
    c = c == 'J' ? 'I' : c == 'U' ? 'V' : c;
    if (c == 'W')
        return 2 * static_cast<int>(kAlphabet.find('V')) + 1;
    const auto at = kAlphabet.find(c);
    return at == std::string_view::npos ? -1 : 2 * static_cast<int>(at);
}

bool sameLetter(char a, char b) {
    return letterRank(a) == letterRank(b);
}

std::optional<int> readLeafNumber(std::string_view text) {
    while (!text.empty() && (text.back() == '.' || text.back() == ',' || text.back() == ')'))
        text.remove_suffix(1);
    if (text.empty())
        return std::nullopt;
    const bool small = std::ranges::all_of(text, [](char c) { return isLower(c) || isFigure(c); });
    const auto number = small ? readNumberOnPage(text) : std::nullopt;
    if (!number || number->value < 1 || number->value > kMostLeaves)
        return std::nullopt;
    return number->value;
}

std::vector<std::string_view> tokensOf(std::string_view text) {
    std::vector<std::string_view> tokens;
    while (true) {
        const auto begin = text.find_first_not_of(' ');
        if (begin == std::string_view::npos)
            return tokens;
        text.remove_prefix(begin);
        const auto end = std::min(text.find(' '), text.size());
        tokens.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
}

GatheringRank letterGathering(char letter, int repeats, bool inBrackets) {
    GatheringRank gathering;
    gathering.series = inBrackets ? "(a)" : isLower(letter) ? "a" : "A";
    gathering.rank = letterRank(letter) + 2 * kLetters * (repeats - 1);
    return gathering;
}

// Signs repeated, as )()( or ***: the sign and how often.
GatheringRank signGathering(const std::string& signs) {
    for (std::size_t unit = 1; unit <= signs.size(); ++unit) {
        if (signs.size() % unit != 0)
            continue;
        bool repeats = true;
        for (std::size_t at = unit; at < signs.size() && repeats; ++at)
            repeats = signs[at] == signs[at - unit];
        if (repeats)
            return {signs.substr(0, unit), 2 * (static_cast<int>(signs.size() / unit) - 1)};
    }
    return {signs, 0};
}

std::optional<GatheringRank> readGathering(const std::string& text) {
    std::string letters;
    std::string signs;
    for (const char c : text) {
        if (isLetter(c))
            letters += c;
        else if (isFigure(c) || c == '[' || c == ']')
            return std::nullopt;
        else if (c != '.' && c != ',')
            signs += c;
    }
    if (letters.empty())
        return signs.empty() || signs.size() > 24 ? std::nullopt
                                                  : std::optional(signGathering(signs));
    const bool one =
        std::ranges::all_of(letters, [&](char c) { return sameLetter(c, letters[0]); });
    if (!one || letters.size() > 6 || letterRank(letters[0]) < 0)
        return std::nullopt;
    if (signs.empty())
        return letterGathering(letters[0], static_cast<int>(letters.size()), false);
    if (letters.size() == 1 && upper(letters[0]) != 'O' && signs == "()" && text.front() == '(')
        return letterGathering(letters[0], 1, true);
    if (signs.find_first_of("()*") != std::string::npos && upper(letters[0]) == 'O')
        return signGathering(text); // )o( is a sign
    return std::nullopt;
}

// A mark run together with its leaf: A2, Aij, Bbiiij, )(3.
std::optional<PrintedMark> readJoined(std::string_view token) {
    for (std::size_t length = token.size() - 1; length > 0; --length) {
        const auto leaf = readLeafNumber(token.substr(length));
        if (!leaf)
            continue;
        const bool figure = isFigure(token[length]);
        const bool letterBefore = isLetter(token[length - 1]);
        if (!figure && letterBefore && sameLetter(token[length - 1], token[length]))
            continue;
        if (const auto gathering = readGathering(std::string(token.substr(0, length))))
            return PrintedMark{gathering, *leaf};
    }
    return std::nullopt;
}

std::optional<PrintedMark> readTokens(const std::vector<std::string_view>& tokens,
                                      std::size_t begin, std::size_t end) {
    if (begin >= end)
        return std::nullopt;
    const auto join = [&](std::size_t last) {
        std::string joined;
        for (std::size_t at = begin; at < last; ++at)
            joined += tokens[at];
        return joined;
    };
    if (end - begin >= 2) {
        const auto leaf = readLeafNumber(tokens[end - 1]);
        const std::string mark = join(end - 1);
        const std::string_view last = tokens[end - 1];
        const bool repeated = last.size() == 1 && isLetter(last[0]) && sameLetter(mark[0], last[0]);
        if (leaf && !repeated) {
            if (const auto gathering = readGathering(mark))
                return PrintedMark{gathering, *leaf};
        }
    }
    if (const auto gathering = readGathering(join(end)))
        return PrintedMark{gathering, 1};
    return end - begin == 1 ? readJoined(tokens[begin]) : std::nullopt;
}

bool isTitleWord(std::string_view token) {
    return token.size() > 2 && token.back() == '.' && isLetter(token.front());
}

// "[Crit. Sam.] F 2": a title in square brackets goes. A long s is an s.
std::string withoutBrackets(std::string_view text) {
    constexpr std::string_view kLongS = "\xC5\xBF";
    std::string left;
    int depth = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        char c = text[at];
        if (text.substr(at).starts_with(kLongS)) {
            c = 's';
            ++at;
        }
        depth += c == '[' ? 1 : 0;
        if (depth == 0)
            left += c;
        depth -= c == ']' && depth > 0 ? 1 : 0;
    }
    return left;
}

} // namespace

std::optional<PrintedMark> readPrintedMark(std::string_view text) {
    const std::string bare = withoutBrackets(text);
    const auto tokens = tokensOf(bare);
    for (std::size_t begin = 0; begin < tokens.size(); ++begin) {
        const bool abbreviated = tokens[begin].back() == '.' && begin + 1 < tokens.size();
        if (begin > 0 && (abbreviated || isTitleWord(tokens[begin])))
            continue;
        if (const auto mark = readTokens(tokens, begin, tokens.size()))
            return mark;
    }
    for (std::size_t end = tokens.size(); end > 1; --end) {
        if (tokens[0].back() == '.')
            break;
        if (const auto mark = readTokens(tokens, 0, end - 1))
            return mark;
    }
    if (!tokens.empty()) {
        if (const auto leaf = readLeafNumber(tokens.front()))
            return PrintedMark{std::nullopt, *leaf};
    }
    return std::nullopt;
}

std::optional<int> gatheringsBetween(const GatheringRank& from, const GatheringRank& to) {
    if (from.series != to.series)
        return std::nullopt;
    const int halves = to.rank - from.rank;
    return halves >= 0 ? (halves + 1) / 2 : -((1 - halves) / 2);
}

GatheringRank nextGathering(const GatheringRank& gathering) {
    return {gathering.series, (gathering.rank / 2 + 1) * 2};
}

std::string signatureOf(const GatheringRank& gathering) {
    const bool letters =
        gathering.series == "A" || gathering.series == "a" || gathering.series == "(a)";
    if (!letters) {
        const int times = gathering.rank / 2 + 1;
        return times > 1 ? fmt::format("{}{}", times, gathering.series) : gathering.series;
    }
    const int times = gathering.rank / (2 * kLetters) + 1;
    const int within = gathering.rank % (2 * kLetters);
    char letter = within % 2 != 0 ? 'W' : kAlphabet[static_cast<std::size_t>(within / 2)];
    if (gathering.series != "A")
        letter = static_cast<char>(letter - 'A' + 'a');
    const std::string body =
        gathering.series == "(a)" ? fmt::format("({})", letter) : std::string(1, letter);
    return times > 1 ? fmt::format("{}{}", times, body) : body;
}

} // namespace headcap::core
