// In one sentence why the ledger refused.
#pragma once

#include <QString>

#include "core/materials/ledger.h"

namespace headcap::app {

[[nodiscard]] QString ledgerSentence(core::LedgerProblem problem, const core::Material* kind);

} // namespace headcap::app
