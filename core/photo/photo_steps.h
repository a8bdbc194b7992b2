// Which step a photograph was taken in, by the time its camera wrote into it. A photograph that
// could be of two steps is of none: a person says which.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/materials/recipe_record.h"
#include "core/photo/photograph.h"
#include "core/treatment/step.h"

namespace headcap::core {

// House values: how long before a step is begun and after it is done a photograph is still of it,
// and how far the camera's clock runs ahead of the workshop's (behind: less than nothing).
struct PhotoTimes {
    Minutes before{5};
    Minutes after{10};
    Minutes cameraAhead{0};
};
inline constexpr std::string_view kPhotoBefore = "photographs.before";
inline constexpr std::string_view kPhotoAfter = "photographs.after";
inline constexpr std::string_view kCameraAhead = "photographs.camera_ahead";

[[nodiscard]] PhotoTimes photoTimesOf(std::span<const HouseValue> own);

struct PhotoOfStep {
    const Photograph* photograph;
    const Step* step = nullptr; // nothing: it could be of several
};

// Of photographs of the work (during, detail) that belong to nothing yet, those whose time falls
// into a step that stands: within its own minutes where one holds it, else within the minutes
// before and after. Photographs that fall into none are left out.
[[nodiscard]] std::vector<PhotoOfStep> photographsInSteps(std::span<const Photograph> photographs,
                                                          std::span<const Step> steps,
                                                          const PhotoTimes& times);

} // namespace headcap::core
