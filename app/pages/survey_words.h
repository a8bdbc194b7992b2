// How the records of a survey read in its lists, and the words its fields complete from.
#pragma once

#include "app/form/choices.h"
#include "app/form/ruled_list.h"
#include "core/record/job_file.h"
#include "core/survey/condition_terms.h"

namespace headcap::app {

// "0 none" to "3 severe".
[[nodiscard]] QStringList severityWords();

// The components of the vocabulary; the terms of one, or none where it is not in the vocabulary.
[[nodiscard]] std::vector<Choice> componentChoices();
[[nodiscard]] std::vector<Choice> termChoices(const QString& component);
// What a term means and what it usually allows; nothing for the workshop's own words.
[[nodiscard]] const core::ConditionTerm* termNamed(const QString& component, const QString& term);

// In the order of a survey, the worst of a component first; the workshop's own components last.
[[nodiscard]] std::vector<core::Finding> inSurveyOrder(std::vector<core::Finding> findings);

[[nodiscard]] RowWords rowOf(const core::Finding& finding, const QString& volume,
                             const QString& photographs);
[[nodiscard]] RowWords rowOf(const core::Examination& examination, const core::JobFile& file,
                             core::Day today);
[[nodiscard]] RowWords rowOf(const core::Test& test, core::Day today);

} // namespace headcap::app
