// A leaf supplied: a facsimile from another copy, or an original leaf. It must say where it came
// from, how it was shown to agree, what it is printed on and held with, how it is marked and how
// it comes out again.
#pragma once

#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/book_date.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Item;
struct Job;
struct Lot;
struct Step;

enum class SuppliedKind { facsimile, originalLeaf };

// Agreement of pages does not prove the same edition; the stronger test is the place of the
// signature marks under the line above (TRADE C).
enum class Verdict { notEstablished, sameSetting, pagesAgree, contradicted };

struct Facsimile {
    Id<Facsimile> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    SuppliedKind kind = SuppliedKind::facsimile;
    std::string place{};       // the leaves it supplies
    std::string institution{}; // that keeps the copy it was taken from
    std::string shelfmark{};
    std::string edition{}; // of the source copy
    std::optional<BookDate> sourceDate{};
    std::string address{}; // where its images are
    std::optional<Day> consultedOn{};
    std::string permission{};
    std::string provenance{};   // of a supplied original leaf
    std::string verification{}; // how the copy was shown to agree
    Verdict verdict = Verdict::notEstablished;
    std::string printing{}; // method, printer, inks
    std::optional<Id<Lot>> printedOn;
    std::optional<Id<Lot>> attachedWith;
    std::string attachment{};     // how it is held: "tipped to a guard, 3 mm strip"
    std::string marking{};        // how it is marked as a facsimile, outside the image
    std::string removal{};        // how it comes out again
    std::optional<Id<Step>> step; // in which it was put in

    friend bool operator==(const Facsimile&, const Facsimile&) = default;
};

template <>
struct EnumNames<SuppliedKind> {
    static constexpr std::array<std::string_view, 2> kNames{"facsimile", "original_leaf"};
};

template <>
struct EnumNames<Verdict> {
    static constexpr std::array<std::string_view, 4> kNames{"not_established", "same_setting",
                                                            "pages_agree", "contradicted"};
};

template <>
struct Description<Facsimile> {
    static constexpr std::string_view kKind = "facsimile";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Facsimile>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("kind", &R::kind),
                          searched("place", &R::place),
                          searched("institution", &R::institution),
                          searched("shelfmark", &R::shelfmark),
                          searched("edition", &R::edition),
                          field("source_date", &R::sourceDate),
                          field("address", &R::address),
                          field("consulted_on", &R::consultedOn),
                          field("permission", &R::permission),
                          field("provenance", &R::provenance),
                          field("verification", &R::verification),
                          field("verdict", &R::verdict),
                          field("printing", &R::printing),
                          field("printed_on", &R::printedOn),
                          field("attached_with", &R::attachedWith),
                          field("attachment", &R::attachment),
                          field("marking", &R::marking),
                          field("removal", &R::removal),
                          field("step", &R::step)};
    }
};

} // namespace headcap::core
