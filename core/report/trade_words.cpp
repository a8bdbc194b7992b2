#include "core/report/trade_words.h"

#include <array>

namespace headcap::core::report {
namespace {

template <class Enum, std::size_t N>
std::string_view wordOf(Enum value, const std::array<std::string_view, N>& words) {
    static_assert(N == EnumNames<Enum>::kNames.size());
    return words[static_cast<std::size_t>(value)];
}

} // namespace

std::string_view wordsFor(CollationKind kind) {
    return wordOf(kind,
                  std::array<std::string_view, 17>{
                      "lacking", "loose", "detached", "misbound", "bound in twice", "a cancel",
                      "inserted", "supplied from another copy", "a facsimile", "misnumbered",
                      "missigned", "torn with loss", "torn", "trimmed into the text",
                      "a blank leaf, lacking", "a folded plate", "other"});
}

std::string_view wordsFor(CollationDecision decision) {
    return wordOf(decision,
                  std::array<std::string_view, 6>{"not decided", "left as it is", "to be supplied",
                                                  "sought", "made good", "nothing needed"});
}

std::string_view wordsFor(PlatePresence presence) {
    return wordOf(presence,
                  std::array<std::string_view, 5>{"not looked for", "present", "lacking",
                                                  "present, not in its place", "supplied"});
}

std::string_view wordsFor(Verdict verdict) {
    return wordOf(verdict,
                  std::array<std::string_view, 4>{
                      "agreement with this copy is not established",
                      "of the same setting as this copy",
                      "its pages agree with this copy; that it is of the same setting is not "
                      "established",
                      "a comparison with this copy contradicts it"});
}

std::string_view wordsFor(DecisionKind kind) {
    return wordOf(kind, std::array<std::string_view, 4>{"approved", "approved with limits",
                                                        "declined", "asked for more"});
}

std::string_view wordsFor(DecisionMeans means) {
    return wordOf(means, std::array<std::string_view, 4>{"by signature", "by letter", "by e-mail",
                                                         "spoken, and noted"});
}

std::string_view wordsFor(NoticeSubject subject) {
    return wordOf(subject,
                  std::array<std::string_view, 9>{"receipt", "collation", "condition", "hazard",
                                                  "proposal", "a change to the work", "an incident",
                                                  "ready for return", "other matters"});
}

std::string_view wordsFor(NoticeMeans means) {
    return wordOf(means, std::array<std::string_view, 4>{"by letter", "by e-mail", "by telephone",
                                                         "in person"});
}

std::string_view wordsFor(Reversibility reversibility) {
    return wordOf(reversibility, std::array<std::string_view, 4>{
                                     "not known whether it can be undone", "can be undone",
                                     "can be undone with care", "can't be undone"});
}

std::string_view wordsFor(LotOrigin origin) {
    return wordOf(origin, std::array<std::string_view, 4>{"bought", "saved from another object",
                                                          "mixed in the workshop", "an offcut"});
}

} // namespace headcap::core::report
