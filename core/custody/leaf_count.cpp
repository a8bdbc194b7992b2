#include "core/custody/leaf_count.h"

#include <algorithm>
#include <charconv>
#include <vector>

#include <fmt/format.h>

#include "core/collation/finding_places.h"
#include "core/collation/job_places.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

// How many leaves a text names; none where it names none.
std::optional<std::int64_t> leavesNamed(const std::vector<VolumeBook>& books,
                                        const std::optional<Id<Item>>& part,
                                        const std::string& text) {
    for (const VolumeBook& volume : books) {
        if (volume.part == part) {
            if (const auto leaves = leavesAt(volume.book, text); !leaves.empty()) {
                return static_cast<std::int64_t>(leaves.size());
            }
        }
    }
    const auto set = parseLeafSet(text);
    std::int64_t count = 0;
    for (const LeafSetItem& item : set ? set->items : std::vector<LeafSetItem>{}) {
        const auto* said = std::get_if<CountOf>(&item);
        const auto* span = std::get_if<LeafSpan>(&item);
        const bool isLeaf =
            span != nullptr && !span->last && !std::holds_alternative<PlateRef>(span->first);
        count += said != nullptr && said->what == Countable::leaves ? said->count : isLeaf ? 1 : 0;
    }
    return count > 0 ? std::optional{count} : std::nullopt;
}

// How many plates a text names by their own names; 0: it names leaves, or none.
std::int64_t platesNamed(const std::string& text) {
    const auto set = parseLeafSet(text);
    std::int64_t count = 0;
    for (const LeafSetItem& item : set ? set->items : std::vector<LeafSetItem>{}) {
        const auto* said = std::get_if<CountOf>(&item);
        const auto* span = std::get_if<LeafSpan>(&item);
        const bool isPlate = span != nullptr && std::holds_alternative<PlateRef>(span->first);
        count += said != nullptr && said->what == Countable::plates ? said->count : isPlate ? 1 : 0;
    }
    return count;
}

std::optional<std::int64_t> firstNumber(const std::string& text) {
    const std::size_t at = text.find_first_of("0123456789");
    if (at == std::string::npos) {
        return std::nullopt;
    }
    std::int64_t number = 0;
    const auto read = std::from_chars(text.data() + at, text.data() + text.size(), number);
    return read.ec == std::errc{} ? std::optional{number} : std::nullopt;
}

std::optional<std::int64_t> countedIn(const JobFile& file) {
    std::int64_t in = 0;
    for (const Collation& collation : file.collations) {
        if (collation.leavesPresent == 0) {
            return std::nullopt;
        }
        in += collation.leavesPresent;
    }
    return in > 0 ? std::optional{in} : std::nullopt;
}

std::optional<std::int64_t> platesCountedIn(const JobFile& file) {
    std::int64_t in = 0;
    for (const Collation& collation : file.collations) {
        in += collation.platesPresent;
    }
    return in > 0 ? std::optional{in} : std::nullopt;
}

std::string ofThoseCalledFor(std::int64_t present, std::int64_t calledFor, std::string_view what) {
    return calledFor > 0 ? fmt::format("{} of {} {}", present, calledFor, what)
                         : fmt::format("{} {}", present, what);
}

bool isStruck(const JobFile& file, const std::optional<Id<Step>>& id) {
    const Step* step = file.step(id);
    return step != nullptr && step->struckAt;
}

} // namespace

std::optional<std::int64_t> LeafCount::due() const {
    return in ? std::optional{*in + added - removed} : std::nullopt;
}

bool LeafCount::isApart() const {
    return due() && out && *due() != *out;
}

LeafCount leafCountOf(const JobFile& file) {
    LeafCount tally{.in = countedIn(file), .platesIn = platesCountedIn(file)};
    const auto books = booksOf(file);
    for (const Facsimile& leaf : file.facsimiles) {
        if (isStruck(file, leaf.step)) {
            continue;
        }
        if (const std::int64_t plates = platesNamed(leaf.place); plates > 0) {
            tally.platesAdded += plates;
        } else {
            tally.added += leavesNamed(books, leaf.part, leaf.place).value_or(1);
        }
    }
    for (const Step& step : file.steps) {
        if (!step.struckAt) {
            tally.removed += leavesNamed(books, step.part, step.removed).value_or(0);
        }
    }
    const auto check = std::ranges::find(file.releaseChecks, "leaf_tally", &ReleaseCheck::key);
    if (check != file.releaseChecks.end() && check->answer != ReleaseAnswer::open) {
        tally.isCountedOut = true;
        tally.out = firstNumber(check->why);
    }
    return tally;
}

std::string leafCountText(const JobFile& file) {
    std::vector<std::string> said;
    for (const Collation& collation : file.collations) {
        std::vector<std::string> counted;
        if (collation.leavesPresent > 0) {
            counted.push_back(
                ofThoseCalledFor(collation.leavesPresent, collation.leavesCalledFor, "leaves"));
        }
        if (collation.platesPresent > 0) {
            counted.push_back(
                ofThoseCalledFor(collation.platesPresent, collation.platesCalledFor, "plates"));
        }
        if (!counted.empty()) {
            said.push_back(listed(counted) + " on arrival");
        }
    }
    for (const Facsimile& leaf : file.facsimiles) {
        said.push_back(leaf.place + " supplied");
    }
    const LeafCount count = leafCountOf(file);
    const auto due = count.due();
    if (!due) {
        return listed(said);
    }
    const std::int64_t plates = count.platesIn.value_or(0) + count.platesAdded;
    return plates > 0
               ? fmt::format("{}: {} leaves and {} plates go out", listed(said), *due, plates)
               : fmt::format("{}: {} go out", listed(said), *due);
}

} // namespace headcap::core
