// The rows of a book's format, its height, width and thickness, and what a leaf of it weighs.
#pragma once

#include "app/form/record_form.h"
#include "core/custody/item.h"

namespace headcap::app {

using BookForm = RecordForm<core::Item>;

// A size is refused there: it belongs two rows below.
FieldRow& addFormat(BookForm& form);
// Shown as it was measured, by a rule in inches or in millimetres.
FieldRow& addSide(BookForm& form, const QString& label,
                  std::optional<core::Length> core::Item::*side);
// Written as its weight, or as what a leaf of a size weighs.
FieldRow& addLeafWeight(BookForm& form);

} // namespace headcap::app
