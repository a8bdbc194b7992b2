#include "core/collation/glyphs.h"

#include <algorithm>
#include <array>
#include <utility>

namespace headcap::core {
namespace {

constexpr char32_t kReplacement = 0xFFFD;

// One code point from `at`, which moves past it.
char32_t decode(std::string_view text, std::size_t& at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(at);
    std::size_t more = 0;
    char32_t sign = first;
    if (first >= 0xF0 && first < 0xF5) {
        more = 3;
        sign = first & 0x07U;
    } else if (first >= 0xE0 && first < 0xF0) {
        more = 2;
        sign = first & 0x0FU;
    } else if (first >= 0xC2 && first < 0xE0) {
        more = 1;
        sign = first & 0x1FU;
    } else if (first >= 0x80) {
        ++at;
        return kReplacement;
    }
    ++at;
    for (; more > 0; --more, ++at) {
        if (at >= text.size() || (byte(at) & 0xC0U) != 0x80U) {
            return kReplacement;
        }
        sign = (sign << 6U) | (byte(at) & 0x3FU);
    }
    return sign;
}

Glyph lowered(char32_t sign) {
    constexpr std::u32string_view kSuper = U"⁰¹²³⁴⁵⁶⁷⁸⁹";
    constexpr std::u32string_view kSub = U"₀₁₂₃₄₅₆₇₈₉";
    if (const auto i = kSuper.find(sign); i != kSuper.npos) {
        return {U'0' + static_cast<char32_t>(i), GlyphLevel::superscript};
    }
    if (const auto i = kSub.find(sign); i != kSub.npos) {
        return {U'0' + static_cast<char32_t>(i), GlyphLevel::subscript};
    }
    struct Raised {
        char32_t from;
        char32_t to;
        GlyphLevel level;
    };
    static constexpr std::array kOthers{
        Raised{U'⁻', U'-', GlyphLevel::superscript}, Raised{U'⁺', U'+', GlyphLevel::superscript},
        Raised{U'⁽', U'(', GlyphLevel::superscript}, Raised{U'⁾', U')', GlyphLevel::superscript},
        Raised{U'₋', U'-', GlyphLevel::subscript},   Raised{U'₊', U'+', GlyphLevel::subscript},
        Raised{U'ᵖ', U'p', GlyphLevel::superscript}, Raised{U'ⁱ', U'i', GlyphLevel::superscript},
        Raised{U'ᵡ', U'χ', GlyphLevel::superscript}, Raised{U'ʳ', U'r', GlyphLevel::superscript},
        Raised{U'ᵛ', U'v', GlyphLevel::superscript}, Raised{U'ᵃ', U'a', GlyphLevel::superscript},
        Raised{U'ᵇ', U'b', GlyphLevel::superscript}, Raised{U'º', U'°', GlyphLevel::line},
        Raised{U'⁄', U'/', GlyphLevel::line},        Raised{U'∙', U'·', GlyphLevel::line},
        Raised{U'⋅', U'·', GlyphLevel::line},        Raised{U'˙', U'·', GlyphLevel::line},
        Raised{U'∗', U'*', GlyphLevel::line},        Raised{U'ſ', U's', GlyphLevel::line},
    };
    for (const Raised& one : kOthers) {
        if (one.from == sign) {
            return {one.to, one.level};
        }
    }
    if ((sign >= 0x2010 && sign <= 0x2015) || sign == 0x2212 || sign == 0xFE63) {
        return {U'-', GlyphLevel::line};
    }
    if (sign == U'“' || sign == U'”' || sign == U'„' || sign == U'«' || sign == U'»') {
        return {U'"', GlyphLevel::line};
    }
    if (sign == U'‘' || sign == U'’' || sign == U'‚') {
        return {U'\'', GlyphLevel::line};
    }
    return {sign, GlyphLevel::line};
}

bool startsAt(std::string_view text, std::size_t at, std::string_view what) {
    return text.substr(at, what.size()) == what;
}

// Levels set by marks in the text: <sup>…</sup>, <sub>…</sub>.
bool takeTag(std::string_view text, std::size_t& at, GlyphLevel& level) {
    constexpr std::array<std::pair<std::string_view, GlyphLevel>, 4> kTags{{
        {"<sup>", GlyphLevel::superscript},
        {"<sub>", GlyphLevel::subscript},
        {"</sup>", GlyphLevel::line},
        {"</sub>", GlyphLevel::line},
    }};
    for (const auto& [tag, set] : kTags) {
        if (startsAt(text, at, tag)) {
            at += tag.size();
            level = set;
            return true;
        }
    }
    return false;
}

// ^8, ^8^, ^{8}, ^pi, _4_: marks that raise or lower what follows them without a space.
class Marks {
public:
    Marks(std::string_view text, std::vector<Glyph>& out) : m_text(text), m_out(out) {}

    bool take(std::size_t& at) {
        const char mark = m_text[at];
        if ((mark != '^' && mark != '_') || at + 1 >= m_text.size()) {
            return false;
        }
        const GlyphLevel level = mark == '^' ? GlyphLevel::superscript : GlyphLevel::subscript;
        std::size_t next = at + 1;
        const bool braced = m_text[next] == '{';
        next += braced ? 1 : 0;
        const std::size_t from = m_out.size();
        if (const std::size_t name = spelt(next); name > 0) {
            put(next, next + name, level);
            next += name;
        } else {
            while (next < m_text.size() && isCountSign(m_text[next], next)) {
                put(next, next + 1, level);
                ++next;
            }
        }
        if (m_out.size() == from) {
            return false;
        }
        if (next < m_text.size() && m_text[next] == (braced ? '}' : mark)) {
            ++next;
        }
        at = next;
        return true;
    }

private:
    [[nodiscard]] std::size_t spelt(std::size_t at) const {
        for (const std::string_view name : {"pi", "chi", "π", "χ"}) {
            if (startsAt(m_text, at, name)) {
                return name.size();
            }
        }
        return 0;
    }

    [[nodiscard]] bool isCountSign(char c, std::size_t at) const {
        if (c >= '0' && c <= '9') {
            return true;
        }
        const bool joins = c == '/' || c == '-' || c == '.' || c == ',';
        return joins && at + 1 < m_text.size() && m_text[at + 1] >= '0' && m_text[at + 1] <= '9' &&
               !m_out.empty() && m_out.back().level != GlyphLevel::line;
    }

    void put(std::size_t from, std::size_t to, GlyphLevel level) {
        while (from < to) {
            const std::size_t at = from;
            m_out.push_back({decode(m_text, from), level, at});
        }
    }

    std::string_view m_text;
    std::vector<Glyph>& m_out;
};

} // namespace

std::vector<Glyph> toGlyphs(std::string_view utf8) {
    std::vector<Glyph> out;
    out.reserve(utf8.size());
    Marks marks(utf8, out);
    GlyphLevel tagged = GlyphLevel::line;
    std::size_t at = 0;
    while (at < utf8.size()) {
        if (takeTag(utf8, at, tagged) || marks.take(at)) {
            continue;
        }
        const std::size_t start = at;
        Glyph glyph = lowered(decode(utf8, at));
        glyph.at = start;
        if (tagged != GlyphLevel::line) {
            glyph.level = tagged;
        }
        out.push_back(glyph);
    }
    return out;
}

} // namespace headcap::core
