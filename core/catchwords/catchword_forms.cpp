#include "core/catchwords/catchword_forms.h"

#include <algorithm>

#include "core/catchwords/letter_forms.h"
#include "core/catchwords/letters.h"

namespace headcap::core {
namespace {

constexpr std::size_t kWordsLookedAt = 6;

} // namespace

bool isNoteMark(std::string_view catchword) {
    const bool open = catchword.starts_with('(');
    const std::string_view rest = catchword.substr(open ? 1 : 0);
    return rest.size() >= 2 && rest[1] == ')' && rest[0] >= 'a' && rest[0] <= 'z';
}

bool beginsUnspelt(std::string_view text) {
    return text.starts_with('[') && text.find(']') < 20 && text.size() > 2 && text[1] >= 'a' &&
           text[1] <= 'z';
}

bool looksLikeFormula(std::string_view text) {
    constexpr std::string_view kSigns[] = {"=", "+", "\\", "∫", "√", "½", "×"};
    if (std::ranges::any_of(kSigns, [&](std::string_view sign) {
            return text.find(sign) != std::string_view::npos;
        }))
        return true;
    const LetterText letters = readLetters(text, kWordsLookedAt);
    return std::ranges::any_of(letters.words, [&](const LetterWord& word) {
        return word.end - word.begin == 1 && !word.numeral && !isFigure(letters.plain[word.begin]);
    });
}

} // namespace headcap::core
