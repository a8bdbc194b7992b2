#include "core/report/work_words.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/report/writing.h"
#include "core/treatment/totals.h"
#include "core/values/english.h"
#include "core/values/small_letters.h"

namespace headcap::core::report {
namespace {

bool beginsSo(std::string_view text, std::string_view word) {
    return inSmallLetters(text).starts_with(inSmallLetters(word));
}

std::string firstWord(std::string_view text) {
    return inSmallLetters(text.substr(0, text.find_first_of(" ,;.")));
}

std::string secondWord(std::string_view text) {
    const std::size_t space = text.find(' ');
    return space == std::string_view::npos ? std::string{} : firstWord(text.substr(space + 1));
}

// "Wash the stained leaves" says washing, "Mend tears" mending tears, "Wrapper and folders" a
// wrapper: the technique's name before it would say it twice.
bool saysTechnique(const std::string& words, const std::string& name, const Technique* technique) {
    if (beginsSo(words, name)) {
        return true;
    }
    if (technique != nullptr) {
        for (const auto* phrases : {&technique->said, &technique->named}) {
            if (std::ranges::any_of(*phrases, [&](const std::string& phrase) {
                    return beginsSo(words, phrase + ' ') || inSmallLetters(words) == phrase;
                })) {
                return true;
            }
        }
    }
    const std::string said = firstWord(words);
    const std::string first = firstWord(name);
    const std::string second = secondWord(name);
    constexpr std::size_t kStem = 4; // "wash"; "tak" of "take down" where the rest agrees
    const auto [differs, other] = std::ranges::mismatch(said, first);
    const auto stem = static_cast<std::size_t>(differs - said.begin());
    const bool isStem = stem + 1 >= said.size();
    return isStem &&
           (second.empty() ? stem >= kStem : stem + 1 >= kStem && secondWord(words) == second);
}

// "taking down (whole book); washing (A1–F2)".
std::string lastingByNature(const JobFile& file, const ProposalOption& option) {
    std::vector<std::string> lasting;
    for (const ProposalLine* line : irreversibleLines(file, option.id)) {
        const std::string name = lowerFirst(file.techniques.nameOf(line->technique));
        lasting.push_back(line->place.empty() ? name : fmt::format("{} ({})", name, line->place));
    }
    return joined(lasting);
}

} // namespace

std::string workWords(const JobFile& file, const std::string& technique, const std::string& words,
                      std::int64_t count) {
    const std::string name = capitalised(file.techniques.nameOf(technique));
    const std::string many = count > 1 ? fmt::format(" ({})", count) : std::string{};
    return !words.empty() && saysTechnique(words, name, file.techniques.named(technique))
               ? capitalised(words + many)
               : told({name + many, words});
}

bool saysNothing(const std::string& text) {
    const std::string said = inSmallLetters(text);
    return said.empty() || said == "nothing" || said == "nothing." || said == "none" ||
           said == "none.";
}

std::string lastingText(const JobFile& file, const ProposalOption& option) {
    const std::string said = saysNothing(option.irreversible) ? "" : sentence(option.irreversible);
    const std::string lasting = lastingByNature(file, option);
    if (lasting.empty()) {
        return said;
    }
    return joined({said, sentence((said.empty() ? "By the nature of the work: "
                                                : "Also, by the nature of the work: ") +
                                  lasting)},
                  " ");
}

} // namespace headcap::core::report
