// The report of a job as a file: a draft at any time, an issue where the audit allows. What is
// issued is kept in the workshop as issued, numbered, and never changed.
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

// The report of the record as it stands when this is called; refused where anybody changed the
// workshop before the report was drawn, for its pages name the head of the journal.
[[nodiscard]] tl::expected<core::IssuedReport, IssueRefusal>
issueReport(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
            const core::Id<core::Job>& job, const IssueRequest& request);

} // namespace headcap::app
