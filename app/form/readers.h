// How the values of the house are read from a field and shown in it. One Reader a type: read(),
// print(), and what kind of thing the error sentence and the example speak of.
#pragma once

#include <string>

#include <QString>

#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/values/amount.h"
#include "core/values/book_date.h"
#include "core/values/measure_text.h"
#include "core/values/money.h"
#include "core/values/spoken_time.h"
#include "core/values/strength.h"

namespace headcap::app {

// What reading a text may depend on.
struct ReadingContext {
    core::Day today;
    std::string currency = "EUR";
};

template <class T>
struct Reader;

template <>
struct Reader<core::Length> {
    static constexpr Reading kReading = Reading::length;
    static auto read(std::string_view text, const ReadingContext&) {
        return core::parseLength(text);
    }
};

template <>
struct Reader<core::Amount> {
    static constexpr Reading kReading = Reading::amount;
    static auto read(std::string_view text, const ReadingContext&) {
        return core::parseAmount(text);
    }
};

template <>
struct Reader<core::Money> {
    static constexpr Reading kReading = Reading::money;
    static auto read(std::string_view text, const ReadingContext& context) {
        return core::parseMoney(text, context.currency);
    }
};

template <>
struct Reader<core::Strength> {
    static constexpr Reading kReading = Reading::strength;
    static auto read(std::string_view text, const ReadingContext&) {
        return core::parseStrength(text);
    }
};

template <>
struct Reader<core::Day> {
    static constexpr Reading kReading = Reading::day;
    static auto read(std::string_view text, const ReadingContext& context) {
        return core::parseDay(text, context.today);
    }
};

template <>
struct Reader<core::BookDate> {
    static constexpr Reading kReading = Reading::bookDate;
    static auto read(std::string_view text, const ReadingContext&) {
        return core::parseBookDate(text);
    }
};

template <>
struct Reader<core::Minutes> {
    static constexpr Reading kReading = Reading::minutes;
    static auto read(std::string_view text, const ReadingContext&) {
        return core::parseMinutes(text);
    }
};

template <>
struct Reader<std::int64_t> {
    static constexpr Reading kReading = Reading::number;
    static tl::expected<std::int64_t, core::TextError> read(std::string_view text,
                                                            const ReadingContext&);
};

template <class T>
[[nodiscard]] QString printed(const T& value) {
    return fromCore(core::toText(value));
}
[[nodiscard]] inline QString printed(std::int64_t value) {
    return QString::number(value);
}

} // namespace headcap::app
