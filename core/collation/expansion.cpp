#include "core/collation/expansion.h"

#include <algorithm>
#include <utility>

#include "core/collation/expander.h"

namespace headcap::core {

Expansion Expander::run() {
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

// The counts printed, or under the carrying reading those of the next term that has some.
std::vector<int> Expander::countsOf(std::size_t index) const {
    const std::vector<Term>& all = m_terms.terms;
    while (m_reading.carried && all[index].counts.empty() && all[index].only.empty() &&
           index + 1 < all.size() && all[index + 1].part == all[index].part) {
        ++index;
    }
    return all[index].counts;
}

void Expander::lay(const Term& term, std::vector<int> counts, std::optional<Inside> inside) {
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
void Expander::single(const Term& term, std::vector<int> leaves, bool singletons, Gathering model) {
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

void Expander::series(const Term& term, std::vector<int> counts, const Gathering& model) {
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

bool Expander::add(Gathering gathering, std::size_t at) {
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

// Inserted gatherings stand right behind their host, whatever the text names last.
void Expander::order() {
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

void Expander::renumberParts() {
    int part = -1;
    int before = -1;
    for (Gathering& gathering : m_out.makeUp.gatherings) {
        part += gathering.part != before ? 1 : 0;
        before = gathering.part;
        gathering.part = part;
    }
}

void Expander::report(std::size_t at, std::string message) {
    if (m_out.problems.size() < 100) {
        m_out.problems.push_back({at, std::move(message)});
    }
}

Expansion expand(const Terms& terms, const TermReading& reading) {
    return Expander(terms, reading).run();
}

} // namespace headcap::core
