// What the record keeps of going through a book leaf by leaf: each walk is one person's, is never
// mixed with another's, and can be left and taken up again. Beside it the plates called for, and
// the leaf-by-leaf sheet of work.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/collation/collation_record.h"
#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

enum class WalkKind { againstMakeUp, inferring };

// What one entry says: of one leaf, or of what was left of its gathering, passed whole.
enum class WalkScope { leaf, gathering };

// Whether the text runs on from the page before, where there is no catchword to tell it.
enum class TextRunsOn { notRead, yes, no };

enum class PlatePresence { notLookedFor, present, lacking, misplaced, supplied };

// One going through the book.
struct Walk {
    Id<Walk> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    std::optional<Id<Person>> who;
    WalkKind kind = WalkKind::againstMakeUp;
    Instant startedAt;
    std::optional<Instant> finishedAt{};
    std::string formula{}; // the make-up it went by, as it stood when begun
    std::string extent{};
    std::string note{};

    friend bool operator==(const Walk&, const Walk&) = default;
};

// What was seen of one leaf. Of the marks and numbers only what was read is kept; nothing read
// is not the same as nothing printed.
struct WalkEntry {
    Id<WalkEntry> id;
    Id<Job> job;
    Id<Walk> walk;
    std::int64_t position = 1; // of the leaf, in the order it is bound, from 1
    WalkScope scope = WalkScope::leaf;
    std::string gathering{}; // its signature
    std::string place{};     // leaf reference
    Instant at;
    bool asExpected = true;
    std::string signature{}; // as printed
    std::string rectoNumber{};
    std::string versoNumber{};
    std::string rectoCatchword{};
    std::string versoCatchword{};
    std::string rectoFirstWords{};
    std::string versoFirstWords{};
    TextRunsOn runsOn = TextRunsOn::notRead; // from the page before
    std::optional<Id<CollationFinding>> finding;
    std::string note{};

    friend bool operator==(const WalkEntry&, const WalkEntry&) = default;
};

// A plate, map or table the book calls for, and where it belongs.
struct CalledPlate {
    Id<CalledPlate> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    std::int64_t position = 1;
    std::string name{};      // "3", "frontispiece", "map of the coast"
    std::string belongsAt{}; // "to face p. 34"
    std::string source{};    // who says so: a list in the book, a bibliography
    PlatePresence presence = PlatePresence::notLookedFor;
    std::string foundAt{};
    std::string note{};

    friend bool operator==(const CalledPlate&, const CalledPlate&) = default;
};

// A line of the leaf-by-leaf sheet: work that goes through the book.
struct LeafTask {
    Id<LeafTask> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    std::int64_t position = 1;
    std::string technique{}; // key of resources/techniques.json, or the workshop's own word
    std::string leaves{};    // leaf set as text
    std::string done{};      // those of them that are done
    std::string note{};

    friend bool operator==(const LeafTask&, const LeafTask&) = default;
};

template <>
struct EnumNames<WalkKind> {
    static constexpr std::array<std::string_view, 2> kNames{"against_make_up", "inferring"};
};

template <>
struct EnumNames<WalkScope> {
    static constexpr std::array<std::string_view, 2> kNames{"leaf", "gathering"};
};

template <>
struct EnumNames<TextRunsOn> {
    static constexpr std::array<std::string_view, 3> kNames{"not_read", "yes", "no"};
};

template <>
struct EnumNames<PlatePresence> {
    static constexpr std::array<std::string_view, 5> kNames{"not_looked_for", "present", "lacking",
                                                            "misplaced", "supplied"};
};

template <>
struct Description<Walk> {
    static constexpr std::string_view kKind = "walk";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Walk>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("who", &R::who),
                          field("kind", &R::kind),
                          field("started_at", &R::startedAt),
                          field("finished_at", &R::finishedAt),
                          field("formula", &R::formula),
                          field("extent", &R::extent),
                          searched("note", &R::note)};
    }
};

template <>
struct Description<WalkEntry> {
    static constexpr std::string_view kKind = "walk_entry";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = WalkEntry>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("walk", &R::walk),
                          field("position", &R::position),
                          field("scope", &R::scope),
                          field("gathering", &R::gathering),
                          field("place", &R::place),
                          field("at", &R::at),
                          field("as_expected", &R::asExpected),
                          field("signature", &R::signature),
                          field("recto_number", &R::rectoNumber),
                          field("verso_number", &R::versoNumber),
                          field("recto_catchword", &R::rectoCatchword),
                          field("verso_catchword", &R::versoCatchword),
                          field("recto_first_words", &R::rectoFirstWords),
                          field("verso_first_words", &R::versoFirstWords),
                          field("runs_on", &R::runsOn),
                          field("finding", &R::finding),
                          searched("note", &R::note)};
    }
};

template <>
struct Description<CalledPlate> {
    static constexpr std::string_view kKind = "called_plate";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = CalledPlate>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("position", &R::position),
                          searched("name", &R::name),
                          field("belongs_at", &R::belongsAt),
                          field("source", &R::source),
                          field("presence", &R::presence),
                          field("found_at", &R::foundAt),
                          searched("note", &R::note)};
    }
};

template <>
struct Description<LeafTask> {
    static constexpr std::string_view kKind = "leaf_task";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = LeafTask>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("position", &R::position),
                          searched("technique", &R::technique),
                          field("leaves", &R::leaves),
                          field("done", &R::done),
                          searched("note", &R::note)};
    }
};

} // namespace headcap::core
