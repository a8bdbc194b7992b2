#include "core/values/spoken_time.h"

#include "core/values/english.h"
#include "core/values/spoken_words.h"

namespace headcap::core {

tl::expected<Minutes, TextError> parseMinutes(std::string_view text) {
    const auto split = spoken::wordsOf(text, " :\t");
    if (!split) {
        return tl::unexpected(split.error());
    }
    const bool hasColon = text.find(':') != std::string_view::npos;
    int total = 0;
    bool afterHours = false;
    for (std::size_t i = 0; i < split->size(); ++i) {
        const spoken::Word& count = (*split)[i];
        if (!count.isNumber()) {
            return tl::unexpected(TextError{TextProblem::notANumber, count.at});
        }
        if (count.number() < 0) {
            return tl::unexpected(TextError{TextProblem::tooLarge, count.at});
        }
        const spoken::Word* unit =
            i + 1 < split->size() && !(*split)[i + 1].isNumber() ? &(*split)[i + 1] : nullptr;
        const bool isHours = unit != nullptr ? unit->text.starts_with("h")
                                             : hasColon && i == 0 && split->size() == 2;
        if (unit != nullptr && !isHours && !unit->text.starts_with("m")) {
            return tl::unexpected(TextError{TextProblem::unitUnknown, unit->at});
        }
        if (i > 0 && (!afterHours || isHours)) {
            return tl::unexpected(TextError{TextProblem::trailing, count.at});
        }
        if (afterHours && count.number() > 59) {
            return tl::unexpected(TextError{TextProblem::outOfRange, count.at});
        }
        total += isHours ? 60 * count.number() : count.number();
        afterHours = isHours;
        i += unit != nullptr ? 1 : 0;
    }
    return Minutes{total};
}

std::string toText(Minutes minutes) {
    return minutesText(minutes);
}

} // namespace headcap::core
