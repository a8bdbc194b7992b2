// What a job's report needs: audit says what is still to settle, report drafts, issue issues.
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "app/report/issuing.h"
#include "core/audit/audit.h"
#include "core/custody/person_called.h"
#include "core/record/job_file.h"

namespace headcap::app::cli {
namespace {

core::JobFile fileOf(const core::Stores& stores, const core::JobLine& job) {
    auto file = core::loadJobFile(stores.records, job.id);
    if (!file) {
        throw Failure{Exit::workshopUnusable, "job " + job.number +
                                                  " names an item or owner that is not there; "
                                                  "headcap verify says more."};
    }
    return std::move(*file);
}

void printPoints(const std::vector<core::AuditPoint>& points) {
    for (const core::AuditPoint& point : points) {
        const bool must = point.severity == core::AuditSeverity::mustSettle;
        printLine(std::string{must ? "must settle    " : "worth knowing  "} + point.sentence);
        printLine("               " + std::string{point.source});
    }
}

std::filesystem::path outputOf(const Call& call) {
    const QString path = call.option(QStringLiteral("output"));
    if (path.isEmpty()) {
        throw Failure{Exit::inputUnusable, "say where the report shall lie: -o FILE.pdf"};
    }
    return path.toStdString();
}

// An issued report says who answers for it.
core::Id<core::Person> issuerOf(const Call& call, const core::Stores& stores) {
    const std::string by = call.option(QStringLiteral("by")).toStdString();
    if (by.empty()) {
        throw Failure{Exit::inputUnusable, "say who issues it: --by INITIALS, or the whole name"};
    }
    std::vector<core::Person> people;
    for (auto& one : core::all<core::Person>(stores.records)) {
        people.push_back(std::move(one.record));
    }
    const auto who = core::personCalled(people, by);
    if (!who) {
        throw Failure{Exit::inputUnusable,
                      "nobody who works here now, or more than one, is called " + by +
                          ": give initials or a whole name as they stand under People"};
    }
    return *who;
}

Exit audit(const Call& call) {
    const auto workshop = call.openWorkshop();
    const auto stores = workshop->stores();
    const auto job = jobNumbered(stores, call.words().front());
    const auto file = fileOf(stores, job);
    const auto points = core::audit(file, call.surroundings().clock);
    if (call.wantsJson()) {
        printLine(core::toJson(job.number, points).dump());
    } else if (points.empty()) {
        printLine("Nothing is open on " + job.number + ".");
    } else {
        printPoints(points);
    }
    return points.empty() ? Exit::done : Exit::answerIsNo;
}

Exit report(const Call& call) {
    const auto path = outputOf(call);
    const auto workshop = call.openWorkshop();
    const auto stores = workshop->stores();
    const auto job = jobNumbered(stores, call.words().front());
    const auto written = writeDraft(stores, call.surroundings().clock, fileOf(stores, job), path);
    if (!written) {
        throw Failure{Exit::inputUnusable, written.error().toStdString()};
    }
    if (call.wantsJson()) {
        printLine(nlohmann::json{
            {"job", job.number},
            {"file", path.string()},
            {"pages", written->pages},
            {"draft",
             true}}.dump());
    } else {
        printLine("A draft of " + std::to_string(written->pages) + " pages lies at " +
                  path.string() + ".");
    }
    return Exit::done;
}

Exit issue(const Call& call) {
    const auto path = outputOf(call);
    const auto workshop = call.openWorkshop();
    const auto stores = workshop->stores();
    const auto job = jobNumbered(stores, call.words().front());
    const IssueRequest request{.who = issuerOf(call, stores),
                               .changes = call.option(QStringLiteral("changes")).toStdString()};
    auto issued =
        issueReport(stores, call.surroundings().clock, call.surroundings().ids, job.id, request);
    if (!issued) {
        printPoints(issued.error().open);
        throw Failure{issued.error().open.empty() ? Exit::workshopUnusable : Exit::answerIsNo,
                      issued.error().sentence.toStdString()};
    }
    std::error_code failed;
    std::filesystem::copy_file(stores.files.pathOf(core::FileStore::Shelf::report, issued->digest),
                               path, std::filesystem::copy_options::overwrite_existing, failed);
    if (failed) {
        throw Failure{Exit::inputUnusable,
                      "report " + std::to_string(issued->version) +
                          " is issued and kept in the workshop, but could not be copied to " +
                          path.string() + ": " + failed.message() + "."};
    }
    if (call.wantsJson()) {
        printLine(nlohmann::json{{"job", job.number},
                                 {"version", issued->version},
                                 {"sha256", issued->digest.hex()},
                                 {"file", path.string()}}
                      .dump());
    } else {
        printLine("Report " + std::to_string(issued->version) + " of " + job.number +
                  " is issued; a copy lies at " + path.string() + ".");
    }
    return Exit::done;
}

const QCommandLineOption& outputOption() {
    static const QCommandLineOption kOutput{{QStringLiteral("o"), QStringLiteral("output")},
                                            QStringLiteral("Where the PDF shall lie."),
                                            QStringLiteral("FILE.pdf")};
    return kOutput;
}

} // namespace

Command auditCommand() {
    return {.name = QStringLiteral("audit"),
            .words = QStringLiteral("JOB"),
            .purpose = QStringLiteral("what must be settled before the job's report can be issued"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = audit};
}

Command reportCommand() {
    return {.name = QStringLiteral("report"),
            .words = QStringLiteral("JOB -o FILE.pdf"),
            .purpose = QStringLiteral("the treatment report, marked DRAFT; never issues"),
            .fewest = 1,
            .most = 1,
            .options = {outputOption()},
            .run = report};
}

Command issueCommand() {
    return {.name = QStringLiteral("issue"),
            .words = QStringLiteral("JOB --by INITIALS -o FILE.pdf"),
            .purpose = QStringLiteral("issues the report, where the audit allows"),
            .fewest = 1,
            .most = 1,
            .options = {outputOption(),
                        {QStringLiteral("by"),
                         QStringLiteral("Who issues it: initials, or the whole name."),
                         QStringLiteral("INITIALS")},
                        {QStringLiteral("changes"),
                         QStringLiteral("What changed since the report before."),
                         QStringLiteral("TEXT")}},
            .run = issue};
}

} // namespace headcap::app::cli
