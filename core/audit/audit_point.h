// One thing that the record of a job leaves open: which rule says so, of which record, where it is
// seen to, and whether the report can be issued without it.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/custody/page.h"
#include "core/record/record_ref.h"

namespace headcap::core {

enum class AuditSeverity { mustSettle, worthKnowing };

template <>
struct EnumNames<AuditSeverity> {
    static constexpr std::array<std::string_view, 2> kNames{"must_settle", "worth_knowing"};
};

struct AuditPoint {
    std::string rule; // "facsimile_unmarked"
    AuditSeverity severity = AuditSeverity::mustSettle;
    RecordRef record;
    Page page = Page::book;
    std::string sentence; // what is open, and so what settles it
    std::string source;   // the clause or practice the rule comes from
    // "The facsimile of K2": what the sentence begins with, where it can be said once for several.
    std::string subject{};
};

} // namespace headcap::core
