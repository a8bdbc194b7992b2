#include "core/treatment/taken_out.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_words.h"

namespace headcap::core {
namespace {

// What leaves no doubt, whatever the step is.
constexpr auto kPlain = std::to_array<std::string_view>(
    {"thrown away", "thrown out", "returned to owner", "returned to the owner",
     "given back to owner", "given back to the owner", "given to owner", "given to the owner",
     "kept with book", "kept with the book", "kept in envelope", "kept in an envelope",
     "kept in the envelope", "in envelope", "in an envelope", "in the envelope"});
constexpr auto kOfRemoval = std::to_array<std::string_view>(
    {"kept",           "given back",      "handed back", "returned",     "discarded",
     "thrown away",    "thrown out",      "binned",      "put by",       "stored",
     "saved in",       "with the book",   "to owner",    "to the owner", "in envelope",
     "in an envelope", "in the envelope", "in folder",   "in a folder",  "in bag",
     "in a bag"});

template <class List>
bool beginsFate(const line::Words& words, std::size_t at, const List& fates) {
    return std::ranges::any_of(
        fates, [&](std::string_view fate) { return line::stands(words, at, line::wordsOf(fate)); });
}

} // namespace

TakenOut takenOutIn(std::string_view text, StepKind kind) {
    const bool isRemoval = kind == StepKind::removal;
    const line::Words words = line::split(text);
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (!(isRemoval ? beginsFate(words, at, kOfRemoval) : beginsFate(words, at, kPlain))) {
            continue;
        }
        std::string_view what = text.substr(0, words[at].begin);
        const std::size_t last = what.find_last_not_of(" ,;:");
        what = last == std::string_view::npos ? std::string_view{} : what.substr(0, last + 1);
        if (what.empty() && !isRemoval) {
            break;
        }
        const bool saysNotWhere = words[at].lower == "kept" && at + 1 == words.size();
        return {std::string{what},
                saysNotWhere ? std::string{} : std::string{text.substr(words[at].begin)}};
    }
    return isRemoval ? TakenOut{std::string{text}, {}} : TakenOut{};
}

} // namespace headcap::core
