// The table of rules, a file a subject: each has an identifier of ours, the page where it is seen
// to, how much it matters, a source, and a function that says a sentence of each record it finds
// wanting. A rule that must settle can be settled by what can still be done: by completing the
// record, by a correction, or by telling the owner.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/audit/audit_point.h"
#include "core/record/job_file.h"
#include "core/values/time.h"

namespace headcap::core {

struct AuditContext {
    const JobFile& file;
    const Clock& clock;
};

class AuditSink {
public:
    using Add = std::function<void(RecordRef, std::string subject, std::string_view says)>;
    explicit AuditSink(Add add) : m_add(std::move(add)) {}
    template <class Record>
    void operator()(const Record& record, std::string_view sentence) const {
        m_add(refOf(record.id), {}, sentence);
    }
    // "The facsimile of K2", "is not marked as a facsimile."
    template <class Record>
    void operator()(const Record& record, std::string subject, std::string_view says) const {
        m_add(refOf(record.id), std::move(subject), says);
    }

private:
    Add m_add;
};

struct AuditRule {
    std::string_view id;
    Page page;
    AuditSeverity severity;
    std::string_view source;
    void (*look)(const AuditContext&, const AuditSink&);
};

[[nodiscard]] std::span<const AuditRule> custodyRules();
[[nodiscard]] std::span<const AuditRule> collationRules();
[[nodiscard]] std::span<const AuditRule> facsimileRules();
[[nodiscard]] std::span<const AuditRule> surveyRules();
[[nodiscard]] std::span<const AuditRule> proposalRules();
[[nodiscard]] std::span<const AuditRule> stepRules();
[[nodiscard]] std::span<const AuditRule> beforehandRules();
[[nodiscard]] std::span<const AuditRule> materialRules();
[[nodiscard]] std::span<const AuditRule> photographRules();
[[nodiscard]] std::span<const AuditRule> placeRules();
[[nodiscard]] std::span<const AuditRule> reportRules();

// All of them, in the order of the work.
[[nodiscard]] std::vector<AuditRule> auditRules();

} // namespace headcap::core
