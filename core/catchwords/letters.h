// Old letter forms, read as a reader takes them. A text is folded twice: `plain` levels what is
// one letter to the eye (case, long s, r rotunda, ligatures, accents, umlaut or superscript e,
// hyphens at a line's end, points), `loose` levels besides what compositors used one for the other
// (u/v, i/j/y, vv/w). Abbreviation strokes and signs stay in both as signs that stand for any of
// several spellings. Nothing is an error: what is no letter and no figure is passed over.
// Sources: usage of the handpress period; abbreviations as tallied in printed Latin and Spanish.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace headcap::core {

struct LetterWord {
    std::size_t begin = 0; // in LetterText::plain
    std::size_t end = 0;
    bool startsLine = false;
    bool numeral = false;      // 13, xij, or a short mark such as a. or (b)
    bool dividedAtEnd = false; // a hyphen stood after it
};

struct LetterText {
    std::u32string plain;
    std::u32string loose; // where w counts as two, so the places differ from those in plain
    std::vector<LetterWord> words;
    std::vector<std::size_t> looseBegin; // of each word, in loose
    std::vector<std::size_t> looseEnd;
    bool signsOnly = false; // no letter and no figure: §, an ornament
};

// A line end is '\n' or the sign U+240A. At most `most` words are read.
[[nodiscard]] LetterText readLetters(std::string_view utf8, std::size_t most = 64);

} // namespace headcap::core
