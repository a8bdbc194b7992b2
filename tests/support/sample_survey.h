// What a survey and a camera add to the sample workshop's job: findings, examinations, a test, and
// drawn photographs, one of whose files is missing.
#pragma once

#include "tests/support/sample_workshop.h"

namespace headcap::tests {

void addSurvey(SampleWorkshop& sample);
void addPhotographs(SampleWorkshop& sample);

// A small JPEG that looks like a page of grey paper, another one for each seed.
[[nodiscard]] QByteArray drawnJpeg(QSize size, unsigned seed);

} // namespace headcap::tests
