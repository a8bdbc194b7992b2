// The form of a kind of material: what is asked depends on what kind it is.
#pragma once

#include "app/form/record_form.h"
#include "core/materials/material.h"

namespace headcap::app {

void buildKindForm(RecordForm<core::Material>& form);

} // namespace headcap::app
