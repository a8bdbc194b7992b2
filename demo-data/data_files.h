// The readable data of demo-data/data, as built in.
#pragma once

#include <vector>

#include "core/values/embedded_file.h"

namespace headcap {

std::vector<EmbeddedFile> demoFiles();

namespace demo {
using headcap::demoFiles;
} // namespace demo

} // namespace headcap
