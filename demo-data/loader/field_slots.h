// The fields of a record kind as the demo's data name them, without the unit its columns carry,
// and the form in which people write each.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/any_record.h"

namespace headcap::demo {

enum class Form {
    text,     // also an enumeration's name, a day or a time
    number,   // also yes and no
    length,   // "312 mm"
    area,     // "120 mm2"
    minutes,  // "3 h 20 min", or a bare number
    grammage, // "120 g/m²", kept in mg/m²
    amount,   // "0.4 g", in two columns
    money,    // "48.50", in two columns
    strength, // "2 % w/v", in two columns
    bookDate,
    key,    // "@orrin"
    anyKey, // the same, of any kind, in two columns
};

struct FieldSlot {
    std::string name;
    Form form = Form::text;
    std::size_t first = 0; // column
    std::size_t columns = 1;
    std::optional<core::RecordKind> references{};
};

[[nodiscard]] const std::vector<FieldSlot>& fieldSlots(core::RecordKind kind);
// Nothing where the kind has no such field.
[[nodiscard]] const FieldSlot* slotNamed(core::RecordKind kind, std::string_view name);
// The first field that holds a key of that kind.
[[nodiscard]] const FieldSlot* slotNaming(core::RecordKind kind, core::RecordKind named);

} // namespace headcap::demo
