// What is wrong with the demo's own data, and where: "atlas.json, step @down, field minutes: …".
#pragma once

#include <stdexcept>
#include <string>

namespace headcap::demo {

class DataError : public std::runtime_error {
public:
    using runtime_error::runtime_error;
};

} // namespace headcap::demo
