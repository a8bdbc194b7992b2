#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> proposalRules() {
    return {};
}

} // namespace headcap::core
