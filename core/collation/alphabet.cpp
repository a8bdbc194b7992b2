#include <array>
#include <string_view>
#include <vector>

#include "core/collation/signature.h"

namespace headcap::core {
namespace {

using Letters = std::vector<std::string>;

Letters spread(std::u32string_view letters) {
    Letters out;
    for (const char32_t letter : letters) {
        out.push_back(toUtf8(letter));
    }
    return out;
}

const Letters& lettersOf(Alphabet alphabet) {
    static const Letters latin = spread(U"abcdefghiklmnopqrstvxyz");
    static const Letters latin24 = spread(U"abcdefghiklmnopqrstvwxyz");
    static const Letters latin26 = spread(U"abcdefghijklmnopqrstuvwxyz");
    static const Letters greek = spread(U"αβγδεζηθικλμνξοπρστυφχψω");
    static const Letters hebrew = spread(U"אבגדהוזחטיכלמנסעפצקרשת");
    static const Letters romanisedGreek{"a", "b", "g", "d", "e",  "z",  "ē",  "th",
                                        "i", "k", "l", "m", "n",  "x",  "o",  "p",
                                        "r", "s", "t", "u", "ph", "ch", "ps", "ō"};
    static const Letters romanisedHebrew{"ʼ", "b", "g", "d", "h", "v", "z",  "ḥ", "ṭ", "y",  "k",
                                         "l", "m", "n", "s", "ʻ", "p", "ts", "ḳ", "r", "sh", "t"};
    switch (alphabet) {
    case Alphabet::latin24:
        return latin24;
    case Alphabet::latin26:
        return latin26;
    case Alphabet::greek:
        return greek;
    case Alphabet::hebrew:
        return hebrew;
    case Alphabet::romanisedGreek:
        return romanisedGreek;
    case Alphabet::romanisedHebrew:
        return romanisedHebrew;
    case Alphabet::latin:
        break;
    }
    return latin;
}

// Capitals to small letters; in the 23-letter alphabet j to i and u to v.
std::string levelled(const std::string& letter, Alphabet alphabet) {
    std::string out;
    for (const Glyph& glyph : toGlyphs(letter)) {
        appendUtf8(out, toLower(glyph.sign));
    }
    if (alphabet == Alphabet::latin || alphabet == Alphabet::latin24) {
        if (out == "j") {
            return "i";
        }
        if (out == "u") {
            return "v";
        }
    }
    if (alphabet == Alphabet::greek && out == "ς") {
        return "σ";
    }
    if (alphabet == Alphabet::romanisedGreek && out == "y") {
        return "u";
    }
    if (alphabet == Alphabet::romanisedHebrew && out == "q") {
        return "ḳ";
    }
    return out;
}

} // namespace

Alphabet alphabetOf(const Signature& signature) {
    const std::vector<Glyph> glyphs = toGlyphs(signature.base);
    if (!glyphs.empty()) {
        const char32_t sign = glyphs.front().sign;
        if (sign >= 0x391 && sign <= 0x3C9) {
            return Alphabet::greek;
        }
        if (sign >= 0x5D0 && sign <= 0x5EA) {
            return Alphabet::hebrew;
        }
    }
    return Alphabet::latin;
}

std::optional<int> ordinal(const Signature& signature, Alphabet alphabet) {
    switch (signature.kind) {
    case SignatureKind::number:
        return std::stoi(signature.base);
    case SignatureKind::symbol:
    case SignatureKind::unsignedLeaves:
        return signature.multiplier - 1;
    case SignatureKind::letters:
        break;
    }
    const Letters& letters = lettersOf(alphabet);
    const std::string wanted = levelled(signature.base, alphabet);
    for (std::size_t i = 0; i < letters.size(); ++i) {
        if (letters[i] == wanted) {
            return (signature.multiplier - 1) * static_cast<int>(letters.size()) +
                   static_cast<int>(i);
        }
    }
    return std::nullopt;
}

std::optional<Signature> signatureAt(const Signature& model, int place, Alphabet alphabet) {
    if (place < 0) {
        return std::nullopt;
    }
    Signature out = model;
    if (model.kind == SignatureKind::number) {
        out.base = std::to_string(place);
        return out;
    }
    if (model.kind != SignatureKind::letters) {
        out.multiplier = place + 1;
        return place < kMostAlphabets ? std::optional(out) : std::nullopt;
    }
    const Letters& letters = lettersOf(alphabet);
    const int size = static_cast<int>(letters.size());
    out.multiplier = place / size + 1;
    if (out.multiplier > kMostAlphabets) {
        return std::nullopt;
    }
    const std::string& letter = letters[static_cast<std::size_t>(place % size)];
    const std::vector<Glyph> modelled = toGlyphs(model.base);
    if (modelled.empty() || !isUpper(modelled.front().sign)) {
        out.base = letter;
        return out;
    }
    const char32_t small = toGlyphs(letter).front().sign;
    const bool shifted = (small >= U'a' && small <= U'z') || (small >= 0x3B1 && small <= 0x3C9);
    out.base = shifted ? toUtf8(small - 32) : letter;
    return out;
}

} // namespace headcap::core
