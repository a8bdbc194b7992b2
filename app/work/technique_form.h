// The form of a technique as the workshop does it.
#pragma once

#include "app/form/record_form.h"
#include "core/treatment/house_technique.h"

namespace headcap::app {

using TechniqueForm = RecordForm<core::HouseTechnique>;

// With all its rows.
[[nodiscard]] TechniqueForm* makeTechniqueForm(Session& session);

} // namespace headcap::app
