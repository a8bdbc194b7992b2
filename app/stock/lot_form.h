// The form of a lot: what is asked depends on where it came from and of what kind it is.
#pragma once

#include <functional>

#include "app/form/record_form.h"
#include "core/materials/material.h"

namespace headcap::app {

struct LotFormMeans {
    Session& session;
    Choices kinds;
    std::function<const core::Material*(const core::Id<core::Material>&)> kind;
};

void buildLotForm(RecordForm<core::Lot>& form, const LotFormMeans& means);

} // namespace headcap::app
