// The form of one photograph: what it shows, what it belongs to, how it stands in the report; and
// below, what is known of its file.
#pragma once

#include <functional>

#include "app/form/record_form.h"
#include "core/record/job_file.h"

namespace headcap::app::photo {

using FileNow = std::function<const core::JobFile*()>;

void buildPhotoForm(RecordForm<core::Photograph>& form, const FileNow& file);

// "IMG_4711.JPG, 6000 × 4000 pixels, 9.4 MB, taken 3 March, 10:05"
[[nodiscard]] QString factsOf(const core::Photograph& photograph, const core::Clock& clock);

} // namespace headcap::app::photo
