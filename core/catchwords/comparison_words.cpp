#include "core/catchwords/comparison.h"

namespace headcap::core {
namespace {

using Verdict = CatchwordVerdict;
using Reason = CatchwordReason;

} // namespace

std::string_view wordOf(CatchwordVerdict verdict) {
    switch (verdict) {
    case Verdict::same:
        return "same";
    case Verdict::variant:
        return "variant";
    case Verdict::doubtful:
        return "doubtful";
    case Verdict::different:
        return "different";
    }
    return {};
}

std::string_view sentenceOf(CatchwordReason reason) {
    switch (reason) {
    case Reason::equal:
        return "the same word";
    case Reason::partOfWord:
        return "the first part of the word";
    case Reason::spelling:
        return "the same word, spelt otherwise";
    case Reason::abbreviation:
        return "the same word, abbreviated in one place";
    case Reason::letterSlip:
        return "the same word but for one letter";
    case Reason::afterHeading:
        return "found behind a heading or note";
    case Reason::numberPassedOver:
        return "the same word, with a number or mark in one place only";
    case Reason::initialApart:
        return "the same word, its initial set apart";
    case Reason::moreThanOneSlip:
        return "alike, but in more than one letter different";
    case Reason::tooShort:
        return "alike, but in too few letters to tell";
    case Reason::laterWordsDiffer:
        return "the first word agrees, the next does not";
    case Reason::formulaNotSpelt:
        return "the page begins with a formula that is not spelt out";
    case Reason::wordOfNote:
        return "the catchword belongs to a note at the foot";
    case Reason::noCatchword:
        return "there is no catchword";
    case Reason::noText:
        return "there is no text to compare";
    case Reason::otherWord:
        return "another word";
    }
    return {};
}

} // namespace headcap::core
