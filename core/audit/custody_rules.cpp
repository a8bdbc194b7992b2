#include "core/audit/rules.h"

namespace headcap::core {

std::span<const AuditRule> custodyRules() {
    return {};
}

} // namespace headcap::core
