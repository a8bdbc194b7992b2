#include "core/report/worked_on.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace headcap::core::report {
namespace {

struct Answer {
    std::string_view component; // of resources/condition_terms.json
    std::string_view technique; // of resources/techniques.json
};

constexpr std::array kAnswers{Answer{"boards", "board_reattaching"},
                              Answer{"boards", "board_consolidating"},
                              Answer{"boards", "lacing_on"},
                              Answer{"boards", "covering"},
                              Answer{"boards", "casing_in"},
                              Answer{"spine", "rebacking"},
                              Answer{"spine", "spine_lining"},
                              Answer{"spine", "gluing_up"},
                              Answer{"spine", "rounding_backing"},
                              Answer{"spine", "adhesive_removing"},
                              Answer{"spine", "covering"},
                              Answer{"spine", "casing_in"},
                              Answer{"joints", "joint_repair"},
                              Answer{"joints", "hinge_repair"},
                              Answer{"joints", "rebacking"},
                              Answer{"joints", "board_reattaching"},
                              Answer{"joints", "covering"},
                              Answer{"joints", "casing_in"},
                              Answer{"caps", "headcap_repair"},
                              Answer{"caps", "rebacking"},
                              Answer{"caps", "covering"},
                              Answer{"endbands", "headbands"},
                              Answer{"leather", "leather_consolidating"},
                              Answer{"leather", "covering"},
                              Answer{"cloth", "cloth_repair"},
                              Answer{"cloth", "covering"},
                              Answer{"endpapers", "endpapers"},
                              Answer{"endpapers", "hinge_repair"},
                              Answer{"endpapers", "pasting_down"},
                              Answer{"sewing", "resewing"},
                              Answer{"sewing", "sewing_repair"},
                              Answer{"leaves", "tear_mending"},
                              Answer{"leaves", "infilling"},
                              Answer{"leaves", "lining_leaves"},
                              Answer{"leaves", "guarding"},
                              Answer{"leaves", "tipping_in"},
                              Answer{"leaves", "hinging"},
                              Answer{"leaves", "encapsulating"},
                              Answer{"discoloration", "washing"},
                              Answer{"discoloration", "surface_cleaning"},
                              Answer{"media", "media_consolidating"},
                              Answer{"biological", "mould_cleaning"},
                              Answer{"biological", "freezing"},
                              Answer{"attached", "removing"},
                              Answer{"attached", "removing_tape"}};

} // namespace

bool isWorkedOn(const JobFile& file, const Finding& finding) {
    return std::ranges::any_of(file.steps, [&](const Step& step) {
        return !step.struckAt && std::ranges::any_of(kAnswers, [&](const Answer& answer) {
            return answer.component == finding.component && answer.technique == step.technique;
        });
    });
}

} // namespace headcap::core::report
