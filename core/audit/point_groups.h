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
    std::string sentence; // the whole of it
    std::string source;   // each once
    // Of several: "The facsimile of K2", and what is open of it, one by one.
    std::string name{};
    std::vector<std::string> open{};
    [[nodiscard]] std::size_t points() const { return open.empty() ? 1 : open.size(); }
};

// In the order of the first of each; only what is of one leaf, one page and one weight is put
// together.
[[nodiscard]] std::vector<PointGroup> grouped(std::span<const AuditPoint> points);

} // namespace headcap::core
