// A rate of tax in a form: typed in percent, kept in parts per million.
#pragma once

#include <QCoreApplication>
#include <QLineEdit>

#include "app/form/record_form.h"
#include "core/values/decimal.h"

namespace headcap::app {

template <class Record>
FieldRow& bindTax(RecordForm<Record>& form, std::int64_t Record::*member) {
    constexpr int kPercentPlaces = 4; // of parts per million
    FieldRow& row = form.bind(
        QCoreApplication::translate("tax", "Tax"), new QLineEdit, false,
        [member](const Record& record) {
            return record.*member == 0
                       ? QString{}
                       : fromCore(core::decimalText(record.*member, kPercentPlaces)) +
                             QStringLiteral(" %");
        },
        [member](Record& record, const QString& text) {
            QString typed = text;
            typed.remove(QLatin1Char('%'));
            typed = typed.trimmed();
            const auto read = core::parseDecimal(toCore(typed), kPercentPlaces);
            constexpr std::int64_t kWhole = 1'000'000;
            if (!typed.isEmpty() && (!read || *read < 0 || *read > kWhole)) {
                return QCoreApplication::translate("tax", "Write it in percent: 19 %.");
            }
            record.*member = typed.isEmpty() ? 0 : *read;
            return QString{};
        });
    row.placeholder(QStringLiteral("19 %"));
    return row;
}

} // namespace headcap::app
