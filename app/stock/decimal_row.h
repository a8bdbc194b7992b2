// A row for a number with decimals that is kept whole: 8.20 as 820.
#pragma once

#include <QCoreApplication>

#include "app/form/record_form.h"
#include "core/values/decimal.h"

namespace headcap::app {

// The number as it is typed, without a unit; a sentence where it can't be read.
[[nodiscard]] inline QString readDecimal(const QString& text, int places,
                                         std::optional<std::int64_t>& to) {
    if (text.trimmed().isEmpty()) {
        to = std::nullopt;
        return {};
    }
    const auto value = core::parseDecimal(toCore(text.trimmed()), places);
    if (!value || *value < 0) {
        return QCoreApplication::translate("DecimalRow", "Write it as a number, without its unit.");
    }
    to = *value;
    return {};
}

template <class Record>
FieldRow& decimalRow(RecordForm<Record>& form, const QString& label,
                     std::optional<std::int64_t> Record::*member, int places, const QString& hint) {
    return form
        .bind(
            label, new QLineEdit, false,
            [member, places](const Record& r) {
                return r.*member ? fromCore(core::decimalText(*(r.*member), places)) : QString{};
            },
            [member, places](Record& r, const QString& text) {
                return readDecimal(text, places, r.*member);
            })
        .placeholder(hint);
}

} // namespace headcap::app
