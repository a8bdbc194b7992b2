#include "core/values/spoken_words.h"

#include <cctype>
#include <cstdlib>

#include "core/values/small_letters.h"

namespace headcap::core::spoken {
namespace {

bool isLetter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0;
}
bool isFigure(char c) {
    return std::isdigit(static_cast<unsigned char>(c)) != 0;
}

} // namespace

int Word::number() const {
    return text.size() > 6 ? -1 : std::atoi(text.c_str());
}

tl::expected<std::vector<Word>, TextError> wordsOf(std::string_view text,
                                                   std::string_view between) {
    std::vector<Word> words;
    for (std::size_t at = 0; at < text.size();) {
        const auto same = isFigure(text[at]) ? isFigure : isLetter;
        std::size_t end = at;
        std::string word;
        while (end < text.size() && same(text[end])) {
            word += smallLetter(text[end]);
            ++end;
        }
        if (!word.empty()) {
            words.push_back({std::move(word), at});
            at = end;
        } else if (between.find(text[at]) != std::string_view::npos) {
            ++at;
        } else {
            return tl::unexpected(TextError{TextProblem::malformed, at});
        }
    }
    if (words.empty()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    return words;
}

} // namespace headcap::core::spoken
