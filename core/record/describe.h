// How a record says what it holds. Each record type is a plain aggregate with a Description beside
// it: its kind, and its fields in the order of the aggregate, each by the name it is kept under.
// Keeping, journal, history, search and tests are all driven by it, so that a new field is said in
// one place (and in one migration).
#pragma once

#include <array>
#include <cstddef>
#include <string_view>
#include <tuple>

namespace headcap::core {

template <class Record, class T>
struct Field {
    std::string_view name; // snake_case; the unit is added by the value's codec ("height" "_nm")
    T Record::*member;
    bool searched = false; // its words find the record
};

template <class Record, class T>
constexpr Field<Record, T> field(std::string_view name, T Record::*member) {
    return {name, member, false};
}

template <class Record, class T>
constexpr Field<Record, T> searched(std::string_view name, T Record::*member) {
    return {name, member, true};
}

// What may be done to records of a kind once they are written.
enum class Permanence {
    editable,  // made, edited, removed; undone by the reverse change
    permanent, // never removed: undoing writes the contrary entry and both remain
};

// Specialised beside each record:
//   static constexpr std::string_view kKind;
//   static constexpr Permanence kPermanence;
//   template <class R = Record>         // so that only a source that reads them compiles them
//   static constexpr auto fields();     // std::tuple of Field, the key first
template <class Record>
struct Description;

// Specialised beside each enumeration a record holds: kNames, in the order of the enumerators,
// as they are kept. Names are never changed, only added to.
template <class Enum>
struct EnumNames;

template <class Enum>
constexpr std::string_view nameOf(Enum value) {
    return EnumNames<Enum>::kNames[static_cast<std::size_t>(value)];
}

} // namespace headcap::core
