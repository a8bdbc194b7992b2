#include "core/audit/same_leaves.h"

#include <algorithm>

#include "core/collation/leaf_ref.h"
#include "core/values/fold.h"

namespace headcap::core {
namespace {

// First and last leaf of a span within one gathering; nothing of any other span.
std::optional<std::pair<SignedLeaf, SignedLeaf>> inOneGathering(const LeafSpan& span) {
    const auto* first = std::get_if<SignedLeaf>(&span.first);
    const auto* last = span.last ? std::get_if<SignedLeaf>(&*span.last) : first;
    if (first == nullptr || last == nullptr || !(first->signature == last->signature)) {
        return std::nullopt;
    }
    return std::pair{*first, *last};
}

LeafRef withoutSide(LeafRef ref) {
    std::visit(
        [](auto& place) {
            if constexpr (requires { place.side; }) {
                place.side = Side::both;
            }
        },
        ref);
    return ref;
}

bool mayShare(const LeafSpan& a, const LeafSpan& b) {
    const auto one = inOneGathering(a);
    const auto other = inOneGathering(b);
    if (one && other) {
        return one->first.signature == other->first.signature &&
               one->first.leaf <= other->second.leaf && other->first.leaf <= one->second.leaf;
    }
    if (!a.last && !b.last) {
        return withoutSide(a.first) == withoutSide(b.first);
    }
    return a.first.index() == b.first.index();
}

bool mayShare(const LeafSetItem& a, const LeafSetItem& b) {
    const auto* one = std::get_if<LeafSpan>(&a);
    const auto* other = std::get_if<LeafSpan>(&b);
    return one == nullptr || other == nullptr || mayShare(*one, *other);
}

bool standsIn(const std::string& word, const std::string& text) {
    const auto isPart = [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c & 0x80) != 0;
    };
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || !isPart(text[at - 1])) && (end == text.size() || !isPart(text[end]))) {
            return true;
        }
    }
    return false;
}

} // namespace

bool mayShareLeaves(const std::string& a, const std::string& b) {
    const auto one = parseLeafSet(a);
    const auto other = parseLeafSet(b);
    if (one && other) {
        return std::ranges::any_of(one->items, [&](const LeafSetItem& item) {
            return std::ranges::any_of(
                other->items, [&](const LeafSetItem& further) { return mayShare(item, further); });
        });
    }
    const std::string first = foldForSearch(a);
    const std::string second = foldForSearch(b);
    return !first.empty() && !second.empty() &&
           (standsIn(first, second) || standsIn(second, first));
}

} // namespace headcap::core
