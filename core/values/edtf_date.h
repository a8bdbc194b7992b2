// One date of the Extended Date/Time Format, read. Inside of its reader.
#pragma once

#include <algorithm>
#include <optional>
#include <string_view>

#include "core/values/edtf.h"

namespace headcap::core {

// What is left of a text, and where in the whole it begins.
class EdtfCursor {
public:
    EdtfCursor(std::string_view text, std::size_t at) : m_text(text), m_at(at) {}

    [[nodiscard]] std::string_view rest() const { return m_text; }
    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] bool atEnd() const { return m_text.empty(); }
    void skip(std::size_t n) {
        m_text.remove_prefix(n);
        m_at += n;
    }
    bool take(std::string_view mark) {
        const bool found = m_text.starts_with(mark);
        skip(found ? mark.size() : 0);
        return found;
    }
    // How many figures stand at the head.
    [[nodiscard]] std::size_t digits() const {
        return std::min(m_text.find_first_not_of("0123456789"), m_text.size());
    }
    std::optional<int> twoDigits() {
        if (m_text.size() < 2 || digits() < 2) {
            return std::nullopt;
        }
        const int value = (m_text[0] - '0') * 10 + (m_text[1] - '0');
        skip(2);
        return value;
    }
    [[nodiscard]] tl::unexpected<TextError> error(TextProblem problem) const {
        return tl::unexpected(TextError{problem, m_at});
    }

private:
    std::string_view m_text;
    std::size_t m_at;
};

// A year, a month or season, a day, a time of the day: as much of them as stand there.
[[nodiscard]] tl::expected<EdtfDate, TextError> readEdtfDate(EdtfCursor& in);

// Whether there is such a month and day, and the parts that are not specified are the last.
[[nodiscard]] bool isSoundDate(const EdtfDate& date);

} // namespace headcap::core
