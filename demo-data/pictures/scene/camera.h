// What a camera adds: a light that falls off, a lens darker in its corners, and the grain and
// colour noise of a sensor. And the file it writes.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include <QImage>

#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

struct Exposure {
    Seed seed = 1;
    float lift = 1;       // of the light overall
    float noise = 1;      // of the sensor's noise
    float warmth = 0.01F; // of the lamp
};

void expose(QImage& image, const Exposure& exposure);

struct Frame {
    std::string takenAt{}; // "2031:03:05 09:10:00"; empty: the camera's clock was not set
    bool sideways = false; // held on its side: stored turned, with the orientation that says so
    std::string title{};
};

// JPEG of quality 90, with EXIF where there is anything to say.
[[nodiscard]] std::vector<std::byte> developed(const QImage& image, const Frame& frame);

} // namespace headcap::demo
