// The receipt that is signed when a book goes back: what it is, in what condition it goes, what
// goes with it, until when its owner may object, when it should be looked at again, and how it is
// to be kept until then.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core {

[[nodiscard]] Document arrivalReceiptOf(const JobFile& file, const Clock& clock);

// Of a return noted already, or of one that is being written.
[[nodiscard]] Document receiptOf(const JobFile& file, const HandBack& back, const Clock& clock);

} // namespace headcap::core
