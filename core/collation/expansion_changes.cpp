#include <algorithm>

#include "core/collation/expander.h"

namespace headcap::core {
namespace {

void insertSorted(std::vector<int>& positions, int position) {
    const auto at = std::lower_bound(positions.begin(), positions.end(), position);
    if (at == positions.end() || *at != position) {
        positions.insert(at, position);
    }
}

void erase(std::vector<int>& positions, int position) {
    positions.erase(std::remove(positions.begin(), positions.end(), position), positions.end());
}

} // namespace

// The gathering a leaf is named by: the latest so far with its mark, else with the mark of
// another series; a leaf without a mark is of the term's last gathering.
std::optional<std::size_t> Expander::find(const LeafTarget& target) const {
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

void Expander::apply(const LeafChange& change, std::size_t from) {
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

void Expander::mark(const LeafChange& change, Gathering& gathering, int leaf) {
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

void Expander::absent(const LeafChange& change, const LeafTarget& target) {
    if (change.kind == LeafChange::Kind::lacking && target.leaf == 0) {
        m_out.assumptions.push_back({"'" + name(target) +
                                         "' is said to be missing, but no gathering "
                                         "is signed so: not counted",
                                     Ground::formula});
        return;
    }
    report(change.at, "'" + name(target) + "' is named, but no gathering is signed so");
}

std::string Expander::name(const LeafTarget& target) {
    return (target.signature ? toText(*target.signature) : std::string()) +
           (target.leaf > 0 ? std::to_string(target.leaf) : std::string());
}

void Expander::insert(const LeafChange& change, std::size_t from) {
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
void Expander::prose() {
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
void Expander::blankFrom(Gathering& gathering, int leaf, int step, int count) {
    const std::vector<int>& out = gathering.cancelled;
    for (; count > 0 && leaf >= 1 && leaf <= gathering.called && gathering.only.empty();
         leaf += step) {
        if (!std::binary_search(out.begin(), out.end(), leaf)) {
            insertSorted(gathering.blank, leaf);
            --count;
        }
    }
}

} // namespace headcap::core
