#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> reportRules() {
    return {};
}

} // namespace headcap::core
