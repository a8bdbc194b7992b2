#include <vector>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/audit/rules.h"
#include "core/collation/job_places.h"

namespace headcap::core {
namespace {

// Says of each record whose place names leaves that the book has not.
template <class Record>
void notInBook(const AuditContext& at, const AuditSink& found, const std::vector<Record>& records,
               std::string_view what) {
    const auto books = booksOf(at.file);
    for (const Record& record : records) {
        const auto reading = readPlace(books, record.part, record.place);
        if (reading && reading->isAbsent) {
            found(record, fmt::format("{} “{}”: {}.", what, record.place, reading->text));
        }
    }
}

void surveyed(const AuditContext& at, const AuditSink& found) {
    notInBook(at, found, at.file.findings, "A finding is placed at");
    notInBook(at, found, at.file.tests, "A test is placed at");
}

void collated(const AuditContext& at, const AuditSink& found) {
    notInBook(at, found, at.file.collationFindings, "A finding of the collation is placed at");
    notInBook(at, found, at.file.facsimiles, "A leaf supplied is placed at");
}

void done(const AuditContext& at, const AuditSink& found) {
    std::vector<Step> steps;
    for (const Step* step : facts::standing(at.file)) {
        steps.push_back(*step);
    }
    notInBook(at, found, steps, "A step is placed at");
}

void photographed(const AuditContext& at, const AuditSink& found) {
    notInBook(at, found, at.file.photographs, "A photograph is placed at");
}

constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::string_view kWhere = "AIC Commentary 23";
constexpr std::array kRules{
    AuditRule{"finding_place_in_book", Page::survey, kWorth, kWhere, surveyed},
    AuditRule{"collation_place_in_book", Page::collation, kWorth, kWhere, collated},
    AuditRule{"step_place_in_book", Page::bench, kWorth, kWhere, done},
    AuditRule{"photograph_place_in_book", Page::photographs, kWorth, kWhere, photographed},
};

} // namespace

std::span<const AuditRule> placeRules() {
    return kRules;
}

} // namespace headcap::core
