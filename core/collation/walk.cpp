#include "core/collation/walk.h"

#include <algorithm>

#include "core/collation/collate.h"
#include "core/collation/leaf_expectation.h"

namespace headcap::core {
namespace {

// Which leaf of the book an entry is of: by its place in order, which the make-up of the walk
// fixes.
std::optional<std::size_t> leafOf(const LaidBook& book, const WalkEntry& entry) {
    const bool isThere =
        entry.position >= 1 && static_cast<std::size_t>(entry.position) <= book.leaves.size();
    return isThere ? std::optional{static_cast<std::size_t>(entry.position) - 1} : std::nullopt;
}

void count(WalkState& state) {
    for (const LeafWalked& leaf : state.leaves) {
        switch (leaf.looked) {
        case Looked::singly:
            ++state.singly;
            break;
        case Looked::whole:
            ++state.whole;
            break;
        case Looked::no:
            ++state.notLooked;
        }
    }
}

std::string part(const LaidBook& book, const std::vector<std::size_t>& leaves,
                 std::string_view words) {
    return leaves.empty() ? std::string{}
                          : toText(toLeafSet(book, leaves)) + " " + std::string{words};
}

bool readApart(const WalkEntry* a, const WalkEntry* b) {
    const auto differs = [](const std::string& one, const std::string& other) {
        return !one.empty() && !other.empty() && one != other;
    };
    return a != nullptr && b != nullptr &&
           (differs(a->signature, b->signature) || differs(a->rectoNumber, b->rectoNumber) ||
            differs(a->versoNumber, b->versoNumber));
}

} // namespace

WalkedBook walkedBook(std::string_view formula, std::string_view extent) {
    CollateAnswer answer =
        collate({.formula = std::string{formula}, .extent = std::string{extent}, .format = {}});
    return {{std::move(answer.makeUp), std::move(answer.leaves), std::move(answer.numbers), {}},
            std::move(answer.format)};
}

std::vector<WalkEntry> entriesOf(const Walk& walk, const std::vector<WalkEntry>& all) {
    std::vector<WalkEntry> entries;
    std::ranges::copy_if(all, std::back_inserter(entries),
                         [&](const WalkEntry& entry) { return entry.walk == walk.id; });
    std::ranges::sort(entries, {}, &WalkEntry::id);
    return entries;
}

WalkState stateOf(const LaidBook& book, const std::vector<WalkEntry>& entries) {
    WalkState state;
    state.leaves.resize(book.leaves.size());
    std::optional<std::size_t> last;
    for (const WalkEntry& entry : entries) {
        const auto leaf = leafOf(book, entry);
        if (!leaf) {
            continue;
        }
        if (entry.scope == WalkScope::leaf) {
            LeafWalked& one = state.leaves[*leaf];
            one.asExpected = (one.looked != Looked::singly || one.asExpected) && entry.asExpected;
            one.looked = Looked::singly;
            one.read = &entry;
            last = leaf;
            continue;
        }
        last = lastOfGathering(book, *leaf);
        for (std::size_t i = *leaf; i <= *last; ++i) {
            state.leaves[i].looked = std::max(state.leaves[i].looked, Looked::whole);
        }
    }
    count(state);
    state.here = last                  ? nextNotLooked(state, *last)
                 : book.leaves.empty() ? std::nullopt
                                       : std::optional<std::size_t>{0};
    return state;
}

std::optional<std::size_t> nextNotLooked(const WalkState& state, std::size_t leaf) {
    const auto isOpen = [](const LeafWalked& one) { return one.looked == Looked::no; };
    const auto& leaves = state.leaves;
    const auto from =
        leaves.begin() + static_cast<std::ptrdiff_t>(std::min(leaf + 1, leaves.size()));
    auto next = std::find_if(from, leaves.end(), isOpen);
    if (next == leaves.end()) {
        next = std::find_if(leaves.begin(), from, isOpen);
        if (next == from) {
            return std::nullopt;
        }
    }
    return static_cast<std::size_t>(next - leaves.begin());
}

WalkCoverage coverageOf(const std::vector<WalkState>& states, std::size_t leaves) {
    WalkCoverage out;
    for (std::size_t leaf = 0; leaf < leaves; ++leaf) {
        Looked most = Looked::no;
        for (const WalkState& state : states) {
            if (leaf < state.leaves.size()) {
                most = std::max(most, state.leaves[leaf].looked);
            }
        }
        (most == Looked::singly  ? out.singly
         : most == Looked::whole ? out.whole
                                 : out.notLooked)
            .push_back(leaf);
    }
    return out;
}

std::string coverageText(const LaidBook& book, const WalkCoverage& coverage) {
    if (coverage.whole.empty() && coverage.notLooked.empty()) {
        return "every leaf looked at singly";
    }
    if (coverage.singly.empty() && coverage.whole.empty()) {
        return "no leaf looked at";
    }
    std::string text;
    for (const std::string& one :
         {part(book, coverage.singly, "leaf by leaf"), part(book, coverage.whole, "passed whole"),
          part(book, coverage.notLooked, "not looked at")}) {
        text += (text.empty() || one.empty() ? "" : "; ") + one;
    }
    return text;
}

std::vector<std::size_t> disagreements(const WalkState& a, const WalkState& b) {
    std::vector<std::size_t> out;
    for (std::size_t leaf = 0; leaf < std::min(a.leaves.size(), b.leaves.size()); ++leaf) {
        const LeafWalked& one = a.leaves[leaf];
        const LeafWalked& other = b.leaves[leaf];
        if (one.looked != Looked::no && other.looked != Looked::no &&
            (one.asExpected != other.asExpected || readApart(one.read, other.read))) {
            out.push_back(leaf);
        }
    }
    return out;
}

} // namespace headcap::core
