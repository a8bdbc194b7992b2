#include "core/collation/signature_base.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

constexpr std::u32string_view kSymbols = U"*†‡§¶☞☜&✠✝✚❧☙❦⁂⁊¶";
// Marks made of brackets, as printers set them.
constexpr std::array<std::string_view, 6> kBracketMarks{")(", "][", "(:)", "):(", "(*)", "(?)"};
constexpr std::size_t kLongestName = 40;

char32_t sameLetter(char32_t sign) {
    const char32_t small = toLower(sign);
    return small == U'j' ? U'i' : small == U'u' ? U'v' : small;
}

// Letters in a row: Aa, AA, Aaa count; two different ones are one mark (TV); a longer word is none.
std::optional<SignatureBase> letterBase(GlyphCursor& cursor) {
    std::size_t length = 0;
    bool alike = true;
    while (isLetter(cursor.sign(length)) && cursor.level(length) == GlyphLevel::line) {
        alike = alike && sameLetter(cursor.sign(length)) == sameLetter(cursor.sign());
        ++length;
    }
    if (!alike && length > 2 && length < 12 && cursor.isSuperscript(length)) {
        // "par⁴": the name of a sign without its brackets.
        std::string name;
        for (std::size_t i = 0; i < length; ++i) {
            appendUtf8(name, cursor.sign(i));
        }
        const std::string sign = signForName(name);
        if (sign.front() != '[') {
            cursor.advance(length);
            return SignatureBase{SignatureKind::symbol, sign};
        }
    }
    if (length == 0 || (!alike && length > 2) ||
        length > static_cast<std::size_t>(kMostAlphabets)) {
        return std::nullopt;
    }
    SignatureBase base;
    if (alike) {
        base.text = toUtf8(cursor.sign());
        base.times = static_cast<int>(length);
    } else {
        base.text = toUtf8(cursor.sign()) + toUtf8(cursor.sign(1));
    }
    cursor.advance(length);
    return base;
}

// π, χ, and their names where no longer word begins with them: pi1, pi⁴, piA.
std::optional<SignatureBase> unsignedBase(GlyphCursor& cursor) {
    if (cursor.on(U'π') || cursor.on(U'χ')) {
        SignatureBase base{SignatureKind::unsignedLeaves, toUtf8(cursor.sign())};
        cursor.advance();
        return base;
    }
    for (const auto& [name, sign] : {std::pair<std::string_view, const char*>{"pi", "π"},
                                     std::pair<std::string_view, const char*>{"chi", "χ"}}) {
        const char32_t next = cursor.sign(name.size());
        if (cursor.startsWith(name) && (!isLetter(next) || isUpper(next)) &&
            cursor.sign(1) != U'I' && cursor.sign(1) != U'H') {
            cursor.advance(name.size());
            return SignatureBase{SignatureKind::unsignedLeaves, sign};
        }
    }
    return std::nullopt;
}

std::optional<SignatureBase> symbolBase(GlyphCursor& cursor) {
    for (const std::string_view mark : kBracketMarks) {
        if (cursor.startsWith(mark)) {
            cursor.advance(mark.size());
            return SignatureBase{SignatureKind::symbol, std::string(mark)};
        }
    }
    const char32_t sign = cursor.sign();
    if (cursor.level() != GlyphLevel::line || sign == 0 || kSymbols.find(sign) == kSymbols.npos) {
        return std::nullopt;
    }
    SignatureBase base{SignatureKind::symbol, toUtf8(sign), 0};
    while (cursor.on(sign) && base.times < kMostAlphabets) {
        ++base.times;
        cursor.advance();
    }
    return base;
}

// "(A)", "(¶)": a mark really printed in parentheses.
std::optional<SignatureBase> parenthesisedBase(GlyphCursor& cursor) {
    const std::size_t start = cursor.position();
    if (!cursor.take(U'(')) {
        return std::nullopt;
    }
    const int times = std::max(1, cursor.takeNumber());
    std::optional<SignatureBase> inside = symbolBase(cursor);
    if (!inside) {
        inside = letterBase(cursor);
    }
    if (!inside || !cursor.take(U')') || times > kMostAlphabets) {
        cursor.setPosition(start);
        return std::nullopt;
    }
    inside->parenthesised = true;
    inside->times = std::min(inside->times * times, kMostAlphabets);
    return inside;
}

// How far the bracket at the cursor reaches, the closing one included; 0 where it is never closed.
std::size_t bracketLength(const GlyphCursor& cursor) {
    int depth = 0;
    for (std::size_t i = 0; cursor.sign(i) != 0; ++i) {
        depth += cursor.on(U'[', i) ? 1 : cursor.on(U']', i) ? -1 : 0;
        if (depth == 0) {
            return i + 1;
        }
    }
    return 0;
}

// A description in words, "[left-pointing hand]": letters, with no exponent and no range in it.
std::optional<std::string> nameInside(const GlyphCursor& cursor, std::size_t length) {
    std::string name;
    std::size_t run = 0;
    std::size_t longest = 0;
    for (std::size_t i = 1; i + 1 < length; ++i) {
        const char32_t sign = cursor.sign(i);
        const bool joins = sign == U'-' && isLatin(cursor.sign(i + 1)) && run >= 3;
        const bool fits = isLetter(sign) || isDigit(sign) || isSpace(sign) || sign == U'.' ||
                          sign == U'\'' || sign == U'(' || sign == U')' || sign == U'?' || joins;
        if (cursor.level(i) != GlyphLevel::line || !fits || i > kLongestName) {
            return std::nullopt;
        }
        run = isLetter(sign) ? run + 1 : 0;
        longest = std::max(longest, run);
        appendUtf8(name, sign);
    }
    return longest >= 2 ? std::optional(name) : std::nullopt;
}

std::optional<SignatureBase> bracketBase(GlyphCursor& cursor) {
    if (!cursor.on(U'[')) {
        return std::nullopt;
    }
    const std::size_t length = bracketLength(cursor);
    const std::size_t start = cursor.position();
    if (length == 0) {
        return std::nullopt;
    }
    if (length == 2) {
        cursor.advance(2);
        return SignatureBase{SignatureKind::symbol, "[]"};
    }
    if (length == 3 && cursor.on(U'x', 1)) {
        cursor.advance(length);
        return SignatureBase{SignatureKind::unsignedLeaves, "χ"};
    }
    cursor.advance();
    const bool several = isLetter(cursor.sign()) && isLetter(cursor.sign(1)) &&
                         sameLetter(cursor.sign(1)) != sameLetter(cursor.sign());
    if (std::optional<SignatureBase> base = unsignedBase(cursor);
        base && cursor.position() + 1 == start + length) {
        cursor.advance();
        return base;
    }
    cursor.setPosition(start + 1);
    if (!several) {
        const std::optional<Signature> inside = readSignature(cursor, true);
        if (inside && inside->prefix.empty() && inside->suffix.empty() &&
            cursor.position() + 1 == start + length) {
            cursor.advance();
            return SignatureBase{inside->kind, inside->base, inside->multiplier,
                                 inside->parenthesised, true};
        }
    }
    cursor.setPosition(start);
    const std::optional<std::string> name = nameInside(cursor, length);
    if (!name) {
        return std::nullopt;
    }
    cursor.advance(length);
    return SignatureBase{SignatureKind::symbol, signForName(*name)};
}

} // namespace

std::optional<SignatureBase> readSignatureBase(GlyphCursor& cursor) {
    for (const auto read : {unsignedBase, symbolBase, bracketBase, parenthesisedBase, letterBase}) {
        if (std::optional<SignatureBase> base = read(cursor)) {
            return base;
        }
    }
    return std::nullopt;
}

std::string signForName(std::string name) {
    std::string plain;
    for (const char c : name) {
        if (c != '.') {
            plain.push_back(smallLetter(c));
        }
    }
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 22> kNames{{
        {"par", "¶"},
        {"para", "¶"},
        {"paragraph", "¶"},
        {"pilcrow", "¶"},
        {"sec", "§"},
        {"sect", "§"},
        {"section", "§"},
        {"dagger", "†"},
        {"double dagger", "‡"},
        {"fist", "☞"},
        {"hand", "☞"},
        {"pointing hand", "☞"},
        {"maltese cross", "✠"},
        {"asterisk", "*"},
        {"ast", "*"},
        {"star", "*"},
        {"et", "&"},
        {"ampersand", "&"},
        {"par mark", "¶"},
        {"obelus", "†"},
        {"asterism", "⁂"},
        {"paragraph mark", "¶"},
    }};
    for (const auto& [known, sign] : kNames) {
        if (plain == known) {
            return std::string(sign);
        }
    }
    return "[" + std::move(name) + "]";
}

} // namespace headcap::core
