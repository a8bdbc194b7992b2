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
    // Nothing of it is on the shelf yet.
    std::function<bool(const core::Lot&)> isEmpty;
    // What came in, as it was typed; in one sentence why it could not be entered.
    std::function<QString(const core::Lot&, const QString&)> takeIn;
};

void buildLotForm(RecordForm<core::Lot>& form, const LotFormMeans& means);

} // namespace headcap::app
