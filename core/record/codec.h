// How each value type lies in columns: how many, their suffixes, to and from. Internal to
// core/record.
#pragma once

#include <array>
#include <charconv>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

#include "core/record/any_record.h"

namespace headcap::core {

template <>
struct EnumNames<StrengthBasis> {
    static constexpr std::array<std::string_view, 3> kNames{"w/v", "w/w", "v/v"};
};

namespace codec {

// One column of a value: what is added to the field's name, and what it holds.
struct Part {
    std::string_view suffix;
    bool isText;
};

inline std::optional<std::int64_t> wholeNumber(const ColumnValue& value) {
    const auto* number = std::get_if<std::int64_t>(&value);
    return number ? std::optional{*number} : std::nullopt;
}

inline std::optional<std::string_view> text(const ColumnValue& value) {
    const auto* string = std::get_if<std::string>(&value);
    return string ? std::optional<std::string_view>{*string} : std::nullopt;
}

template <class Enum>
std::optional<Enum> enumNamed(std::string_view name) {
    for (std::size_t i = 0; i < EnumNames<Enum>::kNames.size(); ++i) {
        if (EnumNames<Enum>::kNames[i] == name) {
            return static_cast<Enum>(i);
        }
    }
    return std::nullopt;
}

template <class T>
struct Codec;

template <>
struct Codec<std::string> {
    static constexpr std::array<Part, 1> kParts{{{"", true}}};
    static void put(const std::string& value, std::span<ColumnValue> out) { out[0] = value; }
    static std::optional<std::string> take(std::span<const ColumnValue> in) {
        const auto value = text(in[0]);
        return value ? std::optional<std::string>{*value} : std::nullopt;
    }
};

template <>
struct Codec<bool> {
    static constexpr std::array<Part, 1> kParts{{{"", false}}};
    static void put(bool value, std::span<ColumnValue> out) { out[0] = std::int64_t{value}; }
    static std::optional<bool> take(std::span<const ColumnValue> in) {
        const auto value = wholeNumber(in[0]);
        return value && (*value == 0 || *value == 1) ? std::optional{*value == 1} : std::nullopt;
    }
};

template <>
struct Codec<std::int64_t> {
    static constexpr std::array<Part, 1> kParts{{{"", false}}};
    static void put(std::int64_t value, std::span<ColumnValue> out) { out[0] = value; }
    static std::optional<std::int64_t> take(std::span<const ColumnValue> in) {
        return wholeNumber(in[0]);
    }
};

template <class Enum>
requires std::is_enum_v<Enum>
struct Codec<Enum> {
    static constexpr std::array<Part, 1> kParts{{{"", true}}};
    static void put(Enum value, std::span<ColumnValue> out) { out[0] = std::string{nameOf(value)}; }
    static std::optional<Enum> take(std::span<const ColumnValue> in) {
        const auto name = text(in[0]);
        return name ? enumNamed<Enum>(*name) : std::nullopt;
    }
};

// A quantity is kept as the count of its unit.
template <class Q>
struct QuantityCodec {
    static void put(Q value, std::span<ColumnValue> out) { out[0] = value.count(); }
    static std::optional<Q> take(std::span<const ColumnValue> in) {
        const auto value = wholeNumber(in[0]);
        return value ? std::optional{Q::fromCount(*value)} : std::nullopt;
    }
};

template <>
struct Codec<Length> : QuantityCodec<Length> {
    static constexpr std::array<Part, 1> kParts{{{"_nm", false}}};
};

template <>
struct Codec<Area> : QuantityCodec<Area> {
    static constexpr std::array<Part, 1> kParts{{{"_um2", false}}};
};

template <>
struct Codec<Minutes> {
    static constexpr std::array<Part, 1> kParts{{{"_min", false}}};
    static void put(Minutes value, std::span<ColumnValue> out) {
        out[0] = std::int64_t{value.count()};
    }
    static std::optional<Minutes> take(std::span<const ColumnValue> in) {
        const auto value = wholeNumber(in[0]);
        return value ? std::optional{Minutes{*value}} : std::nullopt;
    }
};

template <class Value, std::optional<Value> (*fromIso)(std::string_view)>
struct IsoCodec {
    static constexpr std::array<Part, 1> kParts{{{"", true}}};
    static void put(const Value& value, std::span<ColumnValue> out) { out[0] = isoText(value); }
    static std::optional<Value> take(std::span<const ColumnValue> in) {
        const auto value = text(in[0]);
        return value ? fromIso(*value) : std::nullopt;
    }
};

template <>
struct Codec<Instant> : IsoCodec<Instant, instantFromIso> {};

template <>
struct Codec<Day> : IsoCodec<Day, dayFromIso> {};

template <>
struct Codec<BookDate> {
    static constexpr std::array<Part, 1> kParts{{{"", true}}};
    static void put(const BookDate& value, std::span<ColumnValue> out) { out[0] = value.edtf; }
    static std::optional<BookDate> take(std::span<const ColumnValue> in) {
        const auto value = text(in[0]);
        return value && !value->empty() ? std::optional{BookDate{std::string{*value}}}
                                        : std::nullopt;
    }
};

template <>
struct Codec<Digest> {
    static constexpr std::array<Part, 1> kParts{{{"", true}}};
    static void put(const Digest& value, std::span<ColumnValue> out) { out[0] = value.hex(); }
    static std::optional<Digest> take(std::span<const ColumnValue> in) {
        const auto value = text(in[0]);
        return value ? Digest::fromHex(*value) : std::nullopt;
    }
};

template <class Record>
struct Codec<Id<Record>> {
    static constexpr std::array<Part, 1> kParts{{{"", true}}};
    static void put(const Id<Record>& value, std::span<ColumnValue> out) { out[0] = value.text(); }
    static std::optional<Id<Record>> take(std::span<const ColumnValue> in) {
        const auto value = text(in[0]);
        const auto uuid = value ? Uuid::fromText(*value) : std::nullopt;
        return uuid ? std::optional{Id<Record>{*uuid}} : std::nullopt;
    }
};

template <>
struct Codec<RecordRef> {
    static constexpr std::array<Part, 2> kParts{{{"_kind", true}, {"_id", true}}};
    static void put(const RecordRef& value, std::span<ColumnValue> out) {
        out[0] = std::string{nameOf(value.kind)};
        out[1] = value.id.text();
    }
    static std::optional<RecordRef> take(std::span<const ColumnValue> in) {
        const auto kind = Codec<RecordKind>::take(in.subspan(0, 1));
        const auto id = text(in[1]);
        const auto uuid = id ? Uuid::fromText(*id) : std::nullopt;
        return kind && uuid ? std::optional{RecordRef{*kind, *uuid}} : std::nullopt;
    }
};

template <>
struct Codec<Amount> {
    static constexpr std::array<Part, 2> kParts{{{"_count", false}, {"_unit", true}}};
    static void put(const Amount& value, std::span<ColumnValue> out) {
        out[0] = value.count;
        Codec<Unit>::put(value.unit, out.subspan(1));
    }
    static std::optional<Amount> take(std::span<const ColumnValue> in) {
        const auto count = wholeNumber(in[0]);
        const auto unit = Codec<Unit>::take(in.subspan(1));
        return count && unit ? std::optional{Amount{*count, *unit}} : std::nullopt;
    }
};

template <>
struct Codec<Money> {
    static constexpr std::array<Part, 2> kParts{{{"_minor", false}, {"_currency", true}}};
    static void put(const Money& value, std::span<ColumnValue> out) {
        out[0] = value.minor;
        out[1] = value.currency;
    }
    static std::optional<Money> take(std::span<const ColumnValue> in) {
        const auto minor = wholeNumber(in[0]);
        const auto currency = text(in[1]);
        return minor && currency ? std::optional{Money{*minor, std::string{*currency}}}
                                 : std::nullopt;
    }
};

template <>
struct Codec<Strength> {
    static constexpr std::array<Part, 2> kParts{{{"_ppm", false}, {"_basis", true}}};
    static void put(const Strength& value, std::span<ColumnValue> out) {
        out[0] = value.partsPerMillion;
        Codec<StrengthBasis>::put(value.basis, out.subspan(1));
    }
    static std::optional<Strength> take(std::span<const ColumnValue> in) {
        const auto ppm = wholeNumber(in[0]);
        const auto basis = Codec<StrengthBasis>::take(in.subspan(1));
        return ppm && basis ? std::optional{Strength{*ppm, *basis}} : std::nullopt;
    }
};

// None is a null in each column of the value.
template <class T>
struct Codec<std::optional<T>> {
    static constexpr auto kParts = Codec<T>::kParts;
    static void put(const std::optional<T>& value, std::span<ColumnValue> out) {
        if (value) {
            Codec<T>::put(*value, out);
            return;
        }
        for (std::size_t i = 0; i < kParts.size(); ++i) {
            out[i] = std::monostate{};
        }
    }
    static std::optional<std::optional<T>> take(std::span<const ColumnValue> in) {
        bool allNull = true;
        for (std::size_t i = 0; i < kParts.size(); ++i) {
            allNull = allNull && std::holds_alternative<std::monostate>(in[i]);
        }
        if (allNull) {
            return std::optional<T>{};
        }
        auto value = Codec<T>::take(in);
        return value ? std::optional<std::optional<T>>{std::move(value)} : std::nullopt;
    }
};

template <class T>
inline constexpr bool kIsOptional = false;
template <class T>
inline constexpr bool kIsOptional<std::optional<T>> = true;

// The kind of record a key names; nothing for other values.
template <class T>
struct Names {
    static std::optional<RecordKind> kind() { return std::nullopt; }
};
template <class Record>
struct Names<Id<Record>> {
    static std::optional<RecordKind> kind() { return kindOf<Record>(); }
};
template <class T>
struct Names<std::optional<T>> : Names<T> {};

} // namespace codec
} // namespace headcap::core
