#include "core/record/kind_words.h"

#include <array>

#include "core/values/english.h"

namespace headcap::core {
namespace {

struct Noun {
    std::string_view one, many;
};

// In the order of RecordKind.
constexpr auto kNouns = std::to_array<Noun>({
    {"workshop", "workshops"},
    {"person", "people"},
    {"owner", "owners"},
    {"book", "books"},
    {"work", "works"},
    {"job", "jobs"},
    {"change of state", "changes of state"},
    {"piece", "pieces"},
    {"move", "moves"},
    {"hazard", "hazards"},
    {"notice", "notices"},
    {"follow-up", "follow-ups"},
    {"attachment", "attachments"},
    {"examination", "examinations"},
    {"finding", "findings"},
    {"test", "tests"},
    {"collation", "collations"},
    {"collation finding", "collation findings"},
    {"facsimile", "facsimiles"},
    {"proposal", "proposals"},
    {"option", "options"},
    {"line of the proposal", "lines of the proposal"},
    {"decision", "decisions"},
    {"step", "steps"},
    {"use of a material", "uses of a material"},
    {"material", "materials"},
    {"lot", "lots"},
    {"part of the mix", "parts of the mix"},
    {"ledger entry", "ledger entries"},
    {"photograph", "photographs"},
    {"issued report", "issued reports"},
    {"walk through the book", "walks through the book"},
    {"look at the leaf", "looks at the leaf"},
    {"plate called for", "plates called for"},
    {"line of the leaf sheet", "lines of the leaf sheet"},
    {"cutting", "cuttings"},
    {"part of the cutting", "parts of the cutting"},
    {"recipe", "recipes"},
    {"part of the recipe", "parts of the recipe"},
    {"house value", "house values"},
    {"technique of the house", "techniques of the house"},
    {"clock", "clocks"},
    {"setting time", "setting times"},
    {"check of the step", "checks of the step"},
    {"row of the release list", "rows of the release list"},
    {"explanation", "explanations"},
    {"return", "returns"},
});
static_assert(kNouns.size() == kRecordKindCount);

const Noun& wordsOf(RecordKind kind) {
    return kNouns[static_cast<std::size_t>(kind)];
}

} // namespace

std::string_view nounOf(RecordKind kind) {
    return wordsOf(kind).one;
}

std::string oneOf(RecordKind kind) {
    // By the letter it begins with, as it is spoken: "a use".
    const std::string_view noun = nounOf(kind);
    const bool isVowel = std::string_view{"aeio"}.find(noun.front()) != std::string_view::npos;
    return (isVowel ? "an " : "a ") + std::string{noun};
}

std::string countsText(const std::vector<KindCount>& counts) {
    std::vector<std::string> said;
    for (const KindCount& one : counts) {
        const Noun& words = wordsOf(one.kind);
        said.push_back(counted(static_cast<std::size_t>(one.count), words.one, words.many));
    }
    return listed(said);
}

} // namespace headcap::core
