// Rules of the tests that come before a bath: of the inks and colours, by then, in its liquid, on
// its leaves.
#pragma once

#include "core/audit/rules.h"

namespace headcap::core {

void bathUntested(const AuditContext& at, const AuditSink& found);
void bathTestedAfter(const AuditContext& at, const AuditSink& found);
void bathInOtherLiquid(const AuditContext& at, const AuditSink& found);
void bathOnOtherLeaves(const AuditContext& at, const AuditSink& found);

} // namespace headcap::core
