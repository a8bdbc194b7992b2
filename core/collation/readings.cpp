#include "core/collation/readings.h"

#include <algorithm>
#include <array>
#include <string_view>

#include <fmt/format.h>

namespace headcap::core {
namespace {

// Sizes gatherings have; 8 first, the size most often left out.
constexpr std::array kSizes{8, 4, 6, 2, 12, 10, 16, 14, 18, 20, 24};
constexpr int kUsual = 8;

struct Candidate {
    TermReading reading;
    std::string note;
};

bool hasUnknown(const Terms& terms) {
    return std::any_of(terms.terms.begin(), terms.terms.end(), [](const Term& term) {
        return term.only.empty() &&
               (term.counts.empty() ||
                std::find(term.counts.begin(), term.counts.end(), 0) != term.counts.end());
    });
}

bool isPlainNumber(const Term& term) {
    return term.form == CountForm::plain && !term.last && term.counts.size() == 1 &&
           term.counts.front() > 1;
}

bool isPair(const Term& term) {
    return term.first.kind == SignatureKind::letters && !term.last &&
           toGlyphs(term.first.base).size() == 2;
}

bool isPlainRange(const Term& term) {
    return term.form == CountForm::plain && term.last && term.counts.size() == 1;
}

// Any other alphabet than that of 23 letters is made plain by its extra letters
// (DCRMR 6.215.44.35): without one among the marks, no range is stretched to fit.
bool marksLetter(const Terms& terms, std::string_view letter) {
    return std::any_of(terms.terms.begin(), terms.terms.end(), [&](const Term& term) {
        const auto is = [&](const Signature& mark) {
            return mark.kind == SignatureKind::letters && mark.base.size() == 1 &&
                   toLower(static_cast<unsigned char>(mark.base.front())) ==
                       static_cast<unsigned char>(letter.front());
        };
        return is(term.first) || (term.last && is(*term.last));
    });
}

std::vector<Candidate> candidates(const Terms& terms) {
    const TermReading plain = plainReading(terms);
    std::vector<Candidate> out{{plain, {}}};
    const auto any = [&](auto test) {
        return std::any_of(terms.terms.begin(), terms.terms.end(), test);
    };
    if (any(isPlainNumber)) {
        TermReading other = plain;
        other.plainAreCounts = !plain.plainAreCounts;
        out.push_back(
            {other, other.plainAreCounts
                        ? "numbers on the line after a signature are taken as leaf counts"
                        : "numbers on the line after a signature are taken as single leaves"});
    }
    if (any(isPair)) {
        TermReading other = plain;
        other.setTogether = true;
        out.push_back({other, "letters set together are taken as a gathering each"});
    }
    if (hasUnknown(terms)) {
        TermReading other = plain;
        other.carried = true;
        out.push_back(
            {other, "signatures without a leaf count are taken to share the count that follows"});
        if (any(isPair)) {
            other.setTogether = true;
            out.push_back({other,
                           "letters set together are taken as a gathering each, sharing the count "
                           "that follows"});
        }
    }
    if (any(isPlainRange)) {
        TermReading other = plain;
        other.leafRanges = true;
        out.push_back({other, "the number at the end of a range is taken as its last leaf"});
    }
    if (marksLetter(terms, "w")) {
        TermReading other = plain;
        other.alphabet = Alphabet::latin24;
        out.push_back({other, "the alphabet is taken to have W, 24 letters"});
    }
    if (marksLetter(terms, "j") || (marksLetter(terms, "u") && marksLetter(terms, "v"))) {
        TermReading other = plain;
        other.alphabet = Alphabet::latin26;
        out.push_back({other, "the alphabet is taken to have J, V and W, 26 letters"});
    }
    return out;
}

// What a candidate comes to: leaves under unknown counts of 8, and how often such a count stands.
struct Sum {
    int withUsual = 0;
    int unknown = 0;
    int blanks = 0;
    int perhapsBlank = 0;
    std::size_t problemsOpen = 0; // with the counts left open
};

Sum sumOf(const Terms& terms, TermReading reading) {
    Expansion read = expand(terms, reading);
    const int unknown = tally(read.makeUp).unknown;
    const std::size_t problems = read.problems.size();
    if (unknown > 0) {
        reading.unknownCount = kUsual;
        read = expand(terms, reading);
    }
    const LeafTally counted = tally(read.makeUp);
    return {counted.known, unknown, counted.blank, read.perhapsBlank, problems};
}

// The unknown count that makes the sum `leaves`; 0 where none is open and it fits; none otherwise.
std::optional<int> solve(const Sum& sum, int leaves) {
    if (sum.unknown == 0) {
        return sum.withUsual == leaves ? std::optional(0) : std::nullopt;
    }
    for (const int size : kSizes) {
        if (sum.withUsual + sum.unknown * (size - kUsual) == leaves) {
            return size;
        }
    }
    return std::nullopt;
}

} // namespace

TermReading plainReading(const Terms& terms) {
    TermReading out;
    out.plainAreCounts = !terms.raisedCounts;
    return out;
}

ConfirmedReading confirm(const Terms& terms, const std::vector<int>& leaves) {
    const std::vector<Candidate> all = candidates(terms);
    std::vector<Sum> sums;
    for (const Candidate& candidate : all) {
        sums.push_back(sumOf(terms, candidate.reading));
    }
    const auto taken = [&](std::size_t candidate, std::size_t extent, int count,
                           const char* manner) {
        ConfirmedReading out{all[candidate].reading, static_cast<int>(extent), {}};
        out.reading.unknownCount = count;
        if (!all[candidate].note.empty()) {
            out.notes.push_back(all[candidate].note);
        }
        if (count > 0) {
            out.notes.push_back(
                fmt::format("{} gathering{} without a printed leaf count {} taken to have {} "
                            "leaves{}",
                            sums[candidate].unknown, sums[candidate].unknown == 1 ? "" : "s",
                            sums[candidate].unknown == 1 ? "is" : "are", count, manner));
        }
        return out;
    };
    const auto sound = [&](std::size_t c, int count) {
        if (count == 0) {
            return c == 0 || sums[c].problemsOpen == 0;
        }
        TermReading reading = all[c].reading;
        reading.unknownCount = count;
        const std::size_t problems = expand(terms, reading).problems.size();
        return problems == 0 || (c == 0 && problems <= sums[c].problemsOpen);
    };
    // First what fits exactly, then what fits but for some of the blanks the statement names.
    for (const bool blanks : {false, true}) {
        for (std::size_t e = 0; e < leaves.size(); ++e) {
            for (std::size_t c = 0; c < all.size(); ++c) {
                for (int extra = blanks ? sums[c].blanks : 0; extra >= (blanks ? 1 : 0); --extra) {
                    const std::optional<int> count = solve(sums[c], leaves[e] + extra);
                    const bool usual = !blanks || !count || *count == 0 || *count == kUsual ||
                                       extra == sums[c].blanks;
                    if (count && usual && sound(c, *count)) {
                        return taken(c, e, *count, "");
                    }
                }
            }
        }
    }
    // Eight each, where the extent counts just the leaves that the formula takes out as "blank?".
    const Sum& plain = sums.front();
    if (!leaves.empty() && plain.unknown > 0 && plain.perhapsBlank > 0 &&
        plain.withUsual + plain.perhapsBlank == leaves.front() && sound(0, kUsual)) {
        return taken(0, 0, kUsual, ", the extent counting what is perhaps blank");
    }
    return {plainReading(terms), 0, {}};
}

} // namespace headcap::core
