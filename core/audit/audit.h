// The audit of a job: what its record leaves open, by one table of rules (rules.h). A report can
// be issued only where nothing that must be settled is open.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/audit/audit_point.h"
#include "core/record/job_file.h"
#include "core/values/time.h"

namespace headcap::core {

// In the order of the rules, which is the order of the work. The clock says what day it is at the
// workshop, and on which day of the workshop a step fell.
[[nodiscard]] std::vector<AuditPoint> audit(const JobFile& file, const Clock& clock);

[[nodiscard]] bool mayIssue(std::span<const AuditPoint> points);
[[nodiscard]] std::size_t countOf(std::span<const AuditPoint> points, AuditSeverity severity);

// {"job", "open": [{"rule", "severity", "record", "page", "sentence", "source"}]}; a record is
// "facsimile:0198…".
[[nodiscard]] nlohmann::json toJson(std::string_view jobNumber, std::span<const AuditPoint> points);

} // namespace headcap::core
