#include "core/collation/finding_places.h"

#include <algorithm>

namespace headcap::core {

std::vector<std::size_t> leavesAt(const LaidBook& book, std::string_view place) {
    const auto set = parseLeafSet(place);
    auto located = set ? locate(book, *set) : tl::expected<LocatedSet, PlaceError>{LocatedSet{}};
    return located ? std::move(located->leaves) : std::vector<std::size_t>{};
}

std::vector<std::size_t> leavesFound(const LaidBook& book,
                                     const std::vector<CollationFinding>& findings,
                                     CollationKind kind) {
    std::vector<std::size_t> leaves;
    for (const CollationFinding& finding : findings) {
        if (finding.kind == kind) {
            const auto some = leavesAt(book, finding.place);
            leaves.insert(leaves.end(), some.begin(), some.end());
        }
    }
    std::ranges::sort(leaves);
    leaves.erase(std::unique(leaves.begin(), leaves.end()), leaves.end());
    return leaves;
}

} // namespace headcap::core
