#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"

namespace headcap::core {
namespace {

bool has(const JobFile& file, PhotoRole role) {
    return std::ranges::find(file.photographs, role, &Photograph::role) != file.photographs.end();
}

void after(const AuditContext& at, const AuditSink& found) {
    if (facts::isTreated(at.file) && !has(at.file, PhotoRole::after)) {
        found(at.file.job, "The book was treated, and no photograph shows it afterwards.");
    }
}

void before(const AuditContext& at, const AuditSink& found) {
    if (has(at.file, PhotoRole::before)) {
        return;
    }
    for (const Photograph& photograph : at.file.photographs) {
        if (photograph.role == PhotoRole::after) {
            found(photograph, "A photograph shows the book after treatment, and none before.");
            return;
        }
    }
    if (facts::isTreated(at.file)) {
        found(at.file.job, "The book was treated, and no photograph shows it as it came.");
    }
}

void caption(const AuditContext& at, const AuditSink& found) {
    for (const Photograph& photograph : at.file.photographs) {
        if (photograph.inReport && photograph.caption.empty()) {
            found(photograph,
                  fmt::format("{} stands in the report without a caption.",
                              photograph.fileName.empty() ? "A photograph" : photograph.fileName));
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::string_view kSource = "AIC Commentary 25, 27";
constexpr std::array kRules{
    AuditRule{"photograph_after", Page::photographs, kMust, kSource, after},
    AuditRule{"photograph_before", Page::photographs, kWorth, kSource, before},
    AuditRule{"photograph_caption", Page::photographs, kWorth, "common practice", caption},
};

} // namespace

std::span<const AuditRule> photographRules() {
    return kRules;
}

} // namespace headcap::core
