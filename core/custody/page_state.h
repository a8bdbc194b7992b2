// How far each page of a job has come: not begun, begun, settled; and what is open on it.
#pragma once

#include <array>
#include <cstddef>
#include <span>

#include "core/audit/audit_point.h"
#include "core/custody/page.h"
#include "core/record/job_file.h"

namespace headcap::core {

enum class PageProgress { notBegun, begun, settled };

struct PageState {
    Page page = Page::book;
    PageProgress progress = PageProgress::notBegun;
    std::size_t mustSettle = 0; // points of the audit open on it
    std::size_t worthKnowing = 0;
};

// In the order of the pages. The points are the audit's for the same file. A page with a point to
// settle is not settled.
[[nodiscard]] std::array<PageState, 8> pageStates(const JobFile& file,
                                                  std::span<const AuditPoint> points);

} // namespace headcap::core
