#include "core/catchwords/letters.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include <unicode/uchar.h>
#include <unicode/unorm2.h>

#include "core/catchwords/abbreviation_signs.h"
#include "core/catchwords/letter_forms.h"

namespace headcap::core {
namespace {

constexpr char32_t kOgonek = 0x0328;
constexpr char32_t kDotAbove = 0x0307;
constexpr char32_t kDiaeresis = 0x0308;

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
        if (const auto letters = levelled(c); !letters.empty()) {
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
        const bool figures = std::ranges::all_of(letters, isFigure);
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

} // namespace headcap::core
