#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> materialRules() {
    return {};
}

} // namespace headcap::core
