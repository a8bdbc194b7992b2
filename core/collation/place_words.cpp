#include "core/collation/place_words.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/collation/folds.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

std::string numbersOf(const LaidBook& book, const std::vector<std::size_t>& leaves) {
    const LeafPlace first{leaves.front(), Side::both};
    const LeafPlace last{leaves.back(), Side::verso};
    const bool isRun = leaves.back() - leaves.front() + 1 == leaves.size();
    if (!isRun) {
        return {};
    }
    if (const auto folio = asFolio(book, first)) {
        const auto to = asFolio(book, {leaves.back(), Side::both});
        return leaves.size() == 1 || !to ? toText(*folio)
                                         : toText(LeafSet{{LeafSpan{*folio, *to}}});
    }
    const auto from = asPage(book, first);
    const auto to = asPage(book, last);
    if (!from) {
        return {};
    }
    return !to || *to == *from ? toText(*from) : toText(LeafSet{{LeafSpan{*from, *to}}});
}

// One side of one leaf: its own number.
std::optional<std::string> sideOf(const LaidBook& book, const LeafSet& set) {
    const auto* span = set.items.size() == 1 ? std::get_if<LeafSpan>(&set.items.front()) : nullptr;
    const auto place = span != nullptr && !span->last
                           ? locate(book, span->first)
                           : tl::expected<LeafPlace, PlaceError>{tl::unexpected(PlaceError{})};
    if (!place || place->side == Side::both) {
        return std::nullopt;
    }
    std::string text = toText(asSigned(book, *place));
    if (const auto page = asPage(book, *place)) {
        text += " · " + toText(*page);
    } else if (const auto folio = asFolio(book, *place)) {
        text += " · " + toText(*folio);
    }
    return text;
}

// A piece of a text that says more than leaves: a bare number or word is none.
bool isPlainlyALeaf(std::string_view piece) {
    constexpr std::string_view kDigits = "0123456789";
    return piece.find_first_of(kDigits) != std::string_view::npos &&
           piece.find_first_not_of(" -0123456789") != std::string_view::npos;
}

LeafSet leavesNamed(std::string_view text) {
    if (auto whole = parseLeafSet(text)) {
        return std::move(*whole);
    }
    LeafSet named;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(",;"), text.size());
        const std::string_view piece = text.substr(0, end);
        const auto some = parseLeafSet(piece);
        if (some && isPlainlyALeaf(piece)) {
            named.items.insert(named.items.end(), some->items.begin(), some->items.end());
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return named;
}

// Nothing of this book says whether there is such a place.
bool isUntold(const LaidBook& book, PlaceProblem problem) {
    const auto hasNumber = [](const LeafNumbers& numbers) {
        return numbers.recto.has_value() || numbers.verso.has_value();
    };
    return (problem == PlaceProblem::noSuchPlate && book.plates.empty()) ||
           (problem == PlaceProblem::noSuchNumber && std::ranges::none_of(book.numbers, hasNumber));
}

bool isAbsent(PlaceProblem problem) {
    switch (problem) {
    case PlaceProblem::noSuchGathering:
    case PlaceProblem::noSuchLeaf:
    case PlaceProblem::cancelled:
    case PlaceProblem::noSuchNumber:
    case PlaceProblem::noSuchPlate:
        return true;
    default:
        return false;
    }
}

} // namespace

std::optional<PlaceReading> readPlace(const LaidBook& book, std::string_view text) {
    const LeafSet set = leavesNamed(text);
    if (set.items.empty() || book.leaves.empty()) {
        return std::nullopt;
    }
    if (const auto side = sideOf(book, set)) {
        return PlaceReading{*side};
    }
    const auto located = locate(book, set);
    if (!located) {
        if (isUntold(book, located.error().problem)) {
            return std::nullopt;
        }
        const std::string which =
            set.items.size() == 1 ? "" : toText(LeafSet{{set.items[located.error().item]}}) + ": ";
        return PlaceReading{which + sentenceOf(book, located.error()), false,
                            isAbsent(located.error().problem)};
    }
    if (located->leaves.empty()) {
        return std::nullopt;
    }
    std::string said = toText(toLeafSet(book, located->leaves));
    const std::string numbers = numbersOf(book, located->leaves);
    said += numbers.empty() ? "" : " · " + numbers;
    if (located->leaves.size() > 1) {
        said += " · " + counted(located->leaves.size(), "leaf", "leaves");
    }
    return PlaceReading{std::move(said)};
}

std::string sentenceOf(const LaidBook& book, const PlaceError& error) {
    switch (error.problem) {
    case PlaceProblem::noSuchGathering:
        return "no gathering of this book is signed so";
    case PlaceProblem::noSuchLeaf:
        return "that gathering has not so many leaves";
    case PlaceProblem::cancelled:
        return "the make-up says that leaf was taken out";
    case PlaceProblem::sizeUnknown:
        return "how many leaves that gathering has is not known";
    case PlaceProblem::noSuchNumber:
        return "no page or leaf of this book bears that number";
    case PlaceProblem::severalPlaces: {
        std::vector<std::string> places;
        for (const LeafPlace& place : error.candidates) {
            places.push_back(leafText(book, place.leaf));
        }
        return places.empty() ? "that may be two places"
                              : fmt::format("that may be {}", fmt::join(places, " or "));
    }
    case PlaceProblem::noSuchPlate:
        return "no such plate is called for";
    case PlaceProblem::backwards:
        return "its end comes before its beginning";
    case PlaceProblem::notALeaf:
        return "that is a plate, not a leaf";
    }
    return {};
}

} // namespace headcap::core
