#include <string>
#include <utility>

#include "core/collation/expander.h"

namespace headcap::core {

Signature Expander::marked(Signature mark, bool inferred) const {
    mark.inferred = mark.inferred || inferred;
    return mark;
}

// A mark that stands alone; "AB" is two where the reading says that marks are set together.
std::vector<Signature> Expander::single(const Term& term) {
    std::vector<Signature> out;
    const std::vector<Glyph> letters = toGlyphs(term.first.base);
    const bool pair = term.first.kind == SignatureKind::letters && letters.size() == 2 &&
                      isLatin(letters[0].sign);
    if (pair && m_reading.setTogether) {
        for (const Glyph& letter : letters) {
            out.push_back(marked(term.first, term.allInferred));
            out.back().base = toUtf8(letter.sign);
        }
    } else if (pair && term.form == CountForm::none && isUpper(letters[0].sign) &&
               !isUpper(letters[1].sign)) {
        // No printer signs "Gx": G, and a sign that is no leaf count.
        out.push_back(marked(term.first, term.allInferred));
        out.back().base = toUtf8(letters[0].sign);
        report(term.at, "after '" + toText(out.back()) + "' a leaf count is expected, found '" +
                            toUtf8(letters[1].sign) + "'");
    } else {
        out.push_back(marked(term.first, term.allInferred));
    }
    return out;
}

// The places of a range's ends in their series; nothing, and it is reported, where they have none.
// The last mark is put right: "2A-G" keeps the multiplier, "A-Gx" ends at G.
std::optional<Expander::Places> Expander::placesOf(const Term& term, Signature& last,
                                                   const std::string& range) {
    const Alphabet alphabet = alphabetFor(term);
    const std::optional<int> from = ordinal(term.first, alphabet);
    std::optional<int> to = ordinal(last, alphabet);
    if (term.first.kind == SignatureKind::letters && last.multiplier == 1 &&
        term.first.multiplier > 1 && from && to && *to < *from) {
        last.multiplier = term.first.multiplier;
        to = ordinal(last, alphabet);
    }
    const bool sameKind = term.first.kind == last.kind &&
                          (last.kind == SignatureKind::letters ||
                           last.kind == SignatureKind::number || last.base == term.first.base);
    const std::string junk = to ? std::string() : trailingJunk(last);
    if (!from || (!to && junk.empty()) || !sameKind) {
        report(term.at, "the gatherings of '" + range +
                            "' can't be told: its ends belong to no "
                            "one known series");
        return std::nullopt;
    }
    if (!to) {
        last.base = last.base.substr(0, last.base.size() - junk.size());
        to = ordinal(last, alphabet);
        report(term.at,
               "after '" + toText(last) + "' a leaf count is expected, found '" + junk + "'");
    }
    if (!to || *to < *from || *to - *from >= kMostGatherings) {
        report(term.at, "'" + range + "' runs backwards");
        return std::nullopt;
    }
    return Places{*from, *to};
}

std::vector<Signature> Expander::marksOf(const Term& term) {
    if (!term.last) {
        return single(term);
    }
    if (term.statedGatherings > 0 && term.statedGatherings <= kMostGatherings) {
        return stated(term);
    }
    std::vector<Signature> out;
    Signature last = *term.last;
    const std::string range = toText(term.first) + "-" + toText(last);
    const auto places = placesOf(term, last, range);
    if (!places) {
        return out;
    }
    caseNote(term, last, range);
    for (int place = places->from; place <= places->to; ++place) {
        std::optional<Signature> mark = place == places->from ? marked(term.first, term.allInferred)
                                        : place == places->to
                                            ? marked(last, term.allInferred)
                                            : signatureAt(term.first, place, alphabetFor(term));
        if (!mark) {
            break;
        }
        if (place != places->from && place != places->to) {
            mark->inferred = term.allInferred;
        }
        if (place == places->to) {
            mark->prefix = mark->prefix.empty() ? term.first.prefix : mark->prefix;
            mark->suffix = mark->suffix.empty() ? term.first.suffix : mark->suffix;
        }
        out.push_back(std::move(*mark));
    }
    return out;
}

Alphabet Expander::alphabetFor(const Term& term) const {
    if (term.alphabet != Alphabet::latin) {
        return term.alphabet;
    }
    const Alphabet own = alphabetOf(term.first);
    if (own != Alphabet::latin) {
        return own;
    }
    const auto isW = [](const Signature& mark) { return mark.base == "W" || mark.base == "w"; };
    if (m_reading.alphabet != Alphabet::latin) {
        return m_reading.alphabet;
    }
    return isW(term.first) || isW(*term.last) ? Alphabet::latin24 : Alphabet::latin;
}

// "Gx" as a range's end: G, and a sign that is no leaf count.
std::string Expander::trailingJunk(const Signature& last) {
    const std::vector<Glyph> letters = toGlyphs(last.base);
    if (last.kind != SignatureKind::letters || letters.size() != 2) {
        return {};
    }
    return last.base.substr(letters[1].at);
}

std::vector<Signature> Expander::stated(const Term& term) {
    std::vector<Signature> out;
    const Signature first = marked(term.first, term.allInferred);
    for (int i = 1; i <= term.statedGatherings; ++i) {
        Signature mark = first;
        if (i == term.statedGatherings) {
            mark = marked(*term.last, term.allInferred);
        } else if (i > 1) {
            mark.kind = SignatureKind::symbol;
            mark.base = "[sign " + std::to_string(i) + " from " + term.first.base + "]";
        }
        out.push_back(std::move(mark));
    }
    m_out.assumptions.push_back({"'" + toText(term.first) + "-" + toText(*term.last) + "' is " +
                                     std::to_string(term.statedGatherings) +
                                     " gatherings, as stated; the signs between are not named",
                                 Ground::formula});
    return out;
}

void Expander::caseNote(const Term& term, const Signature& last, const std::string& range) {
    const auto upper = [](const Signature& mark) {
        const std::vector<Glyph> letters = toGlyphs(mark.base);
        return !letters.empty() && isUpper(letters.front().sign);
    };
    if (term.first.kind == SignatureKind::letters && upper(term.first) != upper(last)) {
        m_out.assumptions.push_back(
            {"'" + range + "' is taken as one series though its ends differ in case",
             Ground::formula});
    }
}

} // namespace headcap::core
