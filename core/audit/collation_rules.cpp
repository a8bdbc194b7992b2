#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> collationRules() {
    return {};
}

} // namespace headcap::core
