#include "core/collation/leaf_expectation.h"

#include <algorithm>

namespace headcap::core {
namespace {

std::string markOf(const Gathering& gathering, const Leaf& leaf, const std::string& ref) {
    const bool isUnsigned = gathering.signature.kind == SignatureKind::unsignedLeaves ||
                            gathering.signature.inferred || leaf.added > 0 || leaf.blank;
    const bool isSigned = leaf.position * 2 <= gathering.called || leaf.position == 1;
    return isUnsigned || !isSigned ? std::string{} : ref;
}

std::string textOf(const std::optional<LaidNumber>& number) {
    return number ? toText(*number) : std::string{};
}

} // namespace

std::size_t firstOfGathering(const LaidBook& book, std::size_t leaf) {
    while (leaf > 0 && book.leaves[leaf - 1].gathering == book.leaves[leaf].gathering) {
        --leaf;
    }
    return leaf;
}

std::size_t lastOfGathering(const LaidBook& book, std::size_t leaf) {
    while (leaf + 1 < book.leaves.size() &&
           book.leaves[leaf + 1].gathering == book.leaves[leaf].gathering) {
        ++leaf;
    }
    return leaf;
}

LeafExpectation expectationAt(const LaidBook& book, std::string_view format, std::size_t leaf) {
    const Leaf& one = book.leaves[leaf];
    const Gathering& gathering = book.makeUp.gatherings[one.gathering];
    const LeafNumbers numbers = leaf < book.numbers.size() ? book.numbers[leaf] : LeafNumbers{};
    LeafExpectation out;
    out.ref = leafText(book, leaf);
    out.gathering = toText(gathering.signature);
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        if (book.leaves[i].gathering == one.gathering) {
            ++out.leaves;
            out.place += i < leaf ? 1 : 0;
        }
    }
    out.mark = markOf(gathering, one, out.ref);
    out.recto = textOf(numbers.recto);
    out.verso = textOf(numbers.verso);
    out.isFolio = numbers.recto && numbers.recto->folio;
    out.isBlank = one.blank;
    out.opensGathering = firstOfGathering(book, leaf) == leaf;
    out.closesGathering = lastOfGathering(book, leaf) == leaf;
    const LeafFolds folds = foldsOf(book, format, leaf);
    if (folds.conjugate) {
        out.conjugate = leafText(book, *folds.conjugate);
    }
    out.isMiddle = folds.middle && (folds.middle->first == leaf || folds.middle->second == leaf);
    for (const std::size_t other : folds.sheet) {
        if (other != leaf) {
            out.sheet.push_back(leafText(book, other));
        }
    }
    return out;
}

} // namespace headcap::core
