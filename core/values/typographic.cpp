#include "core/values/typographic.h"

namespace headcap::core {
namespace {

constexpr std::string_view kApostrophe = "\u2019"; // and the closing single mark
constexpr std::string_view kOpenSingle = "\u2018";
constexpr std::string_view kOpenDouble = "\u201C";
constexpr std::string_view kCloseDouble = "\u201D";
constexpr std::string_view kFeet = "\u2032";
constexpr std::string_view kInches = "\u2033";

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) > 0x7F;
}

// Signs after which a quotation begins; dashes and no-break spaces by their last byte's sequence.
bool opensAfter(std::string_view before) {
    if (before.empty()) {
        return true;
    }
    constexpr std::string_view kSigns = " \t\n\r([{/";
    for (const std::string_view sign :
         {"\u2013", "\u2014", "\u00a0", "\u2018", "\u201C", "\u2002"}) {
        if (before.ends_with(sign)) {
            return true;
        }
    }
    return kSigns.find(before.back()) != std::string_view::npos;
}

// ½ and its like end a number as a digit does.
bool endsNumber(std::string_view before) {
    for (const std::string_view part : {"¼", "½", "¾", "⅛", "⅜", "⅝", "⅞"}) {
        if (before.ends_with(part)) {
            return true;
        }
    }
    return !before.empty() && isDigit(before.back());
}

// Whether a single mark that opens here is closed later: "'tis" is not.
bool isClosedLater(std::string_view after) {
    for (std::size_t at = after.find('\''); at != std::string_view::npos;
         at = after.find('\'', at + 1)) {
        const bool isWithin = at + 1 < after.size() && isLetter(after[at + 1]);
        if (!isWithin && at > 0) {
            return true;
        }
    }
    return false;
}

class Setter {
public:
    explicit Setter(std::string_view text) : m_text(text) {}

    std::string run() {
        for (std::size_t at = 0; at < m_text.size(); ++at) {
            const std::string_view before = m_text.substr(0, at);
            const std::string_view after = m_text.substr(at + 1);
            if (m_text[at] == '"') {
                m_set += doubleMark(before);
            } else if (m_text[at] == '\'') {
                m_set += singleMark(before, after);
            } else {
                m_set += m_text[at];
            }
        }
        return std::move(m_set);
    }

private:
    std::string_view doubleMark(std::string_view before) {
        if (!m_isDoubleOpen && endsNumber(before)) {
            return kInches;
        }
        const bool opens = !m_isDoubleOpen && (opensAfter(before) || before.back() == '\'');
        m_isDoubleOpen = opens;
        return opens ? kOpenDouble : kCloseDouble;
    }

    std::string_view singleMark(std::string_view before, std::string_view after) {
        const bool isBeforeWord = !after.empty() && isLetter(after.front());
        const bool isBeforeYear = !after.empty() && isDigit(after.front());
        if (opensAfter(before) || before.back() == '"') {
            const bool opens = !isBeforeYear && !m_isSingleOpen && isClosedLater(after);
            m_isSingleOpen = m_isSingleOpen || opens;
            return opens ? kOpenSingle : kApostrophe;
        }
        if (endsNumber(before) && !isBeforeWord && !m_isSingleOpen) {
            return kFeet;
        }
        m_isSingleOpen = m_isSingleOpen && isBeforeWord;
        return kApostrophe;
    }

    std::string_view m_text;
    std::string m_set{};
    bool m_isDoubleOpen = false;
    bool m_isSingleOpen = false;
};

} // namespace

std::string typographic(std::string_view utf8) {
    return Setter{utf8}.run();
}

} // namespace headcap::core
