#include "core/collation/bound_order.h"

#include <algorithm>

#include "core/collation/finding_places.h"
#include "core/collation/plates.h"

namespace headcap::core {

std::vector<std::size_t> boundOrder(const LaidBook& book,
                                    const std::vector<CollationFinding>& findings) {
    const auto gone = leavesFound(book, findings, CollationKind::lacking);
    std::vector<std::size_t> order;
    for (std::size_t leaf = 0; leaf < book.leaves.size(); ++leaf) {
        if (!std::ranges::binary_search(gone, leaf)) {
            order.push_back(leaf);
        }
    }
    for (const CollationFinding& finding : findings) {
        const auto where = parsePlatePlace(finding.found);
        const bool isPlaced = finding.kind == CollationKind::misbound && where && where->where;
        const auto target = isPlaced
                                ? locate(book, *where->where)
                                : tl::expected<LeafPlace, PlaceError>{tl::unexpected(PlaceError{})};
        const auto leaves = leavesAt(book, finding.place);
        if (!target || leaves.empty() || std::ranges::binary_search(leaves, target->leaf)) {
            continue;
        }
        std::erase_if(order,
                      [&](std::size_t leaf) { return std::ranges::binary_search(leaves, leaf); });
        auto at = std::ranges::find(order, target->leaf);
        if (at != order.end() && where->placing != PlatePlacing::before) {
            ++at;
        }
        order.insert(at, leaves.begin(), leaves.end());
    }
    return order;
}

std::vector<LeafMove> movesFor(const LaidBook& book,
                               const std::vector<CollationFinding>& findings) {
    return movesToOrder(boundOrder(book, findings),
                        leavesFound(book, findings, CollationKind::misbound));
}

} // namespace headcap::core
