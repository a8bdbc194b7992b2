#include "core/collation/gathering_picture.h"

#include <algorithm>

#include "core/collation/leaf_places.h"

namespace headcap::core {
namespace {

std::optional<LeafState> stateSaid(CollationKind kind) {
    switch (kind) {
    case CollationKind::lacking:
        return LeafState::lacking;
    case CollationKind::loose:
    case CollationKind::detached:
        return LeafState::loose;
    case CollationKind::misbound:
        return LeafState::misbound;
    case CollationKind::facsimile:
        return LeafState::facsimile;
    case CollationKind::supplied:
        return LeafState::supplied;
    default:
        return std::nullopt;
    }
}

// The state of each leaf of the book, by the formula, the findings and the leaves supplied.
std::vector<LeafState> statesOf(const LaidBook& book, const std::vector<CollationFinding>& findings,
                                const std::vector<Facsimile>& facsimiles) {
    std::vector<LeafState> states;
    for (const Leaf& leaf : book.leaves) {
        states.push_back(leaf.lacking ? LeafState::lacking : LeafState::present);
    }
    const auto mark = [&](const std::string& place, LeafState state) {
        const auto set = parseLeafSet(place);
        const auto located =
            set ? locate(book, *set) : tl::expected<LocatedSet, PlaceError>{LocatedSet{}};
        if (located) {
            for (const std::size_t leaf : located->leaves) {
                states[leaf] = state;
            }
        }
    };
    for (const CollationFinding& finding : findings) {
        if (const auto state = stateSaid(finding.kind)) {
            mark(finding.place, *state);
        }
    }
    for (const Facsimile& leaf : facsimiles) {
        mark(leaf.place,
             leaf.kind == SuppliedKind::facsimile ? LeafState::facsimile : LeafState::supplied);
    }
    return states;
}

// Stubs stand where the cancelled leaves stood; conjugates behind them move along.
void addStubs(PicturedGathering& picture, const Gathering& gathering,
              const std::vector<int>& positions) {
    std::vector<int> at = positions;
    for (const int cancelled : gathering.cancelled) {
        const auto before =
            std::find_if(at.begin(), at.end(), [&](int position) { return position > cancelled; });
        const auto index = static_cast<std::size_t>(before - at.begin());
        for (PicturedLeaf& leaf : picture.leaves) {
            if (leaf.conjugate && *leaf.conjugate >= index) {
                ++*leaf.conjugate;
            }
        }
        picture.leaves.insert(
            picture.leaves.begin() + static_cast<std::ptrdiff_t>(index),
            {.ref = picture.signature + std::to_string(cancelled), .state = LeafState::cancelled});
        at.insert(before, cancelled);
    }
}

} // namespace

bool PicturedGathering::isWhole() const {
    return std::all_of(leaves.begin(), leaves.end(), [](const PicturedLeaf& leaf) {
        return leaf.state == LeafState::present || leaf.state == LeafState::cancelled;
    });
}

std::vector<PicturedGathering> picturesOf(const MakeUp& makeUp,
                                          const std::vector<CollationFinding>& findings,
                                          const std::vector<Facsimile>& facsimiles) {
    const LaidBook book = layBook(makeUp);
    const auto states = statesOf(book, findings, facsimiles);
    std::vector<PicturedGathering> pictures(makeUp.gatherings.size());
    std::vector<std::vector<int>> positions(makeUp.gatherings.size());
    std::vector<std::size_t> indexInGathering;
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        const Leaf& leaf = book.leaves[i];
        auto& picture = pictures[leaf.gathering];
        indexInGathering.push_back(picture.leaves.size());
        positions[leaf.gathering].push_back(leaf.position);
        picture.leaves.push_back({.ref = toText(LeafRef{refOf(makeUp, leaf)}),
                                  .state = states[i],
                                  .isBlank = leaf.blank});
    }
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        const Leaf& leaf = book.leaves[i];
        if (leaf.conjugate && book.leaves[*leaf.conjugate].gathering == leaf.gathering) {
            pictures[leaf.gathering].leaves[indexInGathering[i]].conjugate =
                indexInGathering[*leaf.conjugate];
        }
    }
    for (std::size_t g = 0; g < pictures.size(); ++g) {
        pictures[g].signature = toText(makeUp.gatherings[g].signature);
        addStubs(pictures[g], makeUp.gatherings[g], positions[g]);
    }
    return pictures;
}

} // namespace headcap::core
