// Whether the usual sentence of how a technique is undone is true of one step. It is written for
// what the technique usually takes; where the step took something else, it would tell the next hand
// of a tissue that is not there.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/record/job_file.h"
#include "core/treatment/step_line.h"

namespace headcap::core {

// A material as a step used it; without a kind, by its words alone.
struct UsedInStep {
    const Material* kind = nullptr;
    std::string name{};
    std::string words{}; // the material in words, the product, the role
    std::string removal{};
};

// "speaks of tissue, and none is used"; empty where the sentence is true, is not the usual one of
// the technique, or where no material is named at all, which is asked for by itself.
[[nodiscard]] std::string undoingDoubt(const Technique* technique, std::string_view undoing,
                                       const std::vector<UsedInStep>& used);

[[nodiscard]] std::string undoingDoubt(const JobFile& file, const Step& step);
[[nodiscard]] std::string undoingDoubt(const LoggedStep& logged, const Shelf& shelf,
                                       const TechniquesInForce& techniques);
// Of a line read, before it is logged with the usual sentence.
[[nodiscard]] std::string undoingDoubt(const StepLine& line, const LineContext& context);

} // namespace headcap::core
