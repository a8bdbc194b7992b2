#include "core/photo/photo_order.h"

#include <algorithm>

namespace headcap::core {

PhotoRole usualRole(JobState state) {
    switch (state) {
    case JobState::received:
    case JobState::surveyed:
    case JobState::proposed:
    case JobState::approved:
    case JobState::declined:
    case JobState::withdrawn:
        return PhotoRole::before;
    case JobState::atTheBench:
    case JobState::onHold:
        return PhotoRole::during;
    case JobState::passed:
    case JobState::reported:
    case JobState::returned:
        break;
    }
    return PhotoRole::after;
}

std::int64_t nextPosition(const std::vector<Photograph>& all, PhotoRole role) {
    std::int64_t last = 0;
    for (const Photograph& photo : all) {
        if (photo.role == role) {
            last = std::max(last, photo.position);
        }
    }
    return last + 1;
}

std::vector<Photograph> moved(const std::vector<Photograph>& all, const Id<Photograph>& one,
                              int by) {
    const auto chosen = std::ranges::find(all, one, &Photograph::id);
    if (chosen == all.end()) {
        return {};
    }
    std::vector<Photograph> row;
    std::ranges::copy_if(all, std::back_inserter(row),
                         [&](const Photograph& photo) { return photo.role == chosen->role; });
    const auto from = std::ranges::find(row, one, &Photograph::id) - row.begin();
    const auto last = static_cast<std::ptrdiff_t>(row.size()) - 1;
    const auto to = std::clamp<std::ptrdiff_t>(from + by, 0, last);
    if (to < from) {
        std::rotate(row.begin() + to, row.begin() + from, row.begin() + from + 1);
    } else {
        std::rotate(row.begin() + from, row.begin() + from + 1, row.begin() + to + 1);
    }
    if (to == from) {
        return {};
    }
    std::vector<Photograph> changed;
    std::int64_t position = 0;
    for (Photograph& photo : row) {
        if (photo.position != ++position) {
            photo.position = position;
            changed.push_back(photo);
        }
    }
    return changed;
}

} // namespace headcap::core
