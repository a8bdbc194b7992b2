// A form of fields that belong to no record: a calculation, a mix that is being put together.
#pragma once

#include <QLineEdit>

#include "app/form/form_base.h"
#include "app/form/readers.h"

namespace headcap::app {

class PlainForm : public FormBase {
public:
    explicit PlainForm(QWidget* parent = nullptr) : FormBase({}, parent) {}

    FieldRow& line(const QString& label, const QString& placeholder = {}, bool isWide = false) {
        return addRow(label, new QLineEdit, isWide).placeholder(placeholder);
    }
    FieldRow& control(const QString& label, QWidget* control, bool isWide = false) {
        return addRow(label, control, isWide);
    }
    QString gather(core::Change&) override { return {}; }
};

// What a field says; nothing where it is empty, or can't be read, and then it says why itself.
template <class T>
std::optional<T> valueOf(FieldRow& row, const ReadingContext& context) {
    const QString text = row.text().trimmed();
    if (text.isEmpty()) {
        row.setError({});
        return std::nullopt;
    }
    auto value = Reader<T>::read(toCore(text), context);
    row.setError(value ? QString{} : sentence(value.error(), Reader<T>::kReading));
    return value ? std::optional<T>{*value} : std::nullopt;
}

} // namespace headcap::app
