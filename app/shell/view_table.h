// The views of the window, each made when it is first gone to. To add one: a class derived from
// View, and one line in view_table.cpp; its action and key are in the catalogue.
#pragma once

#include <functional>
#include <vector>

#include "app/session/session.h"
#include "app/shell/view.h"

namespace headcap::app {

struct ViewEntry {
    ViewId id;
    std::function<View*(Session&)> make;
};

[[nodiscard]] const std::vector<ViewEntry>& viewTable();

} // namespace headcap::app
