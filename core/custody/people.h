// Who works here, who owns the books, and the workshop itself as its letterhead names it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/money.h"

namespace headcap::core {

enum class OwnerKind { privateOwner, institution, dealer };

// One record.
struct Workshop {
    Id<Workshop> id;
    std::string name{};
    std::string address{}; // lines
    std::string telephone{};
    std::string email{};
    std::string letterheadNote{}; // membership, registration
    std::string currency = "EUR"; // ISO 4217
    std::optional<Money> hourlyRate{};
    std::int64_t taxPpm = 0; // 200,000 is 20 %
    bool taxPerLine = false; // rounded by line, or once on the total
    std::string terms{};     // what every proposal says at its foot

    friend bool operator==(const Workshop&, const Workshop&) = default;
};

// Of the workshop.
struct Person {
    Id<Person> id;
    std::string name{};
    std::string initials{};
    std::string role{}; // as the report names it: "bookbinder"
    bool active = true;
    std::string note{};

    friend bool operator==(const Person&, const Person&) = default;
};

struct Owner {
    Id<Owner> id;
    OwnerKind kind = OwnerKind::privateOwner;
    std::string name{};
    std::string contact{};   // the person to speak to
    std::string authority{}; // who may decide, and by what right (AIC Commentary 5, 26)
    std::string address{};
    std::string email{};
    std::string telephone{};
    std::string note{};

    friend bool operator==(const Owner&, const Owner&) = default;
};

template <>
struct EnumNames<OwnerKind> {
    static constexpr std::array<std::string_view, 3> kNames{"private", "institution", "dealer"};
};

template <>
struct Description<Workshop> {
    static constexpr std::string_view kKind = "workshop";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Workshop>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("name", &R::name),
                          field("address", &R::address),
                          field("telephone", &R::telephone),
                          field("email", &R::email),
                          field("letterhead_note", &R::letterheadNote),
                          field("currency", &R::currency),
                          field("hourly_rate", &R::hourlyRate),
                          field("tax_ppm", &R::taxPpm),
                          field("tax_per_line", &R::taxPerLine),
                          field("terms", &R::terms)};
    }
};

template <>
struct Description<Person> {
    static constexpr std::string_view kKind = "person";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Person>
    static constexpr auto fields() {
        return std::tuple{
            field("id", &R::id),     searched("name", &R::name),  field("initials", &R::initials),
            field("role", &R::role), field("active", &R::active), field("note", &R::note)};
    }
};

template <>
struct Description<Owner> {
    static constexpr std::string_view kKind = "owner";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Owner>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("kind", &R::kind),
                          searched("name", &R::name),
                          searched("contact", &R::contact),
                          field("authority", &R::authority),
                          searched("address", &R::address),
                          field("email", &R::email),
                          field("telephone", &R::telephone),
                          searched("note", &R::note)};
    }
};

} // namespace headcap::core
