// Which pages there are, in the order of the work. A page is made when it is first come to.
#pragma once

#include <functional>
#include <vector>

#include "app/pages/job_page.h"

namespace headcap::app {

struct PageEntry {
    core::Page page;
    std::function<JobPage*(Session&)> make;
};

[[nodiscard]] const std::vector<PageEntry>& pageTable();

} // namespace headcap::app
