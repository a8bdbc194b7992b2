// The records a file may belong to, as choices of a field.
#pragma once

#include "app/form/choices.h"
#include "core/record/job_file.h"

namespace headcap::app::papers {

// "job:0192…": how a choice names a record of any kind.
[[nodiscard]] std::string keyOf(const core::RecordRef& ref);
[[nodiscard]] std::optional<core::RecordRef> refNamed(const std::string& key);

// As it is offered; of another record, what it is.
[[nodiscard]] QString subjectWords(const core::RecordRef& ref, const std::vector<Choice>& subjects);

// Those of a job that papers come with, in words.
[[nodiscard]] std::vector<Choice> subjectsOf(const core::JobFile& file);

} // namespace headcap::app::papers
