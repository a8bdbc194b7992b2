// What a report must disclose, worked out from the record apart from how the report is composed,
// and whether a document does: every leaf supplied, every step, every material with its lot, every
// removal, every act that can't be undone, and whatever else a section tells of a record.
#pragma once

#include <string>
#include <vector>

#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core {

// In this section, a block, row, item or fact of this record must stand (a fact: under this label)
// that holds this text.
struct Disclosure {
    std::string section; // key
    RecordRef record;
    std::string label{};
    std::string text{};
};

[[nodiscard]] std::vector<Disclosure> disclosuresOf(const JobFile& file);

// The records of which something is not disclosed, each once. A report must not be issued unless
// this is empty.
[[nodiscard]] std::vector<RecordRef> undisclosed(const JobFile& file, const Document& document);

} // namespace headcap::core
