#include "core/report/compose_report.h"

#include "core/report/letterhead.h"
#include "core/report/sections.h"
#include "core/report/writing.h"

namespace headcap::core {

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
                      .letterhead = report::letterheadOf(file)};
    document.runningTitle = headingOf(file.item);
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
