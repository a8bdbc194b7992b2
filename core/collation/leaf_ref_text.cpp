#include <array>
#include <utility>

#include "core/collation/leaf_ref.h"

namespace headcap::core {
namespace {

// π2r would be read as a side of leaf 2: a doubled r or v behind π or a sign is written out.
std::string markText(const Signature& signature) {
    const bool isLikeASide = signature.multiplier > 1 && !signature.prefix.empty() &&
                             (signature.base == "r" || signature.base == "v");
    if (!isLikeASide) {
        return toBracketedText(signature);
    }
    Signature doubled = signature;
    for (; doubled.multiplier > 1; --doubled.multiplier) {
        doubled.base += signature.base;
    }
    return toBracketedText(doubled);
}

constexpr const char* kTo = "–";

const char* sideText(Side side) {
    return side == Side::recto ? "r" : side == Side::verso ? "v" : "";
}

// The verso of f. xi would read as f. xiv: there a space stands between.
std::string folioText(const FolioRef& folio) {
    const PrintedNumber& number = folio.folio.number;
    const std::string joined = toText(number) + sideText(folio.side);
    const std::string numeral = toRoman(number.value, false) + "v";
    const auto other = romanValue(numeral);
    const bool isAnother = folio.side == Side::verso && number.style == NumeralStyle::romanLower &&
                           other && toRoman(*other, false) == numeral;
    return isAnother ? toText(number) + " v" : joined;
}

std::string spanText(const LeafSpan& span) {
    if (!span.last) {
        return toText(span.first);
    }
    const LeafRef& last = *span.last;
    if (const auto* page = std::get_if<PageRef>(&span.first)) {
        return "pp. " + toText(page->page.number) + kTo +
               toText(std::get<PageRef>(last).page.number);
    }
    if (const auto* folio = std::get_if<FolioRef>(&span.first)) {
        const auto& end = std::get<FolioRef>(last);
        return "ff. " + folioText(*folio) + kTo + folioText(end);
    }
    if (const auto* plate = std::get_if<PlateRef>(&span.first)) {
        const auto& end = std::get<PlateRef>(last);
        return "pls. " + plate->label + sideText(plate->side) + kTo + end.label +
               sideText(end.side);
    }
    return toText(span.first) + kTo + toText(last);
}

std::string itemText(const LeafSetItem& item) {
    if (const auto* span = std::get_if<LeafSpan>(&item)) {
        return spanText(*span);
    }
    if (const auto* gatherings = std::get_if<GatheringSpan>(&item)) {
        return gatherings->last
                   ? "gatherings " + markText(gatherings->first) + kTo + markText(*gatherings->last)
                   : "gathering " + markText(gatherings->first);
    }
    if (const auto* counted = std::get_if<CountOf>(&item)) {
        static constexpr std::array<std::pair<const char*, const char*>, 3> kWords{
            {{" leaf", " leaves"}, {" plate", " plates"}, {" gathering", " gatherings"}}};
        const auto& [one, many] = kWords.at(static_cast<std::size_t>(counted->what));
        return std::to_string(counted->count) + (counted->count == 1 ? one : many);
    }
    return "whole book";
}

} // namespace

std::string toText(const LeafRef& ref) {
    if (const auto* leaf = std::get_if<SignedLeaf>(&ref)) {
        const std::string number = leaf->signature.kind == SignatureKind::number
                                       ? subscript(leaf->leaf)
                                       : std::to_string(leaf->leaf);
        return toBracketedText(leaf->signature) + number +
               (leaf->added > 0 ? "+" + std::to_string(leaf->added) : "") + sideText(leaf->side);
    }
    if (const auto* folio = std::get_if<FolioRef>(&ref)) {
        return "f. " + folioText(*folio);
    }
    if (const auto* page = std::get_if<PageRef>(&ref)) {
        return "p. " + toText(page->page.number);
    }
    const auto& plate = std::get<PlateRef>(ref);
    return (plate.label == "frontispiece" ? "" : "pl. ") + plate.label + sideText(plate.side);
}

std::string toText(const LeafSet& set) {
    std::string out;
    for (const LeafSetItem& item : set.items) {
        out += (out.empty() ? "" : ", ") + itemText(item);
    }
    return out;
}

} // namespace headcap::core
