// What stands on every page around the text: running head and foot, and the marks of a draft.
#pragma once

#include <cstddef>

#include "app/print/layout/marks.h"
#include "app/print/layout/page_setup.h"
#include "core/report/document.h"

namespace headcap::app::print {

void addFurniture(Page& page, std::size_t index, std::size_t count, const core::Document& document,
                  const PageSetup& setup);

} // namespace headcap::app::print
