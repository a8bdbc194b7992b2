#include "core/collation/signature.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

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

struct Base {
    SignatureKind kind = SignatureKind::letters;
    std::string text;
    int times = 1; // how often the letter or symbol stands: 3 in Aaa, **
    bool parenthesised = false;
    bool inferred = false;
};

// Letters in a row: Aa, AA, Aaa count; two different ones are one mark (TV); a longer word is none.
std::optional<Base> letterBase(GlyphCursor& cursor) {
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
            return Base{SignatureKind::symbol, sign};
        }
    }
    if (length == 0 || (!alike && length > 2) ||
        length > static_cast<std::size_t>(kMostAlphabets)) {
        return std::nullopt;
    }
    Base base;
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
std::optional<Base> unsignedBase(GlyphCursor& cursor) {
    if (cursor.on(U'π') || cursor.on(U'χ')) {
        Base base{SignatureKind::unsignedLeaves, toUtf8(cursor.sign())};
        cursor.advance();
        return base;
    }
    for (const auto& [name, sign] : {std::pair<std::string_view, const char*>{"pi", "π"},
                                     std::pair<std::string_view, const char*>{"chi", "χ"}}) {
        const char32_t next = cursor.sign(name.size());
        if (cursor.startsWith(name) && (!isLetter(next) || isUpper(next)) &&
            cursor.sign(1) != U'I' && cursor.sign(1) != U'H') {
            cursor.advance(name.size());
            return Base{SignatureKind::unsignedLeaves, sign};
        }
    }
    return std::nullopt;
}

std::optional<Base> symbolBase(GlyphCursor& cursor) {
    for (const std::string_view mark : kBracketMarks) {
        if (cursor.startsWith(mark)) {
            cursor.advance(mark.size());
            return Base{SignatureKind::symbol, std::string(mark)};
        }
    }
    const char32_t sign = cursor.sign();
    if (cursor.level() != GlyphLevel::line || sign == 0 || kSymbols.find(sign) == kSymbols.npos) {
        return std::nullopt;
    }
    Base base{SignatureKind::symbol, toUtf8(sign), 0};
    while (cursor.on(sign) && base.times < kMostAlphabets) {
        ++base.times;
        cursor.advance();
    }
    return base;
}

// "(A)", "(¶)": a mark really printed in parentheses.
std::optional<Base> parenthesisedBase(GlyphCursor& cursor) {
    const std::size_t start = cursor.position();
    if (!cursor.take(U'(')) {
        return std::nullopt;
    }
    const int times = std::max(1, cursor.takeNumber());
    std::optional<Base> inside = symbolBase(cursor);
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

std::optional<Base> bracketBase(GlyphCursor& cursor) {
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
        return Base{SignatureKind::symbol, "[]"};
    }
    if (length == 3 && cursor.on(U'x', 1)) {
        cursor.advance(length);
        return Base{SignatureKind::unsignedLeaves, "χ"};
    }
    cursor.advance();
    const bool several = isLetter(cursor.sign()) && isLetter(cursor.sign(1)) &&
                         sameLetter(cursor.sign(1)) != sameLetter(cursor.sign());
    if (std::optional<Base> base = unsignedBase(cursor);
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
            return Base{inside->kind, inside->base, inside->multiplier, inside->parenthesised,
                        true};
        }
    }
    cursor.setPosition(start);
    const std::optional<std::string> name = nameInside(cursor, length);
    if (!name) {
        return std::nullopt;
    }
    cursor.advance(length);
    return Base{SignatureKind::symbol, signForName(*name)};
}

std::optional<Base> readBase(GlyphCursor& cursor) {
    for (const auto read : {unsignedBase, symbolBase, bracketBase, parenthesisedBase, letterBase}) {
        if (std::optional<Base> base = read(cursor)) {
            return base;
        }
    }
    return std::nullopt;
}

bool startsBase(const GlyphCursor& cursor) {
    GlyphCursor ahead = cursor;
    return readBase(ahead).has_value();
}

// "[2d]A", "[superscript pi]A": a prefix catalogues write in brackets.
std::string bracketPrefix(GlyphCursor& cursor) {
    const std::size_t start = cursor.position();
    if (!cursor.take(U'[')) {
        return {};
    }
    std::string prefix;
    bool spaced = false;
    const bool named = cursor.startsWith("superscript ");
    cursor.advance(named ? 12 : 0);
    const int number = cursor.takeNumber();
    if (number > 0 && number < kMostAlphabets) {
        spaced = cursor.takeWord("nd") || cursor.takeWord("rd") || cursor.takeWord("th") ||
                 cursor.takeWord("st");
        const bool ranked = spaced || cursor.take(U'd');
        prefix = ranked || named ? superscript(number) : std::string();
    } else if (named && (cursor.takeWord("pi") || cursor.take(U'π'))) {
        prefix = "π";
    } else if (named && (cursor.takeWord("chi") || cursor.take(U'χ'))) {
        prefix = "χ";
    }
    const bool closed = cursor.take(U']');
    if (spaced) {
        cursor.skipSpaces(); // "[2nd] A"; but "[2d] [2e]" are two gatherings
    }
    if (prefix.empty() || !closed || !startsBase(cursor)) {
        cursor.setPosition(start);
        return {};
    }
    return prefix;
}

// ², ^pi^ and the like; a space after them is a slip of the record.
std::string raisedPrefix(GlyphCursor& cursor) {
    const std::size_t start = cursor.position();
    std::string prefix;
    if (cursor.isSuperscript() && (cursor.sign() == U'π' || cursor.sign() == U'χ')) {
        prefix = toUtf8(cursor.sign());
        cursor.advance();
    } else if (cursor.isSuperscript() && (cursor.sign() == U'p' || cursor.sign() == U'c')) {
        const bool pi = cursor.sign() == U'p';
        cursor.advance(pi ? 2 : 3);
        prefix = pi ? "π" : "χ";
    } else {
        const int number = cursor.takeNumber(GlyphLevel::superscript);
        if (number > 0 && number < kMostAlphabets) {
            prefix = superscript(number);
            cursor.skipSpaces();
        }
    }
    const bool goesOn = startsBase(cursor) || isDigit(cursor.sign());
    if (prefix.empty() || !goesOn) {
        cursor.setPosition(start);
        return {};
    }
    return prefix;
}

// The r of π2r says a side, where the r of χ2r⁸ or χ2r4 is a letter of the alphabet.
bool isSideLetter(const GlyphCursor& cursor) {
    const char32_t sign = cursor.sign();
    const char32_t next = cursor.sign(1);
    return (sign == U'r' || sign == U'v') && !isLetter(next) && !isDigit(next) && next != U'-' &&
           next != U'(';
}

// The base after a multiplier or none; a sign or π set straight before another mark is its prefix.
bool readBody(GlyphCursor& cursor, Signature& out) {
    for (int links = 0; links < 4; ++links) {
        const std::size_t start = cursor.position();
        const int times = cursor.takeNumber();
        if (times > kMostAlphabets || times == 0 || times == 1) { // nobody writes 1A
            cursor.setPosition(start);
            return false;
        }
        const bool bracketed = cursor.on(U'[');
        const std::optional<Base> base = readBase(cursor);
        if (!base || (base->kind == SignatureKind::number && times > 0)) {
            cursor.setPosition(start);
            return false;
        }
        out.kind = base->kind;
        out.base = base->text;
        out.multiplier = std::min(base->times * std::max(times, 1), kMostAlphabets);
        out.parenthesised = base->parenthesised;
        out.inferred = base->inferred;
        const bool unsignedMark = base->kind == SignatureKind::unsignedLeaves;
        const bool mayLead =
            unsignedMark || (base->kind == SignatureKind::symbol && !cursor.startsWith(")"));
        GlyphCursor ahead = cursor;
        const int next = ahead.takeNumber();
        const bool leads = mayLead && !cursor.atEnd() &&
                           (next < 0 || (next > 1 && (unsignedMark || !bracketed))) &&
                           startsBase(ahead) && !ahead.on(U'(') && !ahead.on(U'&') &&
                           !(next > 0 && isSideLetter(ahead));
        if (!leads) {
            return true;
        }
        const Signature lead{out.kind, {}, out.multiplier, out.base};
        out.prefix += toText(lead);
    }
    return false;
}

} // namespace

std::string signForName(std::string name) {
    std::string plain;
    for (const char c : name) {
        if (c != '.') {
            plain.push_back(c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c);
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

bool sameMarkUnprefixed(const Signature& a, const Signature& b) {
    return a.kind == b.kind && a.multiplier == b.multiplier && a.base == b.base &&
           a.suffix == b.suffix && a.parenthesised == b.parenthesised;
}

bool sameMarkOtherCase(const Signature& a, const Signature& b) {
    const std::vector<Glyph> one = toGlyphs(a.base);
    const std::vector<Glyph> other = toGlyphs(b.base);
    return a.kind == b.kind && a.multiplier == b.multiplier && one.size() == 1 &&
           other.size() == 1 && toLower(one.front().sign) == toLower(other.front().sign);
}

bool sameMark(const Signature& a, const Signature& b) {
    return a.prefix == b.prefix && sameMarkUnprefixed(a, b);
}

std::string toText(const Signature& signature) {
    const bool mirrored = signature.parenthesised;
    std::string out = signature.prefix;
    out += mirrored ? "(" : "";
    if (signature.multiplier > 1) {
        out += std::to_string(signature.multiplier);
    }
    out += signature.base + signature.suffix;
    out += mirrored ? ")" : "";
    return signature.quoted ? "\"" + out + "\"" : out;
}

std::string toBracketedText(const Signature& signature) {
    if (!signature.inferred) {
        return toText(signature);
    }
    const bool likeChi = signature.base == "x" && signature.multiplier == 1;
    if (likeChi) {
        return toText(signature); // "[x]" is how catalogues write χ
    }
    Signature inside = signature;
    inside.prefix.clear();
    return signature.prefix + "[" + toText(inside) + "]";
}

std::optional<Signature> readSignature(GlyphCursor& cursor, bool numbersToo) {
    const std::size_t start = cursor.position();
    Signature out;
    out.prefix = raisedPrefix(cursor);
    if (out.prefix.empty()) {
        out.prefix = bracketPrefix(cursor);
    }
    const std::size_t body = cursor.position();
    if (!readBody(cursor, out)) {
        cursor.setPosition(body);
        const int number = numbersToo ? cursor.takeNumber() : -1;
        if (number < 1 || number > 9999) {
            cursor.setPosition(start);
            return std::nullopt;
        }
        out.kind = SignatureKind::number;
        out.multiplier = 1;
        out.base = std::to_string(number);
        out.parenthesised = out.inferred = false;
        return out;
    }
    while (out.kind == SignatureKind::letters && !out.inferred && cursor.on(U'*') &&
           out.suffix.size() < 6) {
        out.suffix += "*";
        cursor.advance();
    }
    return out;
}

} // namespace headcap::core
