#include "app/report/issuing.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include "app/report/bytes_as_written.h"
#include "core/report/compose_report.h"
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

core::Document issueOf(const core::JobFile& file, const core::Clock& clock,
                       const IssueRequest& request, const core::Digest& head) {
    return core::composeReport(file,
                               {.isDraft = false,
                                .version = core::nextReportVersion(file),
                                .date = clock.today(),
                                .journalHead = head.hex(),
                                .changes = request.changes,
                                .author = request.who},
                               clock);
}

// The report drawn whole; it is read back before anything is kept of it.
tl::expected<std::vector<std::byte>, IssueRefusal> drawn(const core::Stores& stores,
                                                         const core::Document& document) {
    const QTemporaryDir work;
    const QString path = work.filePath(QStringLiteral("report.pdf"));
    const auto written = print::writePdf(document, photoLookup(stores), path);
    if (!written) {
        return tl::unexpected(refused(print::sentence(written.error())));
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

tl::expected<core::IssuedReport, IssueRefusal>
issueReport(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
            const core::Id<core::Job>& job, const IssueRequest& request) {
    // The head first: what is changed after it is seen below to have been.
    const core::Digest head = stores.journal.head();
    const auto file = core::loadJobFile(stores.records, job);
    if (!file) {
        return tl::unexpected(refused(tr("The job names an item or owner that is not there.")));
    }
    if (auto obstacle = core::whatKeepsFromIssuing(*file, clock, request.changes)) {
        return tl::unexpected(sentenceOf(*std::move(obstacle), *file));
    }
    const core::Document document = issueOf(*file, clock, request, head);
    if (!core::undisclosed(*file, document).empty()) {
        return tl::unexpected(refused(tr("The report does not disclose all that the record holds, "
                                         "and was not issued. This is a fault of the program.")));
    }
    const auto bytes = drawn(stores, document);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    if (stores.journal.head() != head) {
        return tl::unexpected(refused(tr("The record was changed while the report was drawn, and "
                                         "it was not issued: issue it again.")));
    }
    const int version = core::nextReportVersion(*file);
    // The file is kept, and synced, before a record may name it.
    const core::Digest digest = stores.files.put(core::FileStore::Shelf::report, *bytes, ".pdf");
    const core::IssuedReport report{.id = ids.next<core::IssuedReport>(),
                                    .job = job,
                                    .version = version,
                                    .issuedAt = clock.now(),
                                    .who = request.who,
                                    .digest = digest,
                                    .fileName = file->job.number + " report " +
                                                std::to_string(version) + ".pdf",
                                    .bytes = static_cast<std::int64_t>(bytes->size()),
                                    .journalHead = head.hex(),
                                    .changes = request.changes};
    const auto kept = stores.records.apply(core::issueChange(*file, report, ids));
    if (!kept) {
        return tl::unexpected(refused(tr("The report could not be entered in the record: %1")
                                          .arg(QString::fromStdString(kept.error().detail))));
    }
    return report;
}

} // namespace headcap::app
