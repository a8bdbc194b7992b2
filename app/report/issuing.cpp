#include "app/report/issuing.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <span>

#include <QCoreApplication>
#include <QTemporaryDir>

#include "core/report/compose_report.h"
#include "core/report/disclosure_check.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Issuing", text);
}

std::vector<std::byte> bytesOf(const QString& path) {
    std::ifstream file{path.toStdString(), std::ios::binary};
    std::vector<char> bytes{std::istreambuf_iterator<char>{file}, {}};
    const auto view = std::as_bytes(std::span{bytes});
    return {view.begin(), view.end()};
}

int nextVersion(const core::JobFile& file) {
    std::int64_t last = 0;
    for (const core::IssuedReport& report : file.reports) {
        last = std::max(last, report.version);
    }
    return static_cast<int>(last) + 1;
}

// What stands in the way, whoever asks.
std::optional<IssueRefusal> refusalOf(const core::Clock& clock, const core::JobFile& file,
                                      const IssueRequest& request) {
    auto points = core::audit(file, clock);
    std::erase_if(points, [](const core::AuditPoint& point) {
        return point.severity != core::AuditSeverity::mustSettle;
    });
    if (!points.empty()) {
        return IssueRefusal{std::move(points),
                            tr("The report can't be issued while a point that must be settled is "
                               "open.")};
    }
    if (!file.reports.empty() && request.changes.empty()) {
        return IssueRefusal{{},
                            tr("Say what has changed since report %1: a later report names it.")
                                .arg(nextVersion(file) - 1)};
    }
    return std::nullopt;
}

core::Change issueChange(const core::JobFile& file, const core::IssuedReport& report,
                         const std::optional<core::Id<core::Person>>& who) {
    core::Change change{.sentence = "Report " + std::to_string(report.version) + " of " +
                                    file.job.number + " issued",
                        .who = who};
    change.add(report);
    return change;
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
            const core::JobFile& file, const IssueRequest& request) {
    if (auto refusal = refusalOf(clock, file, request)) {
        return tl::unexpected(std::move(*refusal));
    }
    const int version = nextVersion(file);
    const core::Digest head = stores.journal.head();
    const core::Document document = core::composeReport(file,
                                                        {.isDraft = false,
                                                         .version = version,
                                                         .date = clock.today(),
                                                         .journalHead = head.hex(),
                                                         .changes = request.changes,
                                                         .author = request.who},
                                                        clock);
    if (!core::undisclosed(file, document).empty()) {
        return tl::unexpected(
            IssueRefusal{{},
                         tr("The report does not disclose all that the record holds, and was "
                            "not issued. This is a fault of the program.")});
    }
    const QTemporaryDir work;
    const QString path = work.filePath(QStringLiteral("report.pdf"));
    const auto written = print::writePdf(document, photoLookup(stores), path);
    if (!written) {
        return tl::unexpected(IssueRefusal{{}, print::sentence(written.error())});
    }
    if (!written->absent.empty()) {
        return tl::unexpected(
            IssueRefusal{{},
                         tr("Figure %1 can't be printed, and the report was not issued: %2")
                             .arg(written->absent.front().figure)
                             .arg(print::sentence(written->absent.front().fault))});
    }
    // The file is kept, and synced, before a record may name it.
    const auto bytes = bytesOf(path);
    const core::Digest digest = stores.files.put(core::FileStore::Shelf::report, bytes, ".pdf");
    const core::IssuedReport report{.id = ids.next<core::IssuedReport>(),
                                    .job = file.job.id,
                                    .version = version,
                                    .issuedAt = clock.now(),
                                    .who = request.who,
                                    .digest = digest,
                                    .fileName = file.job.number + " report " +
                                                std::to_string(version) + ".pdf",
                                    .bytes = static_cast<std::int64_t>(bytes.size()),
                                    .journalHead = head.hex(),
                                    .changes = request.changes};
    const auto kept = stores.records.apply(issueChange(file, report, request.who));
    if (!kept) {
        return tl::unexpected(IssueRefusal{{},
                                           tr("The report could not be entered in the record: %1")
                                               .arg(QString::fromStdString(kept.error().detail))});
    }
    return report;
}

} // namespace headcap::app
