#include "core/catchwords/letters.h"

#include <algorithm>
#include <cstdint>

#include <unicode/uchar.h>
#include <unicode/unorm2.h>

namespace headcap::core {
namespace {

// Private use code points for signs of abbreviation.
enum Sign : char32_t {
    kNasal = 0xE000, // a stroke over a vowel, m or n
    kStroke,         // a stroke over another letter: something is left out
    kAnd,
    kPer,
    kCon,
    kUs,
    kQuod,
    kUe, // after q or b, at a word's end
    kDe,
    kSignEnd
};

using Spellings = std::span<const std::u32string_view>;
constexpr std::u32string_view kNasalSpellings[] = {U"", U"m", U"n", U"mm", U"nn", U"ue", U"en"};
constexpr std::u32string_view kStrokeSpellings[] = {U"", kAnyLetters};
constexpr std::u32string_view kAndSpellings[] = {U"et", U"und", U"uund", U"and", U"i", U"e", U"en"};
constexpr std::u32string_view kPerSpellings[] = {U"per", U"par", U"por", U"pro", U"pre"};
constexpr std::u32string_view kConSpellings[] = {U"con", U"com", U"cum", U"us"};
constexpr std::u32string_view kUsSpellings[] = {U"us", U"os", U"s"};
constexpr std::u32string_view kQuodSpellings[] = {U"quod", U"que", U"quam", U"quae"};
constexpr std::u32string_view kUeSpellings[] = {U"ue", U"us", U"ed", U"m", U"et", U"z", U""};
constexpr std::u32string_view kDeSpellings[] = {U"de", U"d", U"uod"};

constexpr std::array<Spellings, kSignEnd - kNasal> kSpellings = {
    kNasalSpellings, kStrokeSpellings, kAndSpellings, kPerSpellings, kConSpellings,
    kUsSpellings,    kQuodSpellings,   kUeSpellings,  kDeSpellings};

constexpr char32_t kOgonek = 0x0328;
constexpr char32_t kDotAbove = 0x0307;
constexpr char32_t kDiaeresis = 0x0308;

bool isVowel(char32_t c) {
    return std::u32string_view(U"aeiouyvj").find(c) != std::u32string_view::npos;
}

bool isStrokeMark(char32_t c) {
    return c == 0x0303 || c == 0x0304 || c == 0x0305 || c == 0x0342 || c == 0x035E || c == 0x0360;
}

bool isHyphen(char32_t c) {
    return c == '-' || c == 0x2010 || c == 0x2011 || c == 0x2E17 || c == 0x00AD || c == 0x00AC ||
           c == 0x2E40 || c == '=' || c == 0x2013;
}

bool isLineEnd(char32_t c) {
    return c == '\n' || c == '\r' || c == 0x240A;
}

// Single letters that no decomposition levels.
std::u32string_view special(char32_t c) {
    switch (c) {
    case 0x017F:
        return U"s";
    case 0xA75B:
    case 0xA75A:
        return U"r";
    case 0x00DF:
    case 0x1E9E:
        return U"ss";
    case 0x00E6:
    case 0x00C6:
        return U"ae";
    case 0x0153:
    case 0x0152:
        return U"oe";
    case 0x0119:
    case 0x0118:
        return U"ae";
    case 0x00F8:
    case 0x00D8:
        return U"oe";
    case 0x00FE:
    case 0x00DE:
        return U"th";
    case 0x0131:
        return U"i";
    case 0x0142:
    case 0x0141:
        return U"l\xE001";
    case 0xA75F:
    case 0xA75E:
        return U"v\xE001";
    case 0xA753:
    case 0xA752:
        return U"pro";
    case 0xA751:
    case 0xA750:
        return U"\xE003";
    case 0xA76F:
    case 0xA76E:
        return U"\xE004";
    case 0xA770:
        return U"\xE005";
    case 0xA759:
    case 0xA758:
        return U"\xE006";
    case 0xA757:
    case 0xA756:
        return U"q\xE001";
    case 0xA76B:
    case 0xA76A:
    case 0x0292:
    case 0x01B7:
        return U"\xE007";
    case 0x0111:
    case 0x0110:
    case 0xA77A:
    case 0xA779:
        return U"\xE008";
    case 0xA75D:
    case 0xA75C:
        return U"rum";
    case 0x204A:
    case '&':
        return U"\xE002";
    default:
        return {};
    }
}

// Takes one code point off the front; a byte that begins none is read as a space.
char32_t nextCodePoint(std::string_view& utf8) {
    const auto byteAt = [&](std::size_t at) { return static_cast<unsigned char>(utf8[at]); };
    const unsigned char lead = byteAt(0);
    const std::size_t length = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (length == 1 || lead < 0xC2 || lead > 0xF4 || utf8.size() < length) {
        utf8.remove_prefix(1);
        return lead < 0x80 ? lead : U' ';
    }
    auto code = static_cast<char32_t>(lead & (0xFF >> (length + 1)));
    for (std::size_t at = 1; at < length; ++at)
        code = (code << 6) | (byteAt(at) & 0x3F);
    utf8.remove_prefix(length);
    return code;
}

class Reader {
public:
    explicit Reader(std::size_t most) : m_most(most) {}

    LetterText read(std::string_view utf8) {
        while (!utf8.empty() && m_text.words.size() < m_most)
            take(nextCodePoint(utf8));
        closeWord();
        makeLoose();
        m_text.signsOnly = m_text.words.empty() && m_anySign;
        return std::move(m_text);
    }

private:
    void take(char32_t c) {
        if (isLineEnd(c)) {
            endOfLine();
        } else if (c == ' ' || c == '\t' || u_isUWhiteSpace(static_cast<UChar32>(c))) {
            closeUnlessDivided();
        } else if (isHyphen(c)) {
            m_hyphen = m_inWord;
        } else if (c < 0x80 && !u_isalnum(static_cast<UChar32>(c)) && c != '&') {
            takePoint(c);
        } else {
            takeLetter(c);
        }
    }

    void takePoint(char32_t c) {
        const char32_t last = m_inWord ? m_text.plain.back() : 0;
        if (c == ';' && (last == 'q' || last == 'b'))
            m_text.plain += kUe;
        m_anySign = true;
        m_pointed = m_pointed || c == '.' || c == '(' || c == ')';
    }

    void takeLetter(char32_t c) {
        const auto code = static_cast<UChar32>(c);
        if (u_charType(code) == U_NON_SPACING_MARK || u_charType(code) == U_ENCLOSING_MARK ||
            (c >= 0x0363 && c <= 0x036F)) {
            takeMark(c);
            return;
        }
        if (const auto letters = special(c); !letters.empty()) {
            append(letters);
            return;
        }
        if (c >= 0x80 && decompose(code))
            return;
        if (!u_isalnum(code)) {
            m_anySign = true;
            return;
        }
        const auto lower = static_cast<char32_t>(u_tolower(code));
        append(std::u32string_view(&lower, 1));
    }

    bool decompose(UChar32 code) {
        UErrorCode status = U_ZERO_ERROR;
        static const UNormalizer2* const kNfkd = unorm2_getNFKDInstance(&status);
        std::array<UChar, 32> out{};
        const std::int32_t count = unorm2_getDecomposition(kNfkd, code, out.data(), 32, &status);
        if (count <= 0 || U_FAILURE(status))
            return false;
        for (std::int32_t at = 0; at < count; ++at)
            takeLetter(out[static_cast<std::size_t>(at)]);
        return true;
    }

    void takeMark(char32_t mark) {
        if (!m_inWord)
            return;
        const char32_t base = m_text.plain.back();
        const bool umlaut = mark == 0x0308 || mark == 0x0364;
        if (umlaut && (base == 'a' || base == 'o' || base == 'u')) {
            m_text.plain += U'e';
        } else if (mark >= 0x0363 && mark <= 0x036F && mark != 0x0364 && mark != 0x0366) {
            m_text.plain += U"aeioucdhmrtvx"[mark - 0x0363];
        } else if (mark == kOgonek && base == 'e') {
            m_text.plain.insert(m_text.plain.size() - 1, 1, U'a'); // e caudata
        } else if (isStrokeMark(mark)) {
            takeStroke(base);
        } else if ((mark == kDotAbove || mark == kDiaeresis) && (base == 'q' || base == 'p')) {
            m_text.plain += kStroke;
        }
    }

    void takeStroke(char32_t base) {
        const bool nasal = base == 'm' || base == 'n';
        const std::size_t size = m_text.plain.size();
        const bool afterVowel = size >= 2 && isVowel(m_text.plain[size - 2]);
        if (nasal && !afterVowel)
            m_text.plain.insert(size - 1, 1, kStroke); // tn̄ is tamen: what is left out comes before
        else
            m_text.plain += isVowel(base) || nasal ? kNasal : kStroke;
    }

    void append(std::u32string_view letters) {
        if (m_divided && m_broken)
            m_divided = false; // the word goes on after the line's end
        if (!m_inWord) {
            m_text.words.push_back({.begin = m_text.plain.size(), .startsLine = m_lineStart});
            m_inWord = true;
            m_lineStart = false;
        }
        m_hyphen = m_divided = m_broken = false;
        m_text.plain += letters;
    }

    void endOfLine() {
        closeUnlessDivided();
        m_lineStart = !m_inWord;
    }

    // A hyphen before a space joins what stands on both sides of it.
    void closeUnlessDivided() {
        if (m_inWord && m_hyphen) {
            m_divided = m_broken = true;
            return;
        }
        closeWord();
    }

    void closeWord() {
        if (!m_inWord) {
            return;
        }
        LetterWord& word = m_text.words.back();
        word.end = m_text.plain.size();
        word.dividedAtEnd = m_hyphen;
        const std::u32string_view letters =
            std::u32string_view(m_text.plain).substr(word.begin, word.end - word.begin);
        const bool figures =
            std::ranges::all_of(letters, [](char32_t c) { return c >= '0' && c <= '9'; });
        const bool roman = std::ranges::all_of(letters, [](char32_t c) {
            return std::u32string_view(U"ivxlcdmj").find(c) != std::u32string_view::npos;
        });
        word.numeral = figures || (m_pointed && (roman || letters.size() == 1));
        m_inWord = m_hyphen = m_pointed = m_divided = m_broken = false;
    }

    void makeLoose() {
        for (const LetterWord& word : m_text.words) {
            m_text.looseBegin.push_back(m_text.loose.size());
            for (std::size_t at = word.begin; at < word.end; ++at) {
                switch (const char32_t c = m_text.plain[at]) {
                case 'v':
                    m_text.loose += U'u';
                    break;
                case 'j':
                case 'y':
                    m_text.loose += U'i';
                    break;
                case 'w':
                    m_text.loose += U"uu";
                    break;
                default:
                    m_text.loose += c;
                }
            }
            m_text.looseEnd.push_back(m_text.loose.size());
        }
    }

    std::size_t m_most;
    LetterText m_text;
    bool m_inWord = false;
    bool m_lineStart = true;
    bool m_hyphen = false;  // the last thing read inside the word was a hyphen
    bool m_divided = false; // and then the line ended
    bool m_broken = false;
    bool m_pointed = false;
    bool m_anySign = false;
};

} // namespace

LetterText readLetters(std::string_view utf8, std::size_t most) {
    return Reader(most).read(utf8);
}

std::span<const std::u32string_view> expansionsOf(char32_t sign) {
    if (sign < kNasal || sign >= kSignEnd)
        return {};
    return kSpellings[sign - kNasal];
}

} // namespace headcap::core
