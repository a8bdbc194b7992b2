#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> stepRules() {
    return {};
}

} // namespace headcap::core
