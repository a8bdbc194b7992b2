#include "core/audit/point_groups.h"

#include <algorithm>
#include <array>

namespace headcap::core {
namespace {

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

// How many words both begin with: the name of what they are of, and no word of what is wrong.
std::size_t nameLength(std::string_view one, std::string_view other) {
    constexpr auto kVerbs = std::to_array<std::string_view>(
        {"does", "is", "has", "names", "comes", "agrees", "stands"});
    const auto words = wordsOf(one);
    const auto others = wordsOf(other);
    const auto differs = std::ranges::mismatch(words, others).in1;
    const auto verb = std::find_first_of(words.begin(), differs, kVerbs.begin(), kVerbs.end());
    return static_cast<std::size_t>(verb - words.begin());
}

std::string_view afterWords(std::string_view text, std::size_t count) {
    for (; count > 0; --count) {
        text.remove_prefix(std::min(text.find(' '), text.size() - 1) + 1);
    }
    return text;
}

std::string withoutStop(std::string_view text) {
    return std::string{text.ends_with('.') ? text.substr(0, text.size() - 1) : text};
}

// "The facsimile of K5 is not marked as a facsimile; names no permission."
bool join(PointGroup& group, const AuditPoint& point) {
    const std::size_t name = nameLength(group.sentence, point.sentence);
    if (name < 2 || name >= wordsOf(point.sentence).size()) {
        return false;
    }
    if (group.open.empty()) {
        const std::string_view open = afterWords(group.sentence, name);
        group.name = group.sentence.substr(0, group.sentence.size() - open.size() - 1);
        group.open.push_back(withoutStop(open));
    }
    group.open.push_back(withoutStop(afterWords(point.sentence, name)));
    group.sentence = withoutStop(group.sentence) + "; " + group.open.back() + '.';
    if (group.source.find(point.source) == std::string::npos) {
        group.source += "; " + point.source;
    }
    return true;
}

} // namespace

std::vector<PointGroup> grouped(std::span<const AuditPoint> points) {
    std::vector<PointGroup> groups;
    for (const AuditPoint& point : points) {
        const auto known = std::ranges::find_if(groups, [&](const PointGroup& group) {
            return group.record == point.record && group.page == point.page &&
                   group.severity == point.severity;
        });
        const bool isOfLeaf = point.record.kind == RecordKind::facsimile;
        if (known == groups.end() || !isOfLeaf || !join(*known, point)) {
            groups.push_back(
                {point.severity, point.record, point.page, point.sentence, point.source});
        }
    }
    return groups;
}

} // namespace headcap::core
