#include "core/audit/audit.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/audit/rules.h"

namespace headcap::core {

std::vector<AuditRule> auditRules() {
    std::vector<AuditRule> all;
    for (const auto& rules : {custodyRules(), collationRules(), facsimileRules(), surveyRules(),
                              proposalRules(), stepRules(), beforehandRules(), materialRules(),
                              photographRules(), placeRules(), reportRules()}) {
        all.insert(all.end(), rules.begin(), rules.end());
    }
    return all;
}

std::vector<AuditPoint> audit(const JobFile& file, const Clock& clock) {
    std::vector<AuditPoint> points;
    const AuditContext context{file, clock};
    for (const AuditRule& rule : auditRules()) {
        rule.look(context,
                  AuditSink{[&](RecordRef record, std::string subject, std::string_view says) {
                      points.push_back({std::string{rule.id}, rule.severity, record, rule.page,
                                        subject + (subject.empty() ? "" : " ") + std::string{says},
                                        std::string{rule.source}, std::move(subject)});
                  }});
    }
    return points;
}

bool mayIssue(std::span<const AuditPoint> points) {
    return countOf(points, AuditSeverity::mustSettle) == 0;
}

std::size_t countOf(std::span<const AuditPoint> points, AuditSeverity severity) {
    return static_cast<std::size_t>(std::ranges::count(points, severity, &AuditPoint::severity));
}

nlohmann::json toJson(std::string_view jobNumber, std::span<const AuditPoint> points) {
    auto open = nlohmann::json::array();
    for (const AuditPoint& point : points) {
        open.push_back(
            {{"rule", point.rule},
             {"severity", nameOf(point.severity)},
             {"record", std::string{nameOf(point.record.kind)} + ":" + point.record.id.text()},
             {"page", nameOf(point.page)},
             {"sentence", point.sentence},
             {"source", point.source}});
    }
    return {{"job", jobNumber}, {"open", std::move(open)}};
}

} // namespace headcap::core
