#include "core/collation/folds.h"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

namespace headcap::core {
namespace {

bool holds(const std::vector<std::size_t>& leaves, std::size_t leaf) {
    return std::ranges::find(leaves, leaf) != leaves.end();
}

// Leaves of the gathering itself by their place in it; none where one was taken out.
std::vector<std::optional<std::size_t>> byPosition(const LaidBook& book, std::size_t gathering) {
    const Gathering& one = book.makeUp.gatherings[gathering];
    std::vector<std::optional<std::size_t>> at(static_cast<std::size_t>(one.called) + 1);
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        const Leaf& leaf = book.leaves[i];
        if (leaf.gathering == gathering && leaf.added == 0 && !leaf.replaced) {
            at[static_cast<std::size_t>(leaf.position)] = i;
        }
    }
    return at;
}

// Position of the other half.
int mate(int position, int called) {
    return called + 1 - position;
}

} // namespace

std::optional<int> leavesOfSheet(std::string_view format) {
    const std::size_t from = format.find_first_of("0123456789");
    if (from == std::string_view::npos) {
        return std::nullopt;
    }
    int leaves = 0;
    const char* end = format.data() + format.size();
    const auto read = std::from_chars(format.data() + from, end, leaves);
    const bool isFormat = read.ec == std::errc{} && leaves >= 2 && leaves <= 128 && leaves % 2 == 0;
    return isFormat ? std::optional{leaves} : std::nullopt;
}

LeafFolds foldsOf(const LaidBook& book, std::string_view format, std::size_t leaf) {
    LeafFolds folds;
    const Leaf& one = book.leaves[leaf];
    const Gathering& gathering = book.makeUp.gatherings[one.gathering];
    folds.conjugate = one.conjugate;
    if (gathering.called % 2 != 0 || gathering.singletons || !gathering.only.empty()) {
        return folds;
    }
    const auto at = byPosition(book, one.gathering);
    const int half = gathering.called / 2;
    const auto left = at[static_cast<std::size_t>(half)];
    if (half > 0 && left && book.leaves[*left].conjugate) {
        folds.middle = {*left, *book.leaves[*left].conjugate};
    }
    const auto perSheet = leavesOfSheet(format);
    if (!perSheet || one.added > 0 || one.replaced || gathering.called % *perSheet != 0) {
        return folds;
    }
    const int outer = std::min(one.position, mate(one.position, gathering.called));
    const int first = (outer - 1) / (*perSheet / 2) * (*perSheet / 2) + 1;
    for (int position = 1; position <= gathering.called; ++position) {
        const int folded = std::min(position, mate(position, gathering.called));
        const auto found = at[static_cast<std::size_t>(position)];
        if (found && folded >= first && folded < first + *perSheet / 2) {
            folds.sheet.push_back(*found);
        }
    }
    return folds;
}

std::vector<FoldHint> foldHints(const LaidBook& book, const std::vector<std::size_t>& lost,
                                const std::vector<std::size_t>& loose) {
    std::vector<FoldHint> hints;
    for (std::size_t leaf = 0; leaf < book.leaves.size(); ++leaf) {
        const auto other = book.leaves[leaf].conjugate;
        if (!other || holds(lost, leaf) || holds(loose, leaf)) {
            continue;
        }
        if (holds(lost, *other) || holds(loose, *other)) {
            hints.push_back({leaf, *other, holds(lost, *other)});
        }
    }
    return hints;
}

std::string sentenceOf(const LaidBook& book, const FoldHint& hint) {
    const std::string leaf = leafText(book, hint.leaf);
    const std::string other = leafText(book, hint.other);
    return hint.otherIsLost
               ? fmt::format(
                     "Leaf {} is lacking: {}, the other half of its fold, may be loose, or held by "
                     "a stub or paste alone; see whether it holds.",
                     other, leaf)
               : fmt::format(
                     "Leaf {} is loose: its fold is broken; see whether {}, the other half, is "
                     "there and holds.",
                     other, leaf);
}

std::string leafText(const LaidBook& book, std::size_t leaf) {
    return toText(LeafRef{refOf(book.makeUp, book.leaves[leaf])});
}

} // namespace headcap::core
