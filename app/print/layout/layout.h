// A report laid out in pages: pure, from a document to values, with nothing drawn and no file
// read. Needs a QGuiApplication for its faces; any thread.
#pragma once

#include "app/print/layout/marks.h"
#include "app/print/layout/page_setup.h"
#include "core/report/document.h"

namespace headcap::app::print {

[[nodiscard]] Pages layOut(const core::Document& document, const PageSetup& setup);

} // namespace headcap::app::print
