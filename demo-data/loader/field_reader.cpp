#include "demo-data/loader/field_reader.h"

#include <charconv>

#include <fmt/format.h>

#include "core/values/amount.h"
#include "core/values/book_date.h"
#include "core/values/measure_text.h"
#include "core/values/money.h"
#include "core/values/strength.h"
#include "demo-data/loader/data_error.h"

namespace headcap::demo {
namespace {

[[noreturn]] void unreadable(const Json& value) {
    throw DataError{value.dump() + " can't be read"};
}

template <class T>
const T& orThrow(const tl::expected<T, core::TextError>& read, const Json& value) {
    if (!read) {
        unreadable(value);
    }
    return *read;
}

std::string textOf(const Json& value) {
    if (!value.is_string()) {
        unreadable(value);
    }
    return value.get<std::string>();
}

std::string_view unitName(core::Unit unit) {
    using core::Unit;
    switch (unit) {
    case Unit::gram:
        return "g";
    case Unit::millilitre:
        return "ml";
    case Unit::squareMillimetre:
        return "mm2";
    case Unit::metre:
        return "m";
    case Unit::sheet:
        return "sheet";
    case Unit::piece:
        return "piece";
    }
    return "";
}

std::string_view basisName(core::StrengthBasis basis) {
    using core::StrengthBasis;
    switch (basis) {
    case StrengthBasis::weightInVolume:
        return "w/v";
    case StrengthBasis::weightInWeight:
        return "w/w";
    case StrengthBasis::volumeInVolume:
        return "v/v";
    }
    return "";
}

// "3 h 20 min", "45 min", "2 h".
std::int64_t minutesOf(const Json& value) {
    if (value.is_number_integer()) {
        return value.get<std::int64_t>();
    }
    const std::string text = textOf(value);
    std::int64_t minutes = 0;
    const char* at = text.data();
    const char* end = at + text.size();
    while (at != end) {
        std::int64_t number = 0;
        const auto [after, error] = std::from_chars(at, end, number);
        const std::string_view rest{after, static_cast<std::size_t>(end - after)};
        if (error != std::errc{}) {
            unreadable(value);
        }
        if (rest.starts_with(" h")) {
            minutes += 60 * number;
            at = after + 2;
        } else if (rest.starts_with(" min")) {
            minutes += number;
            at = after + 4;
        } else {
            unreadable(value);
        }
        at += at != end && *at == ' ' ? 1 : 0;
    }
    return minutes;
}

std::int64_t grammageOf(const Json& value) {
    static constexpr std::string_view kUnit = " g/m²";
    const std::string text = textOf(value);
    if (!text.ends_with(kUnit)) {
        unreadable(value);
    }
    const auto mass = core::parseAmount(text.substr(0, text.size() - kUnit.size()) + " g");
    return orThrow(mass, value).count / 1'000;
}

// A day or a time where the text tells one; else words.
std::string wordsOf(const Json& value, const Moment& moment) {
    const std::string text = textOf(value);
    if (const auto day = moment.days.day(text)) {
        return core::isoText(*day);
    }
    if (const auto at = moment.days.instant(text)) {
        return core::isoText(*at);
    }
    return moment.toldText(text);
}

core::RecordRef refOf(const Json& value, const Moment& moment) {
    const std::string name = textOf(value);
    const auto ref = moment.names.find(moment.scope, name);
    if (!ref) {
        throw DataError{"no record is named " + name + " yet"};
    }
    return *ref;
}

std::int64_t numberOf(const Json& value) {
    if (value.is_boolean()) {
        return value.get<bool>() ? 1 : 0;
    }
    if (!value.is_number_integer()) {
        unreadable(value);
    }
    return value.get<std::int64_t>();
}

} // namespace

void readField(const FieldSlot& slot, const Json& value, const Moment& moment,
               std::span<core::ColumnValue> columns) {
    core::ColumnValue& first = columns[slot.first];
    switch (slot.form) {
    case Form::text:
        first = wordsOf(value, moment);
        return;
    case Form::number:
        first = numberOf(value);
        return;
    case Form::length:
        first = orThrow(core::parseLength(textOf(value)), value).count();
        return;
    case Form::area:
        first = orThrow(core::parseAmount(textOf(value)), value).count;
        return;
    case Form::minutes:
        first = minutesOf(value);
        return;
    case Form::grammage:
        first = grammageOf(value);
        return;
    case Form::bookDate:
        first = orThrow(core::parseBookDate(textOf(value)), value).edtf;
        return;
    case Form::amount: {
        const auto amount = orThrow(core::parseAmount(textOf(value)), value);
        first = amount.count;
        columns[slot.first + 1] = std::string{unitName(amount.unit)};
        return;
    }
    case Form::money: {
        const auto money = orThrow(core::parseMoney(textOf(value), moment.currency), value);
        first = money.minor;
        columns[slot.first + 1] = money.currency;
        return;
    }
    case Form::strength: {
        const auto strength = orThrow(core::parseStrength(textOf(value)), value);
        first = strength.partsPerMillion;
        columns[slot.first + 1] = std::string{basisName(strength.basis)};
        return;
    }
    case Form::key: {
        const auto ref = refOf(value, moment);
        if (ref.kind != slot.references) {
            throw DataError{value.dump() + " names a record of kind " +
                            std::string{core::nameOf(ref.kind)}};
        }
        first = ref.id.text();
        return;
    }
    case Form::anyKey: {
        const auto ref = refOf(value, moment);
        first = std::string{core::nameOf(ref.kind)};
        columns[slot.first + 1] = ref.id.text();
        return;
    }
    }
}

} // namespace headcap::demo
