// Spans of time as people type them: "1702-1741", "not after 1660", "early 16th century". Inside of
// the reader of book_date.h; texts come as book_date_point.h wants them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/values/book_date_point.h"
#include "core/values/edtf.h"

namespace headcap::core::book_date {

using MaybeDate = std::optional<EdtfDate>;
using MaybeEdtf = std::optional<Edtf>;

// "early 16th century": one of the years about there.
[[nodiscard]] MaybeEdtf partOfCentury(std::string text);
// "1702-1741", "from 1600 to 1610", "1600-", "until 1660", "1648/9".
[[nodiscard]] MaybeEdtf interval(std::string text);
// "not after 1660", "before 1660", "between 1655 and 1660".
[[nodiscard]] MaybeEdtf bounded(std::string text);

[[nodiscard]] EdtfEnd endAt(const EdtfDate& date);
// Nothing where it can't be, or its ends come in the wrong order.
[[nodiscard]] MaybeEdtf sound(Edtf edtf);

// "41" after "1702" is 1741.
[[nodiscard]] MaybeDate shortYear(const EdtfDate& first, std::string_view text);

struct TwoDates {
    EdtfDate first;
    EdtfDate last;
    bool wasShort = false; // the second was written in part
};

// Both dates of "1702 - 41", "16th-17th century", "March to May 1612": each may lean on the other.
[[nodiscard]] std::optional<TwoDates> bothDates(const std::string& left, const std::string& right);

// The text cut in two at a mark; every place is tried.
template <class Read>
MaybeEdtf cutAt(const std::string& text, std::string_view mark, Read read) {
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        if (MaybeEdtf edtf =
                read(tidyDate(text.substr(0, at)), tidyDate(text.substr(at + mark.size())))) {
            return edtf;
        }
    }
    return std::nullopt;
}

} // namespace headcap::core::book_date
