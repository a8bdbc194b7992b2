#include "core/collation/signature.h"

#include <algorithm>
#include <utility>

#include "core/collation/signature_base.h"

namespace headcap::core {
namespace {

bool startsBase(const GlyphCursor& cursor) {
    GlyphCursor ahead = cursor;
    return readSignatureBase(ahead).has_value();
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
        const std::optional<SignatureBase> base = readSignatureBase(cursor);
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
    // π2 is the second unsigned leaf: before a number the prefix is marked as raised.
    const bool likeLeaf = signature.kind == SignatureKind::number &&
                          (signature.prefix == "π" || signature.prefix == "χ");
    std::string out = (likeLeaf ? "^" : "") + signature.prefix;
    out += mirrored ? "(" : "";
    // After a mark in brackets a number would be that mark's own: []AA, where else it is 2A.
    const bool spelled = signature.prefix.ends_with(']');
    if (signature.multiplier > 1 && !spelled) {
        out += std::to_string(signature.multiplier);
    }
    for (int i = 1; spelled && i < signature.multiplier; ++i) {
        out += signature.base;
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
