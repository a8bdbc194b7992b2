#include "core/treatment/line_old_work.h"

#include <array>

namespace headcap::core::line {
namespace {

constexpr auto kOff = std::to_array<std::string_view>({"off", "out", "away"});
constexpr auto kByThemselves = std::to_array<std::string_view>(
    {"lifted", "lifting", "removed", "removing", "peeled", "peeling", "stripped", "stripping",
     "scraped", "scraping", "unpicked", "unpicking", "discarded", "discarding", "detached"});
constexpr auto kWithOff = std::to_array<std::string_view>(
    {"took", "taken", "taking", "cut", "cutting", "pulled", "pulling", "picked", "picking",
     "prised", "got", "drew", "drawn"});
constexpr auto kOld =
    std::to_array<std::string_view>({"old", "earlier", "former", "previous", "original"});
constexpr auto kBetween = std::to_array<std::string_view>(
    {"the", "a", "an", "its", "all", "both", "two", "upper", "lower", "front", "back", "rear"});
constexpr auto kTape = std::to_array<std::string_view>({"tape", "tapes", "sellotape"});
constexpr auto kAdhesive =
    std::to_array<std::string_view>({"adhesive", "adhesives", "glue", "paste"});
// What is lifted and laid back again: lifted alone does not say that it came off.
constexpr auto kLaidBack =
    std::to_array<std::string_view>({"pastedown", "pastedowns", "leather", "cloth", "covering",
                                     "turn-in", "turn-ins", "label", "spine-piece", "vellum"});
// Of work that is there already.
constexpr auto kLookedAt = std::to_array<std::string_view>(
    {"softened", "softening", "loosened", "checked", "checking", "tested", "testing", "measured",
     "measuring", "noted", "found", "sketched", "ordered", "bought", "planned", "discussed"});

constexpr auto kIs = std::to_array<std::string_view>(
    {"is", "are", "was", "were", "now", "very", "still", "partly", "all", "badly"});
// As it was found.
constexpr auto kFound = std::to_array<std::string_view>(
    {"broken", "breaking", "loose",   "lifting", "lifted", "lacking", "missing", "split",
     "torn",   "lost",     "weak",    "sound",   "worn",   "cracked", "gone",    "damaged",
     "failed", "failing",  "brittle", "intact",  "dirty",  "holds",   "hold",    "looks",
     "look",   "found",    "ok",      "fine",    "needed", "detached"});

// How many words from `at` say that something came off; 0: none.
std::size_t comesOffAt(const Words& words, std::size_t at) {
    if (!isFree(words, at)) {
        return 0;
    }
    const bool isWithOff = isFree(words, at + 1) && isOneOf(kOff, words[at + 1].lower);
    if (isOneOf(kByThemselves, words[at].lower)) {
        return isWithOff ? 2 : 1;
    }
    return isWithOff && isOneOf(kWithOff, words[at].lower) ? 2 : 0;
}

bool isLaidBack(const Words& words, std::size_t at, std::size_t said, std::size_t from) {
    if (said != 1 || !words[at].lower.starts_with("lift")) {
        return false;
    }
    constexpr std::size_t kReach = 3;
    for (std::size_t i = from; i < words.size() && i < from + kReach; ++i) {
        if (isOneOf(kLaidBack, words[i].lower)) {
            return true;
        }
    }
    return false;
}

TakenOff takenOff(const Words& words, std::size_t at, std::size_t length, std::size_t what) {
    const bool isThere = what < words.size();
    return {at, length, isThere && isOneOf(kTape, words[what].lower),
            isThere && isOneOf(kAdhesive, words[what].lower)};
}

} // namespace

std::optional<TakenOff> oldWorkTakenOff(const Words& words) {
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::size_t said = comesOffAt(words, at);
        std::size_t next = at + said;
        while (said > 0 && isFree(words, next) && isOneOf(kBetween, words[next].lower)) {
            ++next;
        }
        if (said > 0 && isFree(words, next) && isOneOf(kOld, words[next].lower) &&
            !isLaidBack(words, at, said, next + 1)) {
            return takenOff(words, at, said, next + 1);
        }
    }
    return std::nullopt;
}

bool isAfterOld(const Words& words, std::size_t at) {
    return at > 0 && !words[at - 1].taken && isOneOf(kOld, words[at - 1].lower);
}

NamedWork namedWork(const Words& words, std::size_t at, std::size_t length) {
    std::size_t from = at;
    bool isOld = false;
    while (from > 0 && !words[from - 1].taken &&
           (isOneOf(kBetween, words[from - 1].lower) || isOneOf(kOld, words[from - 1].lower))) {
        isOld = isOld || isOneOf(kOld, words[from - 1].lower);
        --from;
    }
    for (const std::size_t said : {std::size_t{2}, std::size_t{1}}) {
        const bool isOff = from >= said && comesOffAt(words, from - said) == said &&
                           !isLaidBack(words, from - said, said, at);
        if (isOff) {
            return {Named::asTakenOff, takenOff(words, from - said, said, at)};
        }
    }
    std::size_t next = at + length;
    while (isFree(words, next) && isOneOf(kIs, words[next].lower)) {
        ++next;
    }
    const bool isFinding = isFree(words, next) && isOneOf(kFound, words[next].lower);
    const bool isLookedAt =
        from > 0 && !words[from - 1].taken && isOneOf(kLookedAt, words[from - 1].lower);
    const bool isElse = isOld || isLookedAt || isFinding;
    return {isElse ? Named::asSomethingElse : Named::asDone, {}};
}

bool isOfTheWorkshop(const Words& words, std::size_t at, std::size_t length) {
    constexpr auto kOfTheWorkshop = std::to_array<std::string_view>(
        {"bench", "benches", "tools", "brushes", "brush", "sink", "floor", "workshop", "studio",
         "machine", "guillotine", "knives", "trays", "pots", "hands", "blotters", "felts",
         "apron"});
    constexpr auto kLeads =
        std::to_array<std::string_view>({"up", "down", "off", "the", "my", "our", "all"});
    std::size_t next = at + length;
    while (isFree(words, next) && isOneOf(kLeads, words[next].lower)) {
        ++next;
    }
    return isFree(words, next) && isOneOf(kOfTheWorkshop, words[next].lower);
}

} // namespace headcap::core::line
