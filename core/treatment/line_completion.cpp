#include "core/treatment/line_completion.h"

#include <algorithm>

#include "core/treatment/line_lot_completion.h"
#include "core/treatment/line_words.h"

namespace headcap::core {
namespace {

using line::kLeastLetters;
using line::Words;

constexpr std::size_t kLongestPhrase = 4;

bool isBlank(char c) {
    return c == ' ' || c == '\t';
}

// The last words of the line, from `from` on, as they stand, in small letters.
std::string tailOf(const Words& words, std::size_t from) {
    std::string tail;
    for (std::size_t i = from; i < words.size(); ++i) {
        tail += (tail.empty() ? "" : " ") + words[i].lower;
    }
    return tail;
}

// As one says what was done: "tipped in" rather than "tipping in" or "tip-in".
int fitness(const std::string& phrase) {
    const std::string first = phrase.substr(0, phrase.find(' '));
    const bool isDone = first.ends_with("ed") || first.ends_with("wn") || first.ends_with("en");
    return (isDone ? 2 : 0) + (phrase.find('-') == std::string::npos ? 1 : 0);
}

// The phrase of the technique that the tail begins, and does not yet complete.
const std::string* phraseFor(const Technique& technique, std::string_view tail) {
    const std::string* found = nullptr;
    for (const auto* phrases : {&technique.said, &technique.named}) {
        for (const std::string& phrase : *phrases) {
            const bool fits = phrase.size() > tail.size() && phrase.starts_with(tail);
            if (fits && (found == nullptr || fitness(phrase) > fitness(*found))) {
                found = &phrase;
            }
        }
    }
    return found;
}

class Completer {
public:
    Completer(std::string_view text, const LineContext& context)
        : m_text(text), m_context(context), m_words(line::split(text)) {}

    std::vector<LineCompletion> techniques(const std::vector<std::string>& awaited) const {
        std::vector<LineCompletion> found;
        const auto said = techniqueSaidAt();
        for (const Technique& technique : m_context.techniques) {
            const auto one = completionOf(technique);
            // "lined" says one, and "lined sp" another that takes it in.
            if (one && (!said || one->begin <= *said)) {
                found.push_back(*one);
            }
        }
        std::stable_partition(found.begin(), found.end(), [&](const LineCompletion& one) {
            return std::ranges::any_of(awaited, [&](const std::string& key) {
                const auto known = std::ranges::find(m_context.techniques, key, &Technique::key);
                return known != m_context.techniques.end() && known->name == one.says;
            });
        });
        return found;
    }

    // Those of lines with the technique that is said come first, and by one letter.
    std::vector<LineCompletion> places() const {
        const std::string technique = readStepLine(m_text, m_context).technique;
        std::vector<LineCompletion> found;
        std::size_t ofTechnique = 0;
        for (const KnownPlace& place : m_context.places) {
            const bool isOfIt = !technique.empty() && place.technique == technique;
            const auto begin = placeBegunAt(place, isOfIt ? 1 : kLeastLetters);
            if (!begin ||
                std::ranges::find(found, place.text, &LineCompletion::text) != found.end()) {
                continue;
            }
            const auto known =
                std::ranges::find(m_context.techniques, place.technique, &Technique::key);
            const std::string says = known == m_context.techniques.end() ? "volume" : known->name;
            const auto at = isOfIt ? ofTechnique++ : found.size();
            found.insert(found.begin() + static_cast<std::ptrdiff_t>(at),
                         {LinePart::place, *begin, place.text, says});
        }
        return found;
    }

    std::vector<LineCompletion> people() const {
        std::vector<LineCompletion> found;
        const line::Word& last = m_words.back();
        if (m_words.size() < 2 || m_words[m_words.size() - 2].lower != "by") {
            return found;
        }
        for (const Person& person : m_context.people) {
            const auto names = line::wordsOf(person.name);
            const bool fits = std::ranges::any_of(names, [&](const std::string& name) {
                return name.starts_with(last.lower) && name != last.lower;
            });
            if (fits) {
                found.push_back({LinePart::person, last.begin, person.name, person.initials});
            }
        }
        return found;
    }

    [[nodiscard]] const Words& words() const { return m_words; }
    [[nodiscard]] bool isNothingTyped() const {
        return m_words.empty() || m_words.back().lower.empty();
    }

private:
    // Where a technique begins that is said before the word being typed.
    [[nodiscard]] std::optional<std::size_t> techniqueSaidAt() const {
        const StepLine read = readStepLine(m_text.substr(0, m_words.back().begin), m_context);
        const auto found = std::ranges::find(read.spans, LinePart::technique, &LineSpan::part);
        return found == read.spans.end() ? std::nullopt : std::optional{found->begin};
    }

    // By as many of the last words as begin one of its phrases.
    [[nodiscard]] std::optional<LineCompletion> completionOf(const Technique& technique) const {
        const std::size_t most = std::min(kLongestPhrase, m_words.size());
        for (std::size_t n = most; n > 0; --n) {
            const std::size_t from = m_words.size() - n;
            const std::string tail = tailOf(m_words, from);
            const std::string* phrase =
                tail.size() < kLeastLetters ? nullptr : phraseFor(technique, tail);
            if (phrase != nullptr) {
                return LineCompletion{LinePart::technique, m_words[from].begin, *phrase,
                                      technique.name};
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<std::size_t> placeBegunAt(const KnownPlace& place,
                                                          std::size_t least) const {
        std::string said;
        for (const std::string& word : line::wordsOf(place.text)) {
            said += (said.empty() ? "" : " ") + word;
        }
        for (std::size_t n = std::min(kLongestPhrase, m_words.size()); n > 0; --n) {
            const std::size_t from = m_words.size() - n;
            const std::string tail = tailOf(m_words, from);
            if (tail.size() >= least && tail.size() < said.size() && said.starts_with(tail)) {
                return m_words[from].begin;
            }
        }
        return std::nullopt;
    }

    std::string_view m_text;
    const LineContext& m_context;
    Words m_words;
};

} // namespace

std::vector<LineCompletion> completionsOf(std::string_view text, const LineContext& context,
                                          const std::vector<std::string>& awaited,
                                          std::size_t most) {
    const Completer completer{text, context};
    if (text.empty() || isBlank(text.back()) || completer.isNothingTyped()) {
        return {};
    }
    auto all = completer.people();
    if (all.empty()) {
        all = completer.techniques(awaited);
        const auto places = completer.places();
        all.insert(all.end(), places.begin(), places.end());
        const auto lots = line::lotCompletions(completer.words(), context);
        all.insert(all.end(), lots.begin(), lots.end());
    }
    if (all.size() > most) {
        all.resize(most);
    }
    return all;
}

std::string asOneSays(const Technique& technique) {
    const std::string* phrase = phraseFor(technique, {});
    return phrase == nullptr ? technique.name : *phrase;
}

std::string completed(std::string_view text, const LineCompletion& completion) {
    return std::string{text.substr(0, completion.begin)} + completion.text + ' ';
}

} // namespace headcap::core
