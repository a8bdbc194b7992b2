// One value of the demo's data, as people write it, as what its columns keep. Throws DataError
// with what could not be read; whoever asks says in which file, record and field.
#pragma once

#include <span>

#include "demo-data/loader/field_slots.h"
#include "demo-data/loader/moment.h"

namespace headcap::demo {

void readField(const FieldSlot& slot, const Json& value, const Moment& moment,
               std::span<core::ColumnValue> columns);

} // namespace headcap::demo
