#include "core/photo/photo_steps.h"

#include "core/values/decimal.h"

namespace headcap::core {
namespace {

bool isFree(const Photograph& photograph) {
    const bool isOfWork =
        photograph.role == PhotoRole::during || photograph.role == PhotoRole::detail;
    return isOfWork && photograph.takenAt && !photograph.step && !photograph.finding &&
           !photograph.facsimile;
}

// The steps that hold the moment, widened by so much before and after.
std::vector<const Step*> holding(std::span<const Step> steps, Instant at, Minutes before,
                                 Minutes after) {
    std::vector<const Step*> held;
    for (const Step& step : steps) {
        if (!step.struckAt && step.at - before <= at && at <= step.at + step.minutes + after) {
            held.push_back(&step);
        }
    }
    return held;
}

Minutes minutesIn(std::string_view text, Minutes fallback) {
    const auto value = parseDecimal(text, 0);
    return value ? Minutes{*value} : fallback;
}

} // namespace

PhotoTimes photoTimesOf(std::span<const HouseValue> own) {
    PhotoTimes times;
    for (const HouseValue& one : own) {
        if (one.key == kPhotoBefore) {
            times.before = minutesIn(one.value, times.before);
        } else if (one.key == kPhotoAfter) {
            times.after = minutesIn(one.value, times.after);
        } else if (one.key == kCameraAhead) {
            times.cameraAhead = minutesIn(one.value, times.cameraAhead);
        }
    }
    return times;
}

std::vector<PhotoOfStep> photographsInSteps(std::span<const Photograph> photographs,
                                            std::span<const Step> steps, const PhotoTimes& times) {
    std::vector<PhotoOfStep> found;
    for (const Photograph& photograph : photographs) {
        if (!isFree(photograph)) {
            continue;
        }
        const Instant at = *photograph.takenAt - times.cameraAhead;
        auto held = holding(steps, at, Minutes{0}, Minutes{0});
        if (held.empty()) {
            held = holding(steps, at, times.before, times.after);
        }
        if (!held.empty()) {
            found.push_back({&photograph, held.size() == 1 ? held.front() : nullptr});
        }
    }
    return found;
}

} // namespace headcap::core
