#include "core/collation/leaf_places.h"

#include <algorithm>
#include <utility>

namespace headcap::core {
namespace {

using Located = tl::expected<LeafPlace, PlaceError>;

tl::unexpected<PlaceError> fail(PlaceProblem problem) {
    return tl::unexpected(PlaceError{problem, 0, {}});
}

Located only(std::vector<LeafPlace> found, PlaceProblem none) {
    if (found.empty()) {
        return fail(none);
    }
    if (found.size() > 1) {
        return tl::unexpected(PlaceError{PlaceProblem::severalPlaces, 0, std::move(found)});
    }
    return found.front();
}

Located locateSigned(const LaidBook& book, const SignedLeaf& ref) {
    std::vector<LeafPlace> found;
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        const Leaf& leaf = book.leaves[i];
        if (leaf.position == ref.leaf && leaf.added == ref.added &&
            sameMark(book.makeUp.gatherings[leaf.gathering].signature, ref.signature)) {
            found.push_back({i, ref.side});
        }
    }
    if (!found.empty()) {
        return only(std::move(found), PlaceProblem::noSuchLeaf);
    }
    PlaceProblem problem = PlaceProblem::noSuchGathering;
    for (const Gathering& gathering : book.makeUp.gatherings) {
        if (!sameMark(gathering.signature, ref.signature)) {
            continue;
        }
        const std::vector<int>& out = gathering.cancelled;
        problem = gathering.called == 0 ? PlaceProblem::sizeUnknown
                  : std::find(out.begin(), out.end(), ref.leaf) != out.end()
                      ? PlaceProblem::cancelled
                      : PlaceProblem::noSuchLeaf;
    }
    return fail(problem);
}

bool bears(const std::optional<LaidNumber>& laid, const PrintedNumber& number, bool folio) {
    return laid && laid->folio == folio && laid->number == number;
}

Located locatePage(const LaidBook& book, const PrintedNumber& number) {
    std::vector<LeafPlace> found;
    for (std::size_t i = 0; i < book.numbers.size(); ++i) {
        if (bears(book.numbers[i].recto, number, false)) {
            found.push_back({i, Side::recto});
        }
        if (bears(book.numbers[i].verso, number, false)) {
            found.push_back({i, Side::verso});
        }
    }
    return only(std::move(found), PlaceProblem::noSuchNumber);
}

Located locateFolio(const LaidBook& book, const FolioRef& ref) {
    std::vector<LeafPlace> found;
    for (std::size_t i = 0; i < book.numbers.size(); ++i) {
        if (bears(book.numbers[i].recto, ref.folio.number, true)) {
            found.push_back({i, ref.side});
        }
    }
    return only(std::move(found), PlaceProblem::noSuchNumber);
}

} // namespace

LaidBook layBook(MakeUp makeUp) {
    LaidBook out;
    out.leaves = leavesOf(makeUp);
    out.numbers.resize(out.leaves.size());
    out.makeUp = std::move(makeUp);
    return out;
}

Located locate(const LaidBook& book, const LeafRef& ref) {
    if (const auto* leaf = std::get_if<SignedLeaf>(&ref)) {
        return locateSigned(book, *leaf);
    }
    if (const auto* page = std::get_if<PageRef>(&ref)) {
        return locatePage(book, page->page.number);
    }
    if (const auto* folio = std::get_if<FolioRef>(&ref)) {
        return locateFolio(book, *folio);
    }
    return fail(PlaceProblem::notALeaf);
}

LeafRef asSigned(const LaidBook& book, const LeafPlace& place) {
    SignedLeaf out = refOf(book.makeUp, book.leaves[place.leaf]);
    out.side = place.side;
    return out;
}

std::optional<LeafRef> asPage(const LaidBook& book, const LeafPlace& place) {
    const LeafNumbers& numbers = book.numbers[place.leaf];
    const auto page = [](const std::optional<LaidNumber>& laid) {
        return laid && !laid->folio ? std::optional<LeafRef>(PageRef{{laid->number}})
                                    : std::nullopt;
    };
    if (place.side == Side::recto) {
        return page(numbers.recto);
    }
    if (place.side == Side::verso) {
        return page(numbers.verso);
    }
    const std::optional<LeafRef> recto = page(numbers.recto);
    return recto ? recto : page(numbers.verso);
}

std::optional<LeafRef> asFolio(const LaidBook& book, const LeafPlace& place) {
    const std::optional<LaidNumber>& recto = book.numbers[place.leaf].recto;
    if (!recto || !recto->folio) {
        return std::nullopt;
    }
    return FolioRef{{recto->number}, place.side};
}

} // namespace headcap::core
