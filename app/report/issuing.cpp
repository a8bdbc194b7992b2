#include "app/report/issuing.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include "app/report/bytes_as_written.h"
#include "core/report/disclosure_check.h"
#include "core/report/issuing.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Issuing", text);
}

IssueRefusal refused(const QString& sentence) {
    return {{}, sentence};
}

// What stands in the way, whoever asks.
IssueRefusal sentenceOf(core::IssueObstacle obstacle, const core::JobFile& file) {
    switch (obstacle.problem) {
    case core::IssueProblem::pointsOpen:
        break;
    case core::IssueProblem::changesMissing:
        return refused(tr("Say what has changed since report %1: a later report names it.")
                           .arg(core::nextReportVersion(file) - 1));
    }
    return {std::move(obstacle.open),
            tr("The report can't be issued while a point that must be settled is open.")};
}

// The report drawn whole; it is read back before anything is kept of it.
tl::expected<std::vector<std::byte>, IssueRefusal> drawn(const core::Stores& stores,
                                                         const core::Document& document,
                                                         const print::PdfOptions& options) {
    const QTemporaryDir work;
    const QString path = work.filePath(QStringLiteral("report.pdf"));
    const auto written = print::writePdf(document, photoLookup(stores), path, options);
    if (!written) {
        return tl::unexpected(refused(written.error().code == print::PdfError::Code::stopped
                                          ? tr("It was stopped, and no report was issued.")
                                          : print::sentence(written.error())));
    }
    if (!written->absent.empty()) {
        return tl::unexpected(
            refused(tr("Figure %1 can't be printed, and the report was not issued: %2")
                        .arg(written->absent.front().figure)
                        .arg(print::sentence(written->absent.front().fault))));
    }
    auto bytes = bytesAsWritten(path, written->digest);
    if (!bytes) {
        return tl::unexpected(
            refused(tr("The report can't be read back as it was written, and was not issued.")));
    }
    return *std::move(bytes);
}

// What others did meanwhile elsewhere leaves the report as it is.
bool isStillAsDrawn(const core::Stores& stores, const core::Clock& clock,
                    const PreparedIssue& issue) {
    if (stores.journal.head() == issue.head) {
        return true;
    }
    const auto now = core::loadJobFile(stores.records, issue.job);
    return now && core::isStillSo(*now, issue.document, issue.request, clock);
}

IssueRefusal changedMeanwhile() {
    return refused(tr("The record was changed while the report was drawn, and it was not issued: "
                      "issue it again."));
}

} // namespace

print::PhotoLookup photoLookup(const core::Stores& stores) {
    return [&files = stores.files](const core::Digest& digest) {
        return files.has(core::FileStore::Shelf::photograph, digest)
                   ? QString::fromStdString(
                         files.pathOf(core::FileStore::Shelf::photograph, digest).string())
                   : QString();
    };
}

core::Document draftOf(const core::Stores& stores, const core::Clock& clock,
                       const core::JobFile& file) {
    return core::composeReport(
        file, {.isDraft = true, .date = clock.today(), .journalHead = stores.journal.head().hex()},
        clock);
}

tl::expected<print::PdfOutcome, QString> writeDraft(const core::Stores& stores,
                                                    const core::Clock& clock,
                                                    const core::JobFile& file,
                                                    const std::filesystem::path& path) {
    return print::writePdf(draftOf(stores, clock, file), photoLookup(stores),
                           QString::fromStdString(path.string()))
        .map_error([](const print::PdfError& error) { return print::sentence(error); });
}

tl::expected<PreparedIssue, IssueRefusal> prepareIssue(const core::Stores& stores,
                                                       const core::Clock& clock,
                                                       const core::Id<core::Job>& job,
                                                       const IssueRequest& request) {
    // The head first: what is changed after it is seen, when the report is entered, to have been.
    const core::Digest head = stores.journal.head();
    const auto file = core::loadJobFile(stores.records, job);
    if (!file) {
        return tl::unexpected(refused(tr("The job names an item or owner that is not there.")));
    }
    if (auto obstacle = core::whatKeepsFromIssuing(*file, clock, request.changes)) {
        return tl::unexpected(sentenceOf(*std::move(obstacle), *file));
    }
    core::ReportRequest asked{.isDraft = false,
                              .version = core::nextReportVersion(*file),
                              .date = clock.today(),
                              .journalHead = head.hex(),
                              .changes = request.changes,
                              .author = request.who};
    core::Document document = core::composeReport(*file, asked, clock);
    if (!core::undisclosed(*file, document).empty()) {
        return tl::unexpected(refused(tr("The report does not disclose all that the record holds, "
                                         "and was not issued. This is a fault of the program.")));
    }
    return PreparedIssue{job, file->job.number, head, std::move(asked), std::move(document)};
}

tl::expected<DrawnIssue, IssueRefusal> drawIssue(const core::Stores& stores,
                                                 const core::Clock& clock,
                                                 const PreparedIssue& issue,
                                                 const print::PdfOptions& options) {
    const auto bytes = drawn(stores, issue.document, options);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    if (!isStillAsDrawn(stores, clock, issue)) {
        return tl::unexpected(changedMeanwhile()); // before a file is kept that no record names
    }
    return DrawnIssue{stores.files.put(core::FileStore::Shelf::report, *bytes, ".pdf"),
                      static_cast<std::int64_t>(bytes->size())};
}

tl::expected<core::IssuedReport, IssueRefusal>
enterIssue(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
           const PreparedIssue& issue, const DrawnIssue& drawn) {
    if (!isStillAsDrawn(stores, clock, issue)) {
        return tl::unexpected(changedMeanwhile());
    }
    const auto file = core::loadJobFile(stores.records, issue.job);
    if (!file) {
        return tl::unexpected(changedMeanwhile());
    }
    const core::IssuedReport report{.id = ids.next<core::IssuedReport>(),
                                    .job = issue.job,
                                    .version = issue.request.version,
                                    .issuedAt = clock.now(),
                                    .who = issue.request.author,
                                    .digest = drawn.digest,
                                    .fileName = issue.number + " report " +
                                                std::to_string(issue.request.version) + ".pdf",
                                    .bytes = drawn.bytes,
                                    .journalHead = issue.head.hex(),
                                    .changes = issue.request.changes};
    const auto kept = stores.records.apply(core::issueChange(*file, report, ids));
    if (!kept) {
        return tl::unexpected(refused(tr("The report could not be entered in the record: %1")
                                          .arg(QString::fromStdString(kept.error().detail))));
    }
    return report;
}

tl::expected<core::IssuedReport, IssueRefusal>
issueReport(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
            const core::Id<core::Job>& job, const IssueRequest& request) {
    const auto issue = prepareIssue(stores, clock, job, request);
    if (!issue) {
        return tl::unexpected(issue.error());
    }
    const auto drawn = drawIssue(stores, clock, *issue);
    if (!drawn) {
        return tl::unexpected(drawn.error());
    }
    return enterIssue(stores, clock, ids, *issue, *drawn);
}

} // namespace headcap::app
