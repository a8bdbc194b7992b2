#include "core/catchwords/story_names.h"

#include <fmt/format.h>

namespace headcap::core {

std::string leafName(const StoryLeaf& leaf, int back) {
    if (leaf.position == 0)
        return {};
    if (!leaf.gathering)
        return fmt::format("leaf {} of an unsigned gathering", leaf.position - back);
    return fmt::format("{}{}", signatureOf(*leaf.gathering), leaf.position - back);
}

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (std::size_t at = 0; at < parts.size(); ++at) {
        text += at == 0 ? "" : at + 1 == parts.size() ? " and " : ", ";
        text += parts[at];
    }
    return text;
}

std::size_t StoryNames::lastRowBefore(std::size_t at) const {
    if (at == 0)
        return 0;
    const std::size_t last = bound(at - 1).lastRow() + 1;
    return last < firstRow(at) ? last : firstRow(at) - 1;
}

std::string_view StoryNames::markOf(std::size_t at) const {
    for (const auto& row : {bound(at).recto, bound(at).verso}) {
        if (row && !m_book.pages[*row].signature.empty())
            return m_book.pages[*row].signature;
    }
    return {};
}

std::string StoryNames::numbersBefore(std::size_t at, int leaves) const {
    const int after = *m_story[at].expectedNumber;
    const int first = after - unit() * leaves;
    if (unit() == 1)
        return leaves == 1 ? fmt::format("f. {}", first)
                           : fmt::format("ff. {}–{}", first, after - 1);
    return fmt::format("pp. {}–{}", first, after - 1);
}

std::string StoryNames::lackingNames(std::size_t at) const {
    const StoryLeaf& leaf = m_story[at];
    const Arrival& arrival = leaf.arrival;
    if (!leaf.gathering)
        return fmt::format("({})", arrival.lacking());
    if (arrival.gatheringsLacking > 0)
        return "(a whole gathering)";
    std::vector<std::string> names;
    if (arrival.lackingBefore > 0 && at > 0) {
        const StoryLeaf& before = m_story[at - 1];
        for (int back = 1; back <= arrival.lackingBefore; ++back)
            names.push_back(leafName(before, -back - arrival.countedBefore));
    }
    for (int back = arrival.lackingAfter; back >= 1; --back)
        names.push_back(leafName(leaf, back));
    return fmt::format("({})", joined(names));
}

std::string StoryNames::catchwordFails(std::size_t at) const {
    if (at == 0)
        return {};
    const BoundLeaf& before = bound(at - 1);
    for (const auto& row : {before.verso, before.recto}) {
        if (row && !m_book.pages[*row].catchword.empty())
            return fmt::format("the catchword “{}” does not meet the next page",
                               m_book.pages[*row].catchword);
    }
    return "the text does not run on";
}

} // namespace headcap::core
