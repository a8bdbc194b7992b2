// The records that fields choose from, by their names.
#pragma once

#include "app/form/record_form.h"

namespace headcap::app {

// Those who work here now.
[[nodiscard]] Choices peopleOf(Session& session);
[[nodiscard]] Choices ownersOf(Session& session);
// "26-014, wheat starch paste"; finished ones are not offered.
[[nodiscard]] Choices lotsOf(Session& session);
// "A Booke of Grafting, 1612": books that have been here; volumes of a set stand under their set.
[[nodiscard]] Choices booksOf(Session& session);

// Vocabularies: the key is kept, the name is seen.
[[nodiscard]] Choices hazardTerms();
[[nodiscard]] Choices techniqueTerms();

} // namespace headcap::app
