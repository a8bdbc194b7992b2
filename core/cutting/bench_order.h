// The cuts of a sheet as a binder makes them: parallel cuts of one part stand together, equal ones
// one after the other, and what neighbours have trimmed off at one line is trimmed off in one,
// before they are cut apart. The same pieces; what falls off stays in as few parts as can be.
#pragma once

#include "core/cutting/sheet_task.h"

namespace headcap::core {

void setInBenchOrder(SheetLayout& layout, const SheetTask& task);

} // namespace headcap::core
