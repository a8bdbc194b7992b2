// The report of a job as a file: a draft at any time, an issue where the audit allows. What is
// issued is kept in the workshop as issued, numbered, and never changed.
//
// An issue is prepared and entered where the window is; the drawing between takes seconds, and may
// be done on any thread.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <tl/expected.hpp>

#include "app/print/pdf_report.h"
#include "core/audit/audit.h"
#include "core/record/job_file.h"
#include "core/report/compose_report.h"

namespace headcap::app {

// Where the workshop keeps a photograph.
[[nodiscard]] print::PhotoLookup photoLookup(const core::Stores& stores);

// The document as it stands today, marked as a draft.
[[nodiscard]] core::Document draftOf(const core::Stores& stores, const core::Clock& clock,
                                     const core::JobFile& file);

// Writes the draft; else the one sentence that says why not.
[[nodiscard]] tl::expected<print::PdfOutcome, QString>
writeDraft(const core::Stores& stores, const core::Clock& clock, const core::JobFile& file,
           const std::filesystem::path& path);

struct IssueRequest {
    std::optional<core::Id<core::Person>> who;
    std::string changes; // since the version before; needed from the second on
};

struct IssueRefusal {
    std::vector<core::AuditPoint> open; // the points that must be settled first
    QString sentence;
};

// What is to be drawn: the report of the record as it stood when it was asked for.
struct PreparedIssue {
    core::Id<core::Job> job;
    std::string number; // of the job
    core::Digest head;  // of the journal, which the pages name
    core::ReportRequest request;
    core::Document document;
};
// Kept, and synced, before a record may name it.
struct DrawnIssue {
    core::Digest digest;
    std::int64_t bytes = 0;
};

[[nodiscard]] tl::expected<PreparedIssue, IssueRefusal> prepareIssue(const core::Stores& stores,
                                                                     const core::Clock& clock,
                                                                     const core::Id<core::Job>& job,
                                                                     const IssueRequest& request);
[[nodiscard]] tl::expected<DrawnIssue, IssueRefusal>
drawIssue(const core::Stores& stores, const core::Clock& clock, const PreparedIssue& issue,
          const print::PdfOptions& options = {});
// Refused where the record no longer is what was drawn.
[[nodiscard]] tl::expected<core::IssuedReport, IssueRefusal>
enterIssue(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
           const PreparedIssue& issue, const DrawnIssue& drawn);

// All three at once.
[[nodiscard]] tl::expected<core::IssuedReport, IssueRefusal>
issueReport(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
            const core::Id<core::Job>& job, const IssueRequest& request);

} // namespace headcap::app
