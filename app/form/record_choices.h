// The records that fields choose from, by their names.
#pragma once

#include "app/form/choices.h"
#include "core/record/job_file.h"

namespace headcap::app {

class Session;

// Those who work here now.
[[nodiscard]] Choices peopleOf(Session& session);
// The volumes of a set, of the file as it is when they are offered; null: no file yet.
[[nodiscard]] QString volumeName(const core::Item& volume);
[[nodiscard]] Choices volumesOf(std::function<const core::JobFile*()> file);
// "26-014, wheat starch paste"; finished ones are not offered.
[[nodiscard]] Choices lotsOf(Session& session);
// Of books and owners there are too many to list: those that hold the words that are typed, the
// newest first; of nothing typed, the newest. "A Booke of Grafting, 1612 · Marrowdale Library";
// volumes of a set stand under their set.
[[nodiscard]] std::vector<Choice> booksLike(Session& session, const QString& typed);
// Two of one name with what tells them apart.
[[nodiscard]] std::vector<Choice> ownersLike(Session& session, const QString& typed);

// Vocabularies: the key is kept, the name is seen.
[[nodiscard]] Choices hazardTerms();
// Those in force.
[[nodiscard]] Choices techniqueTerms(Session& session);

} // namespace headcap::app
