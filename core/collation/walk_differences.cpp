#include "core/collation/walk_differences.h"

#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/collation/finding_words.h"
#include "core/collation/folds.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

struct Walked {
    const Walk* walk;
    std::vector<WalkEntry> entries;
    WalkState state;
};

std::string readingWords(const WalkEntry& entry) {
    std::vector<std::string> read;
    const auto add = [&](std::string_view what, const std::string& text) {
        if (!text.empty()) {
            read.push_back(fmt::format("{} {}", what, text));
        }
    };
    add("signed", entry.signature);
    add("recto", entry.rectoNumber);
    add("verso", entry.versoNumber);
    if (entry.runsOn == TextRunsOn::no) {
        read.emplace_back("the text breaks");
    }
    return listed(read);
}

// What one walk says of a leaf: its findings there, or what was read, or that all is as expected.
std::string saidOf(const CopyRecords& copy, const Walked& walked, std::size_t leaf) {
    std::vector<std::string> said;
    for (const WalkEntry& entry : walked.entries) {
        const bool isHere =
            entry.scope == WalkScope::leaf && entry.position == static_cast<std::int64_t>(leaf) + 1;
        const auto finding = std::ranges::find_if(
            copy.findings, [&](const CollationFinding& one) { return entry.finding == one.id; });
        if (isHere && finding != copy.findings.end()) {
            said.push_back(wordsOf(*finding));
        }
    }
    const LeafWalked& one = walked.state.leaves[leaf];
    if (said.empty() && one.read != nullptr) {
        if (const std::string read = readingWords(*one.read); !read.empty()) {
            said.push_back(read);
        }
    }
    return !said.empty() ? listed(said) : one.asExpected ? "as expected" : "not as expected";
}

} // namespace

std::vector<std::string> walkDifferences(const CopyRecords& copy) {
    const LaidBook book = walkedBook(copy.formula, copy.extent).book;
    std::vector<Walked> walks;
    for (const Walk& walk : copy.walks) {
        if (walk.kind == WalkKind::againstMakeUp && walk.formula == copy.formula) {
            walks.push_back({&walk, entriesOf(walk, copy.entries), {}});
            walks.back().state = stateOf(book, walks.back().entries);
        }
    }
    std::set<std::size_t> apart;
    for (std::size_t i = 0; i < walks.size(); ++i) {
        for (std::size_t j = i + 1; j < walks.size(); ++j) {
            const auto leaves = disagreements(walks[i].state, walks[j].state);
            apart.insert(leaves.begin(), leaves.end());
        }
    }
    std::vector<std::string> sentences;
    for (const std::size_t leaf : apart) {
        std::vector<std::string> said;
        for (const Walked& walked : walks) {
            if (walked.state.leaves[leaf].looked != Looked::no) {
                const std::string who = nameOf(copy, walked.walk->who);
                said.push_back(fmt::format("{} for {}", saidOf(copy, walked, leaf),
                                           who.empty() ? "somebody not named" : who));
            }
        }
        sentences.push_back(
            fmt::format("Leaf {}: {}.", leafText(book, leaf), fmt::join(said, "; ")));
    }
    return sentences;
}

} // namespace headcap::core
