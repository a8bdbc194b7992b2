// A signature: the mark by which a gathering is known, in one form for the many ways of writing it
// (Aa = AA = 2A, pi = π, [par.] = ¶). Letters run in the printers' alphabets: Latin of 23 letters,
// I = J and U = V, no W (DCRMR 6.215.44.35; Prussian Instructions, Anlage IV § 13); Greek of 24;
// Hebrew of 22.
#pragma once

#include <optional>
#include <string>

#include "core/collation/glyphs.h"

namespace headcap::core {

enum class SignatureKind : unsigned char {
    letters,
    number,
    symbol,
    unsignedLeaves, // π before the sequence, χ after or within it
};

struct Signature {
    SignatureKind kind = SignatureKind::letters;
    std::string prefix; // a repeated series: "²", "³", "π", "χ", as it stands above the line
    int multiplier = 1; // 3 in 3A = Aaa
    std::string base;   // "A", "a", "AB", "12", "¶", "[fleuron]", "π"
    std::string suffix; // the stars of H*, O**
    bool parenthesised = false; // really signed "(A)"
    bool quoted = false;        // as signed, where that contradicts its place
    bool inferred = false; // unsigned, its place in the sequence certain; no part of the identity

    friend bool operator==(const Signature&, const Signature&) = default;
};

// The same mark, whether printed in the book or inferred.
[[nodiscard]] bool sameMark(const Signature& a, const Signature& b);
// The same mark but for the prefix of a repeated series.
[[nodiscard]] bool sameMarkUnprefixed(const Signature& a, const Signature& b);

// The same mark but for its prefix and the case of its letters.
[[nodiscard]] bool sameMarkOtherCase(const Signature& a, const Signature& b);

// "2A", "²A", "πA", "3¶", "(z)"; brackets only where asked for.
[[nodiscard]] std::string toText(const Signature& signature);
[[nodiscard]] std::string toBracketedText(const Signature& signature);

enum class Alphabet : unsigned char {
    latin,
    latin24,
    latin26,
    greek,
    hebrew,
    romanisedGreek,
    romanisedHebrew
};

// How a mark stands in its series: its letter's place in the alphabet plus the alphabets before it.
// None for what stands in no series (a single unnamed sign still counts by its multiplier).
[[nodiscard]] std::optional<int> ordinal(const Signature& signature, Alphabet alphabet);
// The alphabet of the letters, as far as they show it.
[[nodiscard]] Alphabet alphabetOf(const Signature& signature);
// The mark `ordinal` places from A of the same series as `model`; none past the end of what a
// printer could sign.
[[nodiscard]] std::optional<Signature> signatureAt(const Signature& model, int ordinal,
                                                   Alphabet alphabet);

// Reads one signature at the cursor, which moves past it; where none stands, it does not move.
// A lone number is taken as a signature only where `numbersToo`.
[[nodiscard]] std::optional<Signature> readSignature(GlyphCursor& cursor, bool numbersToo);

// The sign for a name catalogues spell out ("par." is ¶); the name in brackets where there is none.
[[nodiscard]] std::string signForName(std::string name);

inline constexpr int kMostAlphabets = 60;

} // namespace headcap::core
