#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> photographRules() {
    return {};
}

} // namespace headcap::core
