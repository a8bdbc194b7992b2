#include "core/values/book_date.h"

#include <algorithm>
#include <array>
#include <vector>

#include "core/values/book_date_span.h"
#include "core/values/book_date_words.h"
#include "core/values/fold.h"
#include "core/values/number_scan.h"

namespace headcap::core {
namespace {

using namespace book_date;
using std::string_view;

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

// Folded, blanks single, dashes and the reversed C as single bytes, brackets gone: what a
// cataloguer supplies is the date all the same.
std::string plainText(string_view typed) {
    std::string text(typed);
    for (const string_view dash : {"\u2013", "\u2014", "\u2012"}) {
        text = replacedIn(std::move(text), dash, string_view(&kLongDash, 1));
    }
    for (const string_view reversed : {"\u0186", "\u0254", "\u2183", "\u2184"}) {
        text = replacedIn(std::move(text), reversed, ")");
    }
    text = replacedIn(foldForSearch(text), "(?)", "?");
    for (const string_view correction : {"i.e.", "i. e.", "recte"}) {
        if (const std::size_t at = text.find(correction); at != std::string::npos) {
            text.erase(0, at + correction.size());
        }
    }
    std::erase_if(text, [](char c) { return c == '[' || c == ']'; });
    text = tidyDate(replacedIn(std::move(text), " ?", "?"));
    if (text.ends_with('.') && text.size() > 1 && isDigit(text[text.size() - 2])) {
        text.pop_back();
    }
    return text;
}

// The members of "1651, 1653-1655, 57"; nothing where one can't be read.
std::optional<std::vector<EdtfMember>> members(const std::string& text) {
    std::vector<EdtfMember> read;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find(',', from), text.size());
        const std::string one = tidyDate(string_view(text).substr(from, to - from));
        const MaybeDate shorter =
            read.empty() ? std::nullopt : shortYear(read.back().first.date, one);
        if (const MaybeDate date = shorter ? shorter : datePoint(one)) {
            read.push_back({endAt(*date), std::nullopt});
        } else if (const MaybeEdtf span = interval(one); span && span->kind == EdtfKind::interval) {
            read.push_back(span->members[0]);
        } else {
            return std::nullopt;
        }
        from = to + 1;
    }
    return read;
}

// "1655 or 1656", "1651, 1653 and 1655".
MaybeEdtf list(const std::string& text) {
    struct Word {
        string_view text;
        EdtfKind kind;
    };
    static constexpr auto kWords = std::to_array<Word>({{" or ", EdtfKind::oneOf},
                                                        {" oder ", EdtfKind::oneOf},
                                                        {" and ", EdtfKind::allOf},
                                                        {" und ", EdtfKind::allOf},
                                                        {" & ", EdtfKind::allOf},
                                                        {",", EdtfKind::allOf}});
    const auto word = std::ranges::find_if(
        kWords, [&](const Word& w) { return text.find(w.text) != std::string::npos; });
    if (word == kWords.end()) {
        return std::nullopt;
    }
    if (const auto all = members(replacedIn(text, word->text, ","))) {
        return sound({word->kind, *all});
    }
    return cutAt(text, word->text, [&](const std::string& left, const std::string& right) {
        const auto dates = bothDates(left, right);
        return dates ? sound({word->kind,
                              {{endAt(dates->first), std::nullopt},
                               {endAt(dates->last), std::nullopt}}})
                     : std::nullopt;
    });
}

MaybeEdtf asTyped(const std::string& text) {
    if (const MaybeDate date = datePoint(text)) {
        return sound({EdtfKind::date, {{endAt(*date), std::nullopt}}});
    }
    for (const auto reader : {+[](const std::string& t) { return partOfCentury(t); },
                              +[](const std::string& t) { return bounded(t); },
                              +[](const std::string& t) { return interval(t); },
                              +[](const std::string& t) { return list(t); }}) {
        if (MaybeEdtf edtf = reader(text)) {
            return edtf;
        }
    }
    return std::nullopt;
}

} // namespace

tl::expected<BookDate, TextError> parseBookDate(string_view text) {
    const string_view body = trimmed(text);
    const std::size_t head = blanksAtHead(text);
    auto edtf = parseEdtf(body);
    if (edtf && edtf->members.size() == 1 && !edtf->members[0].last) {
        edtf->kind = EdtfKind::date; // "[1655]" is a date that a cataloguer supplied
    }
    if (edtf) {
        return BookDate{edtfText(*edtf)};
    }
    if (std::ranges::count(body, '[') != std::ranges::count(body, ']')) {
        return tl::unexpected(TextError{TextProblem::malformed, head + body.find_first_of("[]")});
    }
    const std::string plain = plainText(body);
    if (plain.empty() || saysUndated(plain)) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    if (const MaybeEdtf typed = asTyped(plain)) {
        return BookDate{edtfText(*typed)};
    }
    // Where the text was meant for EDTF, its reader knows the place.
    const bool isFormal = body.find_first_not_of("0123456789X-/?~%.,Y[]{}") == string_view::npos;
    return tl::unexpected(isFormal ? TextError{edtf.error().problem, head + edtf.error().at}
                                   : TextError{TextProblem::malformed, head});
}

} // namespace headcap::core
