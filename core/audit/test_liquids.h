// What a test of the inks and colours says of a later bath: the liquid it was made with, and the
// leaves it was made on. A drop of water at one leaf tells nothing of calcium hydroxide at another.
#pragma once

#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

// Liquids that words name, each once: "water", "alkaline solution", "alcohol". What is damp, moist
// or pasted is wet with water. Empty: they name none.
[[nodiscard]] std::vector<std::string> liquidsIn(std::string_view words);

// That a step brings to the leaves: by its words and its materials, else by what its technique is.
[[nodiscard]] std::vector<std::string> liquidsOf(const JobFile& file, const Step& step);

// Whether the test was made with this liquid: water does not speak for an alkaline solution, which
// is water too. A test that names no liquid is taken for any.
[[nodiscard]] bool isTestedWith(const Test& test, const std::string& liquid);

// Whether the test may have been made on leaves of the step; where either names no leaves, yes.
[[nodiscard]] bool isTestedThere(const Test& test, const Step& step);

} // namespace headcap::core
