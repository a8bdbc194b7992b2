// Sets the time zone of a test and puts the old one back.
#pragma once

#include <cstdlib>
#include <optional>
#include <string>

namespace headcap::core::tests {

class InTimeZone {
public:
    explicit InTimeZone(const char* zone) {
        const char* old = std::getenv("TZ");
        m_old = old == nullptr ? std::nullopt : std::optional<std::string>(old);
        setenv("TZ", zone, 1);
    }
    ~InTimeZone() {
        if (m_old) {
            setenv("TZ", m_old->c_str(), 1);
        } else {
            unsetenv("TZ");
        }
    }
    InTimeZone(const InTimeZone&) = delete;
    InTimeZone& operator=(const InTimeZone&) = delete;

private:
    std::optional<std::string> m_old{};
};

} // namespace headcap::core::tests
