#include "core/report/compose_report.h"

#include <sstream>

#include "core/report/sections.h"
#include "core/report/writing.h"

namespace headcap::core {
namespace {

Letterhead letterheadOf(const JobFile& file) {
    Letterhead head;
    if (!file.workshop) {
        return head;
    }
    head.name = file.workshop->name;
    std::istringstream address{file.workshop->address};
    for (std::string line; std::getline(address, line);) {
        head.lines.push_back(line);
    }
    for (const std::string& line :
         {file.workshop->telephone, file.workshop->email, file.workshop->letterheadNote}) {
        if (!line.empty()) {
            head.lines.push_back(line);
        }
    }
    return head;
}

} // namespace

Document composeReport(const JobFile& file, const ReportRequest& request, const Clock& clock) {
    const report::Context at{file, request, clock};
    Document document{.title = "Treatment report",
                      .subtitle = report::itemTitle(file.item),
                      .jobNumber = file.job.number,
                      .date = request.date,
                      .isDraft = request.isDraft,
                      .version = request.version,
                      .author = report::personName(file, request.author),
                      .journalHead = request.journalHead,
                      .letterhead = letterheadOf(file)};
    auto& sections = document.sections;
    const auto append = [&](std::vector<Section> more) {
        for (Section& section : more) {
            sections.push_back(std::move(section));
        }
    };
    append({report::jobSection(at), report::bookSection(at), report::conditionSection(at),
            report::collationSection(at)});
    append(report::treatmentSections(at));
    append({report::logSection(at)});
    append(report::disclosureSections(at));
    append({report::figuresSection(at), report::adviceSection(at), report::peopleSection(at)});
    return document;
}

} // namespace headcap::core
