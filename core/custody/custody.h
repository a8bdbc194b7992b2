// What is in the house and where: accessories and loose pieces counted at intake, moves,
// hazards, what the owner was told, what is to be followed up, and files attached to any record.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/record/record_ref.h"
#include "core/values/digest.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Item;
struct Job;
struct Person;

// A negative look is not a clearance.
enum class HazardState { notTested, suspected, confirmed, cleared };

enum class NoticeMeans { letter, email, telephone, inPerson };

enum class NoticeSubject {
    receipt,
    collation,
    condition,
    hazard,
    proposal,
    change,
    incident,
    ready,
    other
};

// An accessory or loose piece that came with the item.
struct Piece {
    Id<Piece> id;
    Id<Job> job;
    std::int64_t count = 1;
    std::string what{};
    std::string keptAt{};
    std::string returned{}; // what became of it at return

    friend bool operator==(const Piece&, const Piece&) = default;
};

struct CustodyMove {
    Id<CustodyMove> id;
    Id<Job> job;
    Instant at;
    std::optional<Id<Person>> who;
    std::string fromPlace{};
    std::string toPlace{};
    std::string why{};

    friend bool operator==(const CustodyMove&, const CustodyMove&) = default;
};

// Of the item, visible in every job on it. See TRADE E: vocabulary in resources/hazards.json.
struct Hazard {
    Id<Hazard> id;
    Id<Item> item;
    std::string term{}; // key of the vocabulary: "arsenical_green"
    HazardState state = HazardState::notTested;
    std::string place{};  // where on the book
    std::string method{}; // how it was looked for or tested
    std::optional<Day> onDay{};
    std::optional<Id<Person>> who;
    std::string note{};

    friend bool operator==(const Hazard&, const Hazard&) = default;
};

// What the owner was told, how, and what they answered.
struct Notice {
    Id<Notice> id;
    Id<Job> job;
    NoticeSubject subject = NoticeSubject::other;
    NoticeMeans means = NoticeMeans::email;
    Day onDay;
    std::optional<Id<Person>> who;
    std::string toldTo{};
    std::string text{}; // what they were told
    std::string answer{};
    std::optional<Day> answeredOn{};

    friend bool operator==(const Notice&, const Notice&) = default;
};

struct FollowUp {
    Id<FollowUp> id;
    Id<Job> job;
    std::string what{};
    std::optional<Day> dueOn{};
    std::string why{};
    std::optional<Id<Person>> who;
    std::optional<Day> doneOn{};
    std::string outcome{};

    friend bool operator==(const FollowUp&, const FollowUp&) = default;
};

// Any file, kept like a photograph, by its SHA-256.
struct Attachment {
    Id<Attachment> id;
    std::optional<Id<Job>> job; // the job it is shown with
    RecordRef subject;          // the record it is attached to
    std::string fileName{};
    std::string mediaType{}; // "application/pdf"
    Digest digest{};
    std::int64_t bytes = 0;
    std::string note{};

    friend bool operator==(const Attachment&, const Attachment&) = default;
};

template <>
struct EnumNames<HazardState> {
    static constexpr std::array<std::string_view, 4> kNames{"not_tested", "suspected", "confirmed",
                                                            "cleared"};
};

template <>
struct EnumNames<NoticeMeans> {
    static constexpr std::array<std::string_view, 4> kNames{"letter", "email", "telephone",
                                                            "in_person"};
};

template <>
struct EnumNames<NoticeSubject> {
    static constexpr std::array<std::string_view, 9> kNames{"receipt",  "collation", "condition",
                                                            "hazard",   "proposal",  "change",
                                                            "incident", "ready",     "other"};
};

template <>
struct Description<Piece> {
    static constexpr std::string_view kKind = "piece";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Piece>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),          field("job", &R::job),
                          field("count", &R::count),    searched("what", &R::what),
                          field("kept_at", &R::keptAt), field("returned", &R::returned)};
    }
};

template <>
struct Description<CustodyMove> {
    static constexpr std::string_view kKind = "custody_move";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = CustodyMove>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("at", &R::at),
                          field("who", &R::who),
                          field("from_place", &R::fromPlace),
                          field("to_place", &R::toPlace),
                          field("why", &R::why)};
    }
};

template <>
struct Description<Hazard> {
    static constexpr std::string_view kKind = "hazard";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Hazard>
    static constexpr auto fields() {
        return std::tuple{
            field("id", &R::id),        field("item", &R::item),   searched("term", &R::term),
            field("state", &R::state),  field("place", &R::place), field("method", &R::method),
            field("on_day", &R::onDay), field("who", &R::who),     searched("note", &R::note)};
    }
};

template <>
struct Description<Notice> {
    static constexpr std::string_view kKind = "notice";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Notice>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("subject", &R::subject),
                          field("means", &R::means),
                          field("on_day", &R::onDay),
                          field("who", &R::who),
                          field("told_to", &R::toldTo),
                          searched("text", &R::text),
                          searched("answer", &R::answer),
                          field("answered_on", &R::answeredOn)};
    }
};

template <>
struct Description<FollowUp> {
    static constexpr std::string_view kKind = "follow_up";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = FollowUp>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),          field("job", &R::job),
                          searched("what", &R::what),   field("due_on", &R::dueOn),
                          searched("why", &R::why),     field("who", &R::who),
                          field("done_on", &R::doneOn), searched("outcome", &R::outcome)};
    }
};

template <>
struct Description<Attachment> {
    static constexpr std::string_view kKind = "attachment";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Attachment>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("subject", &R::subject),
                          searched("file_name", &R::fileName),
                          field("media_type", &R::mediaType),
                          field("digest", &R::digest),
                          field("bytes", &R::bytes),
                          searched("note", &R::note)};
    }
};

} // namespace headcap::core
