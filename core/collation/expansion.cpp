#include "core/collation/expansion.h"

#include <algorithm>
#include <string>
#include <utility>

namespace headcap::core {
namespace {

constexpr int kMostGatherings = 5'000;

void insertSorted(std::vector<int>& positions, int position) {
    const auto at = std::lower_bound(positions.begin(), positions.end(), position);
    if (at == positions.end() || *at != position) {
        positions.insert(at, position);
    }
}

void erase(std::vector<int>& positions, int position) {
    positions.erase(std::remove(positions.begin(), positions.end(), position), positions.end());
}

class Expander {
public:
    Expander(const Terms& terms, const TermReading& reading) : m_terms(terms), m_reading(reading) {}

    Expansion run() {
        constexpr std::size_t kUsualRange = 24; // gatherings of a term: an alphabet
        m_out.makeUp.gatherings.reserve(
            std::min<std::size_t>(m_terms.terms.size() * kUsualRange, 2'000));
        for (std::size_t i = 0; i < m_terms.terms.size(); ++i) {
            const Term& term = m_terms.terms[i];
            lay(term, countsOf(i), std::nullopt);
            m_out.makeUp.continues = m_out.makeUp.continues || term.continues;
        }
        prose();
        order();
        renumberParts();
        return std::move(m_out);
    }

private:
    // The counts printed, or under the carrying reading those of the next term that has some.
    std::vector<int> countsOf(std::size_t index) const {
        const std::vector<Term>& all = m_terms.terms;
        while (m_reading.carried && all[index].counts.empty() && all[index].only.empty() &&
               index + 1 < all.size() && all[index + 1].part == all[index].part) {
            ++index;
        }
        return all[index].counts;
    }

    void lay(const Term& term, std::vector<int> counts, std::optional<Inside> inside) {
        const std::size_t from = m_out.makeUp.gatherings.size();
        Gathering model;
        model.part = term.part;
        model.inside = inside;
        model.singletons = term.singletons;
        const bool oneLeaf = term.form == CountForm::plain && !term.last && counts.size() == 1 &&
                             counts.front() > 1 && (!m_reading.plainAreCounts || inside);
        if (oneLeaf) {
            single(term, {counts.front()}, true, model);
        } else if (!term.only.empty()) {
            single(term, term.only, term.singletons, model);
        } else {
            series(term, std::move(counts), model);
        }
        for (const LeafChange& change : term.changes) {
            apply(change, from);
        }
    }

    // π1,2 P4–8 "gg3.4": just these leaves. A fold of two gives the size of its gathering.
    void single(const Term& term, std::vector<int> leaves, bool singletons, Gathering model) {
        std::sort(leaves.begin(), leaves.end());
        leaves.erase(std::unique(leaves.begin(), leaves.end()), leaves.end());
        model.signature = marked(term.first, term.allInferred);
        model.singletons = singletons;
        model.called =
            !singletons && leaves.size() == 2 ? leaves.front() + leaves.back() - 1 : leaves.back();
        if (leaves.size() == 1) {
            model.singletons = model.called > 1;
        }
        if (static_cast<int>(leaves.size()) != model.called) {
            model.only = std::move(leaves);
        }
        add(std::move(model), term.at);
    }

    void series(const Term& term, std::vector<int> counts, const Gathering& model) {
        std::vector<Signature> marks = marksOf(term);
        const bool leafRange = m_reading.leafRanges && term.last && term.form == CountForm::plain;
        for (std::size_t i = 0; i < marks.size(); ++i) {
            Gathering one = model;
            one.signature = std::move(marks[i]);
            const bool last = i + 1 == marks.size();
            if (leafRange) {
                one.called = last ? counts.back() : m_reading.unknownCount;
                one.singletons = last;
            } else {
                one.called = counts.empty() ? 0 : counts[i % counts.size()];
                one.called = one.called == 0 ? m_reading.unknownCount : one.called;
            }
            if (!add(std::move(one), term.at)) {
                return;
            }
        }
    }

    Signature marked(Signature mark, bool inferred) const {
        mark.inferred = mark.inferred || inferred;
        return mark;
    }

    std::vector<Signature> marksOf(const Term& term) {
        std::vector<Signature> out;
        if (!term.last) {
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
                report(term.at, "after '" + toText(out.back()) +
                                    "' a leaf count is expected, found '" +
                                    toUtf8(letters[1].sign) + "'");
            } else {
                out.push_back(marked(term.first, term.allInferred));
            }
            return out;
        }
        Signature last = *term.last;
        const Alphabet alphabet = alphabetFor(term);
        const std::optional<int> from = ordinal(term.first, alphabet);
        std::optional<int> to = ordinal(last, alphabet);
        const std::string range = toText(term.first) + "-" + toText(last);
        if (term.statedGatherings > 0 && term.statedGatherings <= kMostGatherings) {
            return stated(term);
        }
        if (term.first.kind == SignatureKind::letters && last.multiplier == 1 &&
            term.first.multiplier > 1 && from && to && *to < *from) {
            // "2A-G": the end keeps the start's multiplier.
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
            return out;
        }
        if (!to) {
            Signature whole = last;
            whole.base = last.base.substr(0, last.base.size() - junk.size());
            to = ordinal(whole, alphabet);
            report(term.at,
                   "after '" + toText(whole) + "' a leaf count is expected, found '" + junk + "'");
            last = whole;
        }
        if (!to || *to < *from || *to - *from >= kMostGatherings) {
            report(term.at, "'" + range + "' runs backwards");
            return out;
        }
        caseNote(term, last, range);
        for (int place = *from; place <= *to; ++place) {
            std::optional<Signature> mark = place == *from ? marked(term.first, term.allInferred)
                                            : place == *to
                                                ? marked(last, term.allInferred)
                                                : signatureAt(term.first, place, alphabet);
            if (!mark) {
                break;
            }
            if (place != *from && place != *to) {
                mark->inferred = term.allInferred;
            }
            if (place == *to) {
                mark->prefix = mark->prefix.empty() ? term.first.prefix : mark->prefix;
                mark->suffix = mark->suffix.empty() ? term.first.suffix : mark->suffix;
            }
            out.push_back(std::move(*mark));
        }
        return out;
    }

    Alphabet alphabetFor(const Term& term) const {
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
    static std::string trailingJunk(const Signature& last) {
        const std::vector<Glyph> letters = toGlyphs(last.base);
        if (last.kind != SignatureKind::letters || letters.size() != 2) {
            return {};
        }
        return last.base.substr(letters[1].at);
    }

    std::vector<Signature> stated(const Term& term) {
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

    void caseNote(const Term& term, const Signature& last, const std::string& range) {
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

    bool add(Gathering gathering, std::size_t at) {
        const int leaves = idealLeaves(gathering).value_or(0);
        if (m_leaves + leaves > kMostLeavesInBook ||
            m_out.makeUp.gatherings.size() >= static_cast<std::size_t>(kMostGatherings)) {
            report(at, "more leaves are called for than a book can have");
            return false;
        }
        m_leaves += leaves;
        m_out.makeUp.gatherings.push_back(std::move(gathering));
        return true;
    }

    // The gathering a leaf is named by: the latest so far with its mark, else with the mark of
    // another series; a leaf without a mark is of the term's last gathering.
    std::optional<std::size_t> find(const LeafTarget& target) const {
        const std::vector<Gathering>& all = m_out.makeUp.gatherings;
        if (!target.signature) {
            return all.empty() ? std::nullopt : std::optional(all.size() - 1);
        }
        for (const auto same : {sameMark, sameMarkUnprefixed, sameMarkOtherCase}) {
            std::optional<std::size_t> misfit;
            for (std::size_t i = all.size(); i-- > 0;) {
                if (!same(all[i].signature, *target.signature)) {
                    continue;
                }
                const bool fits = all[i].called == 0 || target.leaf <= all[i].called;
                if (fits) {
                    return i;
                }
                misfit = misfit ? misfit : std::optional(i);
            }
            if (misfit) {
                return misfit;
            }
        }
        return std::nullopt;
    }

    void apply(const LeafChange& change, std::size_t from) {
        if (change.kind == LeafChange::Kind::added) {
            insert(change, from);
            return;
        }
        for (const LeafTarget& target : change.leaves) {
            const std::optional<std::size_t> index = find(target);
            if (!index) {
                absent(change, target);
                continue;
            }
            Gathering& gathering = m_out.makeUp.gatherings[*index];
            if (target.leaf == 0 && change.kind != LeafChange::Kind::lacking) {
                report(change.at, "which leaf of '" + name(target) + "' is meant is not said");
                continue;
            }
            if (target.leaf == 0) {
                for (int leaf = 1; leaf <= gathering.called; ++leaf) {
                    insertSorted(gathering.lacking, leaf);
                }
                continue;
            }
            const bool outside =
                gathering.called > 0 &&
                (target.leaf > gathering.called ||
                 (!gathering.only.empty() &&
                  !std::binary_search(gathering.only.begin(), gathering.only.end(), target.leaf)));
            if (outside && gathering.signature.quoted) {
                continue; // the change repeats the quoted mark
            }
            if (outside) {
                report(change.at, "'" + name(target) + "' is named, but the gathering has " +
                                      std::to_string(gathering.called) + " leaves");
                continue;
            }
            mark(change, gathering, target.leaf);
        }
    }

    void mark(const LeafChange& change, Gathering& gathering, int leaf) {
        switch (change.kind) {
        case LeafChange::Kind::cancelled:
            insertSorted(gathering.cancelled, leaf);
            erase(gathering.lacking, leaf);
            erase(gathering.blank, leaf);
            m_out.perhapsBlank += change.perhapsBlank ? 1 : 0;
            break;
        case LeafChange::Kind::lacking:
            insertSorted(gathering.lacking, leaf);
            break;
        case LeafChange::Kind::replaced:
            insertSorted(gathering.replaced, leaf);
            break;
        case LeafChange::Kind::blank:
            insertSorted(gathering.blank, leaf);
            break;
        case LeafChange::Kind::added:
            break;
        }
    }

    void absent(const LeafChange& change, const LeafTarget& target) {
        if (change.kind == LeafChange::Kind::lacking && target.leaf == 0) {
            m_out.assumptions.push_back({"'" + name(target) +
                                             "' is said to be missing, but no gathering "
                                             "is signed so: not counted",
                                         Ground::formula});
            return;
        }
        report(change.at, "'" + name(target) + "' is named, but no gathering is signed so");
    }

    static std::string name(const LeafTarget& target) {
        return (target.signature ? toText(*target.signature) : std::string()) +
               (target.leaf > 0 ? std::to_string(target.leaf) : std::string());
    }

    void insert(const LeafChange& change, std::size_t from) {
        std::vector<Gathering>& all = m_out.makeUp.gatherings;
        if (from >= all.size()) {
            return;
        }
        std::size_t host = all.size() - 1;
        while (host > from && all[host].inside) {
            --host;
        }
        int after = 0;
        if (!change.leaves.empty()) {
            const std::optional<std::size_t> named = find(change.leaves.front());
            if (!named) {
                absent(change, change.leaves.front());
            } else {
                host = *named;
                after = change.leaves.front().leaf;
            }
        }
        after = after == 0 ? all[host].called : after;
        if (change.addedCount > 0) {
            if (m_leaves + change.addedCount > kMostLeavesInBook) {
                report(change.at, "more leaves are called for than a book can have");
                return;
            }
            m_leaves += change.addedCount;
            all[host].added.push_back(
                {after, change.addedCount, change.addedConjugate && change.addedCount > 1});
        }
        for (const Term& term : change.addedTerms) {
            const int part = all[host].part;
            const std::size_t first = all.size();
            lay(term, term.counts, Inside{host, after});
            for (std::size_t i = first; i < m_out.makeUp.gatherings.size(); ++i) {
                m_out.makeUp.gatherings[i].part = part;
            }
        }
    }

    // What the words around the formula say of blanks.
    void prose() {
        std::vector<Gathering>& all = m_out.makeUp.gatherings;
        for (const LeafTarget& target : m_terms.blanks) {
            LeafChange change;
            change.kind = LeafChange::Kind::blank;
            change.leaves = {target};
            apply(change, 0);
        }
        if (!all.empty()) {
            blankFrom(all.front(), 1, 1, m_terms.firstBlank ? 1 : 0);
            blankFrom(all.back(), all.back().called, -1, m_terms.lastBlank);
        }
    }

    // Blanks counted from one end of a gathering, over what was taken out of it.
    void blankFrom(Gathering& gathering, int leaf, int step, int count) {
        const std::vector<int>& out = gathering.cancelled;
        for (; count > 0 && leaf >= 1 && leaf <= gathering.called && gathering.only.empty();
             leaf += step) {
            if (!std::binary_search(out.begin(), out.end(), leaf)) {
                insertSorted(gathering.blank, leaf);
                --count;
            }
        }
    }

    // Inserted gatherings stand right behind their host, whatever the text names last.
    void order() {
        std::vector<Gathering>& all = m_out.makeUp.gatherings;
        if (std::none_of(all.begin(), all.end(), [](const Gathering& one) { return one.inside; })) {
            return;
        }
        std::vector<std::vector<std::size_t>> guests(all.size());
        std::vector<std::size_t> todo;
        for (std::size_t i = all.size(); i-- > 0;) {
            (all[i].inside ? guests[all[i].inside->host] : todo).push_back(i);
        }
        std::vector<Gathering> sorted;
        std::vector<std::size_t> place(all.size());
        while (!todo.empty()) {
            const std::size_t next = todo.back();
            todo.pop_back();
            place[next] = sorted.size();
            sorted.push_back(std::move(all[next]));
            todo.insert(todo.end(), guests[next].begin(), guests[next].end());
        }
        for (Gathering& gathering : sorted) {
            if (gathering.inside) {
                gathering.inside->host = place[gathering.inside->host];
            }
        }
        all = std::move(sorted);
    }

    void renumberParts() {
        int part = -1;
        int before = -1;
        for (Gathering& gathering : m_out.makeUp.gatherings) {
            part += gathering.part != before ? 1 : 0;
            before = gathering.part;
            gathering.part = part;
        }
    }

    void report(std::size_t at, std::string message) {
        if (m_out.problems.size() < 100) {
            m_out.problems.push_back({at, std::move(message)});
        }
    }

    const Terms& m_terms;
    const TermReading& m_reading;
    Expansion m_out;
    int m_leaves = 0;
};

} // namespace

Expansion expand(const Terms& terms, const TermReading& reading) {
    return Expander(terms, reading).run();
}

} // namespace headcap::core
