// Records of any kind with every field filled by chance, for properties that must hold for all.
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <tuple>
#include <type_traits>
#include <utility>

#include "core/record/any_record.h"

namespace headcap::test {

class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_engine(seed) {}

    std::int64_t between(std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>{low, high}(m_engine);
    }
    bool oneIn(int n) { return between(1, n) == 1; }
    std::mt19937_64& engine() { return m_engine; }

    std::string words() {
        static constexpr const char* kWords[] = {"calf",  "ſpine", "K5r",  "π2",    "\"quoted\"",
                                                 "<b>",   "naïve", "\n",   "'",     "π¶†",
                                                 "paste", "β",     "שלום", "0.4 g", "%1"};
        std::string text;
        for (std::int64_t n = between(0, 4); n > 0; --n) {
            text += text.empty() ? "" : " ";
            text += kWords[between(0, std::size(kWords) - 1)];
        }
        return text;
    }

private:
    std::mt19937_64 m_engine;
};

template <class T>
struct RandomValue;

template <class T>
T randomValue(Chance& chance) {
    using namespace headcap::core;
    if constexpr (std::is_same_v<T, std::string>) {
        return chance.words();
    } else if constexpr (std::is_same_v<T, bool>) {
        return chance.oneIn(2);
    } else if constexpr (std::is_same_v<T, std::int64_t>) {
        return chance.between(0, 1'000'000);
    } else if constexpr (std::is_same_v<T, Unit>) {
        return static_cast<Unit>(chance.between(0, 5));
    } else if constexpr (std::is_enum_v<T>) {
        return static_cast<T>(
            chance.between(0, static_cast<std::int64_t>(EnumNames<T>::kNames.size()) - 1));
    } else if constexpr (std::is_same_v<T, Length> || std::is_same_v<T, Area>) {
        return T::fromCount(chance.between(0, 1'000'000'000));
    } else if constexpr (std::is_same_v<T, Minutes>) {
        return Minutes{chance.between(0, 500)};
    } else if constexpr (std::is_same_v<T, Instant>) {
        return Instant{std::chrono::milliseconds{chance.between(0, 2'000'000'000'000)}};
    } else if constexpr (std::is_same_v<T, Day>) {
        return Day{std::chrono::sys_days{std::chrono::days{chance.between(0, 25'000)}}};
    } else if constexpr (std::is_same_v<T, BookDate>) {
        return BookDate{std::to_string(chance.between(1450, 1900))};
    } else if constexpr (std::is_same_v<T, Digest>) {
        return sha256(chance.words());
    } else if constexpr (std::is_same_v<T, Amount>) {
        return Amount{chance.between(-9'000, 9'000), static_cast<Unit>(chance.between(0, 5))};
    } else if constexpr (std::is_same_v<T, Money>) {
        return Money{chance.between(0, 900'000), "EUR"};
    } else if constexpr (std::is_same_v<T, Strength>) {
        return Strength{chance.between(0, 1'000'000),
                        static_cast<StrengthBasis>(chance.between(0, 2))};
    } else if constexpr (std::is_same_v<T, RecordRef>) {
        return RecordRef{static_cast<RecordKind>(chance.between(0, kRecordKindCount - 1)),
                         Uuid::make(Instant{}, chance.engine())};
    } else {
        return RandomValue<T>::make(chance);
    }
}

template <class Record>
struct RandomValue<core::Id<Record>> {
    static core::Id<Record> make(Chance& chance) {
        return core::Id<Record>{core::Uuid::make(core::Instant{}, chance.engine())};
    }
};

template <class T>
struct RandomValue<std::optional<T>> {
    static std::optional<T> make(Chance& chance) {
        return chance.oneIn(3) ? std::nullopt : std::optional<T>{randomValue<T>(chance)};
    }
};

// Keys that it names are as random as the rest: nothing is there.
template <class Record>
Record randomRecord(Chance& chance) {
    return std::apply(
        [&]<class... T>(const core::Field<Record, T>&...) {
            return Record{randomValue<T>(chance)...};
        },
        core::Description<Record>::fields());
}

// One of each kind.
inline std::vector<core::AnyRecord> oneOfEachKind(Chance& chance) {
    std::vector<core::AnyRecord> records;
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        (records.push_back(
             randomRecord<std::variant_alternative_t<I, core::RecordOfSomeKind>>(chance)),
         ...);
    }
    (std::make_index_sequence<core::kRecordKindCount>{});
    return records;
}

} // namespace headcap::test
