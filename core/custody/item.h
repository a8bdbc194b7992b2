// The book: an item is one volume, a set of volumes, or a batch of small things treated
// together. A volume of a set names the set it is part of. One binding may hold several works.
// An item has many jobs over the years.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/book_date.h"
#include "core/values/id.h"
#include "core/values/measures.h"

namespace headcap::core {

struct Owner;

enum class ItemNature { volume, set, batch };

struct Item {
    Id<Item> id;
    Id<Owner> owner;
    std::optional<Id<Item>> partOf; // the set or batch it belongs to
    std::int64_t position = 0;      // within it, from 1
    ItemNature nature = ItemNature::volume;
    std::string volumeLabel{}; // "vol. 2"
    std::string author{};
    std::string title{};
    std::string shortTitle{}; // as slips and headings name it; empty: the title
    std::string imprint{};    // place and printer or publisher
    std::optional<BookDate> date{};
    std::string format{}; // "8°"
    std::string language{};
    std::optional<Length> height{}; // of the boards
    std::optional<Length> width{};
    std::optional<Length> thickness{};
    std::string binding{}; // covering, structure, as it came
    std::string marks{};   // shelfmark, bookplates, inscriptions
    std::string note{};
    std::optional<std::int64_t> leafMgM2{}; // of a leaf as it was weighed or measured, mg/m²

    friend bool operator==(const Item&, const Item&) = default;
};

// One of several works in one binding, in order.
struct Work {
    Id<Work> id;
    Id<Item> item;
    std::int64_t position = 1;
    std::string author{};
    std::string title{};
    std::string imprint{};
    std::optional<BookDate> date{};
    std::string leaves{}; // where it stands in the binding, a leaf set as text
    std::string note{};

    friend bool operator==(const Work&, const Work&) = default;
};

template <>
struct EnumNames<ItemNature> {
    static constexpr std::array<std::string_view, 3> kNames{"volume", "set", "batch"};
};

template <>
struct Description<Item> {
    static constexpr std::string_view kKind = "item";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Item>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("owner", &R::owner),
                          field("part_of", &R::partOf),
                          field("position", &R::position),
                          field("nature", &R::nature),
                          field("volume_label", &R::volumeLabel),
                          searched("author", &R::author),
                          searched("title", &R::title),
                          searched("short_title", &R::shortTitle),
                          searched("imprint", &R::imprint),
                          field("date", &R::date),
                          field("format", &R::format),
                          field("language", &R::language),
                          field("height", &R::height),
                          field("width", &R::width),
                          field("thickness", &R::thickness),
                          searched("binding", &R::binding),
                          searched("marks", &R::marks),
                          searched("note", &R::note),
                          field("leaf_mg_m2", &R::leafMgM2)};
    }
};

template <>
struct Description<Work> {
    static constexpr std::string_view kKind = "work";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Work>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("item", &R::item),
                          field("position", &R::position),
                          searched("author", &R::author),
                          searched("title", &R::title),
                          searched("imprint", &R::imprint),
                          field("date", &R::date),
                          field("leaves", &R::leaves),
                          searched("note", &R::note)};
    }
};

} // namespace headcap::core
