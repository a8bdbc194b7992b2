// What stands on the label of a lot or a job: what it is, and what must be known of it.
#pragma once

#include <QString>

#include "app/print/labels.h"
#include "core/materials/material.h"
#include "core/record/job_file.h"

namespace headcap::app {

[[nodiscard]] print::LabelWords labelOf(const core::Lot& lot, const core::Material* kind,
                                        const QString& mixer);

// Every hazard of the book, when it is due, and what came with it.
void addJob(print::LabelWords& label, const core::JobFile& file);

} // namespace headcap::app
