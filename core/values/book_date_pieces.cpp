// The pieces of a text that its readers take apart, and of a date that they put together.
#include "core/values/book_date_point.h"
#include "core/values/number_scan.h"

namespace headcap::core {
namespace {

using std::string_view;

bool allDigits(string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == string_view::npos;
}

} // namespace

char joinedQualifier(char a, char b) {
    if (a == '\0' || a == b) {
        return b;
    }
    return b == '\0' ? a : '%';
}

EdtfDate dateOfYear(std::int64_t year, int unspecifiedDigits) {
    EdtfDate date;
    date.year = year;
    date.unspecifiedDigits = unspecifiedDigits;
    return date;
}

std::optional<int> plainNumber(string_view text) {
    if (!allDigits(text) || text.size() > 4) {
        return std::nullopt;
    }
    int value = 0;
    for (const char c : text) {
        value = value * 10 + (c - '0');
    }
    return value;
}

std::vector<std::string> dateWords(string_view text) {
    std::vector<std::string> words(1);
    for (const char c : text) {
        if (c == ' ' || c == ',') {
            words.emplace_back();
        } else {
            words.back() += c;
        }
    }
    std::erase_if(words, [](const std::string& word) {
        return word.empty() || word == "of" || word == "the" || word == "die" || word == "mense";
    });
    return words;
}

std::string tidyDate(string_view text) {
    std::string out;
    for (const char c : trimmed(text)) {
        if (c != ' ' || !out.ends_with(' ')) {
            out += c;
        }
    }
    while (out.ends_with(',') || out.ends_with(';') || out.ends_with(' ')) {
        out.pop_back();
    }
    return out;
}

std::string replacedIn(std::string text, string_view what, string_view by) {
    for (std::size_t at = text.find(what); at != std::string::npos;
         at = text.find(what, at + by.size())) {
        text.replace(at, what.size(), by);
    }
    return text;
}

} // namespace headcap::core
