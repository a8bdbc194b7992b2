#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> surveyRules() {
    return {};
}

} // namespace headcap::core
