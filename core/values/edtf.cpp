#include "core/values/edtf.h"

#include "core/values/edtf_date.h"

namespace headcap::core {
namespace {

tl::expected<EdtfEnd, TextError> readEnd(EdtfCursor& in) {
    if (in.take("..")) {
        return EdtfEnd{EdtfEndKind::open, {}};
    }
    if (in.atEnd() || in.rest().starts_with('/')) {
        return EdtfEnd{EdtfEndKind::unknown, {}};
    }
    return readEdtfDate(in).map([](EdtfDate date) { return EdtfEnd{EdtfEndKind::date, date}; });
}

tl::expected<EdtfMember, TextError> readSetMember(EdtfCursor& in) {
    EdtfMember member;
    if (in.take("..")) {
        member.first.kind = EdtfEndKind::open;
        member.last.emplace();
    } else {
        auto date = readEdtfDate(in);
        if (!date) {
            return tl::unexpected(date.error());
        }
        member.first.date = *date;
        if (!in.take("..")) {
            return member;
        }
        member.last.emplace();
        if (in.rest().starts_with(',') || in.rest().starts_with(']') ||
            in.rest().starts_with('}')) {
            member.last->kind = EdtfEndKind::open;
            return member;
        }
    }
    auto date = readEdtfDate(in);
    if (!date) {
        return tl::unexpected(date.error());
    }
    member.last->date = *date;
    return member;
}

tl::expected<Edtf, TextError> readSet(EdtfCursor& in) {
    const bool oneOf = in.take("[");
    if (!oneOf) {
        in.take("{");
    }
    const std::string_view close = oneOf ? "]" : "}";
    Edtf set{oneOf ? EdtfKind::oneOf : EdtfKind::allOf, {}};
    do {
        in.take(set.members.empty() ? "" : " ");
        auto member = readSetMember(in);
        if (!member) {
            return tl::unexpected(member.error());
        }
        set.members.push_back(*member);
    } while (in.take(","));
    if (!in.take(close)) {
        return in.error(TextProblem::malformed);
    }
    return set;
}

tl::expected<Edtf, TextError> readDateOrInterval(EdtfCursor& in) {
    auto first = readEnd(in);
    if (!first) {
        return tl::unexpected(first.error());
    }
    Edtf edtf{EdtfKind::date, {{*first, std::nullopt}}};
    if (in.take("/")) {
        auto last = readEnd(in);
        if (!last) {
            return tl::unexpected(last.error());
        }
        edtf.kind = EdtfKind::interval;
        edtf.members[0].last = *last;
    }
    return edtf;
}

} // namespace

tl::expected<Edtf, TextError> parseEdtf(std::string_view text) {
    if (text.empty()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    EdtfCursor in(text, 0);
    const bool isSet = text.starts_with('[') || text.starts_with('{');
    auto edtf = isSet ? readSet(in) : readDateOrInterval(in);
    if (!edtf) {
        return edtf;
    }
    if (!in.atEnd()) {
        return in.error(TextProblem::trailing);
    }
    if (!isSound(*edtf)) {
        return tl::unexpected(TextError{TextProblem::outOfRange, 0});
    }
    return edtf;
}

} // namespace headcap::core
