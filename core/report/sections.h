// The sections of the treatment report, each composed by a function of its own, a file a group.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/report/compose_report.h"

namespace headcap::core::report {

struct Context {
    const JobFile& file;
    const ReportRequest& request;
    const Clock& clock;
};

[[nodiscard]] Section jobSection(const Context& at);
[[nodiscard]] Section bookSection(const Context& at);
[[nodiscard]] Section conditionSection(const Context& at);
[[nodiscard]] Section collationSection(const Context& at);
// Of the collation: who went through the leaves and how, the plates called for, what is bound out
// of its place, what the owner is told of it.
void addWalks(Section& section, const Context& at);
void addPlates(Section& section, const Context& at);
void addOrder(Section& section, const Context& at);
void addOwnersWord(Section& section, const Context& at);
[[nodiscard]] std::vector<Section> treatmentSections(const Context& at); // heading, then three
[[nodiscard]] Section logSection(const Context& at);
[[nodiscard]] std::vector<Section> disclosureSections(const Context& at); // heading, then A to F
[[nodiscard]] Section figuresSection(const Context& at);
[[nodiscard]] Section adviceSection(const Context& at);
[[nodiscard]] Section peopleSection(const Context& at);

// Disclosures A to C: what was put in. D to F: what was taken out, can't be undone, is open.
[[nodiscard]] Section suppliedLeaves(const Context& at);
[[nodiscard]] Section repairs(const Context& at);
[[nodiscard]] Section materialsIntroduced(const Context& at);
[[nodiscard]] Section removals(const Context& at);
[[nodiscard]] Section irreversibleActs(const Context& at);
[[nodiscard]] Section unresolved(const Context& at);

} // namespace headcap::core::report
