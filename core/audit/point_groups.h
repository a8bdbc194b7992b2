// Points of the audit as one reads them: what is open of one supplied leaf is told in one sentence,
// its name once.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/audit/audit_point.h"

namespace headcap::core {

struct PointGroup {
    AuditSeverity severity = AuditSeverity::mustSettle;
    RecordRef record;
    Page page = Page::book;
    std::string sentence;
    std::string source; // each once
    std::size_t points = 1;
};

// In the order of the first of each; only what is of one leaf, one page and one weight is put
// together.
[[nodiscard]] std::vector<PointGroup> grouped(std::span<const AuditPoint> points);

} // namespace headcap::core
