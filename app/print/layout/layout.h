// A report laid out in pages: pure, from a document to values, with nothing drawn and no file
// read. Needs a QGuiApplication for its faces; any thread, and what it gives stays on that thread:
// its glyphs hold the faces of the thread that set them.
#pragma once

#include <memory>

#include "app/print/layout/marks.h"
#include "app/print/layout/page_setup.h"
#include "core/report/document.h"

namespace headcap::app::print {

[[nodiscard]] Pages layOut(const core::Document& document, const PageSetup& setup);

// The same, a section at a time, where a thread has other things to do between.
class LayingOut {
public:
    LayingOut(core::Document document, const PageSetup& setup);
    ~LayingOut();
    LayingOut(const LayingOut&) = delete;
    LayingOut& operator=(const LayingOut&) = delete;

    // False: all is laid out.
    bool step();
    [[nodiscard]] Pages pages() const; // of all that was laid out

private:
    class Setting;
    std::unique_ptr<Setting> m_setting;
};

} // namespace headcap::app::print
