// Amounts as they are typed for the ledger, and in one sentence why it refused.
#pragma once

#include <QString>

#include "core/materials/ledger.h"

namespace headcap::app {

[[nodiscard]] QString ledgerSentence(core::LedgerProblem problem, const core::Material* kind);

// As it is typed; a bare number is counted as the kind is.
[[nodiscard]] tl::expected<core::Amount, core::TextError> amountTyped(const QString& text,
                                                                      const core::Material* kind);

} // namespace headcap::app
