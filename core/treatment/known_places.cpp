#include "core/treatment/known_places.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/treatment/approval.h"
#include "core/treatment/line_words.h"

namespace headcap::core {
namespace {

constexpr int kLongestRange = 60;

// "12", "14v", "11–13": what goes with the head before it.
bool isCounted(std::string_view last) {
    constexpr std::string_view kOfACount = "0123456789rv-\u2013";
    return !last.empty() && last.front() >= '0' && last.front() <= '9' &&
           last.find_first_not_of(kOfACount) == std::string_view::npos;
}

std::string trimmed(std::string_view text) {
    constexpr std::string_view kAround = " \t,;.";
    const std::size_t from = text.find_first_not_of(kAround);
    return from == std::string_view::npos
               ? std::string{}
               : std::string{text.substr(from, text.find_last_not_of(kAround) + 1 - from)};
}

std::vector<std::string> piecesOf(std::string_view place) {
    constexpr auto kBetween = std::to_array<std::string_view>({", ", "; ", " and ", " & ", ","});
    std::vector<std::string> pieces;
    // "between C4 and C5" is one place.
    const bool isOne = place.find("between ") != std::string_view::npos;
    for (std::size_t from = 0; from <= place.size();) {
        std::size_t to = place.size();
        std::size_t length = 1;
        for (const std::string_view tie : kBetween) {
            const std::size_t at = isOne ? std::string_view::npos : place.find(tie, from);
            if (at < to) {
                to = at;
                length = tie.size();
            }
        }
        if (std::string piece = trimmed(place.substr(from, to - from)); !piece.empty()) {
            pieces.push_back(std::move(piece));
        }
        from = to + length;
    }
    return pieces;
}

std::optional<int> numberOf(std::string_view text) {
    int number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    return read.ec == std::errc{} && read.ptr == text.data() + text.size() ? std::optional{number}
                                                                           : std::nullopt;
}

struct HeadAndLast {
    std::string head; // "SR "
    std::string last; // "11"
};

HeadAndLast parted(const std::string& piece) {
    const std::size_t blank = piece.rfind(' ');
    return blank == std::string::npos
               ? HeadAndLast{{}, piece}
               : HeadAndLast{piece.substr(0, blank + 1), piece.substr(blank + 1)};
}

// "11–13", "11-13".
std::vector<std::string> numbersFrom(std::string_view range) {
    for (const std::string_view dash : {"–", "-"}) {
        const std::size_t at = range.find(dash);
        if (at == std::string_view::npos) {
            continue;
        }
        const auto first = numberOf(range.substr(0, at));
        const auto last = numberOf(range.substr(at + dash.size()));
        std::vector<std::string> all;
        if (first && last && *first < *last && *last - *first < kLongestRange) {
            for (int n = *first; n <= *last; ++n) {
                all.push_back(std::to_string(n));
            }
        }
        return all;
    }
    return {};
}

bool isNamedIn(const line::Words& words, const std::string& name) {
    const auto said = line::wordsOf(name);
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (line::stands(words, at, said)) {
            return true;
        }
    }
    return false;
}

} // namespace

std::vector<std::string> placesListed(std::string_view place) {
    std::vector<std::string> listed;
    std::string head;
    for (const std::string& piece : piecesOf(place)) {
        HeadAndLast one = parted(piece);
        const bool isBare = one.head.empty() && isCounted(one.last);
        if (isCounted(one.last)) {
            head = isBare ? head : one.head;
        } else {
            head.clear();
        }
        one.head = isBare ? head : one.head;
        if (isBare && head.empty()) {
            continue; // a number of nothing
        }
        const auto numbers = one.head.empty() ? std::vector<std::string>{} : numbersFrom(one.last);
        for (const std::string& number : numbers) {
            listed.push_back(one.head + number);
        }
        if (numbers.empty()) {
            listed.push_back(one.head + one.last);
        }
    }
    return listed.size() > 1 ? listed : std::vector<std::string>{};
}

std::vector<KnownPlace> knownPlaces(const JobFile& file) {
    std::vector<KnownPlace> volumes;
    for (const Item& volume : file.parts) {
        if (!volume.volumeLabel.empty()) {
            volumes.push_back({volume.volumeLabel, volume.id, std::nullopt, {}});
        }
    }
    std::vector<KnownPlace> places;
    for (const ProposalLine* line : approvedLines(file)) {
        auto texts = placesListed(line->place);
        if (!line->place.empty()) {
            texts.insert(texts.begin(), line->place);
        }
        for (const std::string& text : texts) {
            places.push_back({text, volumeIn(volumes, text), line->id, line->technique});
        }
    }
    places.insert(places.end(), volumes.begin(), volumes.end());
    return places;
}

std::optional<Id<Item>> volumeIn(const std::vector<KnownPlace>& places, std::string_view text) {
    auto listed = placesListed(text);
    if (listed.empty()) {
        listed.emplace_back(text);
    }
    std::optional<Id<Item>> named;
    for (const std::string& one : listed) {
        const line::Words words = line::split(one);
        for (const KnownPlace& volume : places) {
            if (volume.line || !volume.part || !isNamedIn(words, volume.text)) {
                continue;
            }
            if (named && named != volume.part) {
                return std::nullopt;
            }
            named = volume.part;
        }
    }
    return named;
}

std::optional<Id<ProposalLine>> lineAt(const std::vector<KnownPlace>& places,
                                       std::string_view technique, std::string_view place) {
    const auto listed = placesListed(place);
    for (const KnownPlace& one : places) {
        if (technique.empty() || !one.line || one.technique != technique) {
            continue;
        }
        const auto isHere = [&](std::string_view text) {
            const auto said = line::wordsOf(text);
            return std::ranges::any_of(places, [&](const KnownPlace& same) {
                return same.line == one.line && line::wordsOf(same.text) == said;
            });
        };
        if (isHere(place) || (!listed.empty() && std::ranges::all_of(listed, isHere))) {
            return one.line;
        }
    }
    return std::nullopt;
}

} // namespace headcap::core
