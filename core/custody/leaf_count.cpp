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

struct Named {
    std::int64_t leaves = 0;
    std::int64_t plates = 0;
    [[nodiscard]] bool isNothing() const { return leaves + plates == 0; }
};

// Without the book's make-up: places named one by one, and numbers of them.
Named namedIn(const LeafSet& set) {
    Named named;
    for (const LeafSetItem& item : set.items) {
        if (const auto* said = std::get_if<CountOf>(&item)) {
            named.leaves += said->what == Countable::leaves ? said->count : 0;
            named.plates += said->what == Countable::plates ? said->count : 0;
        } else if (const auto* span = std::get_if<LeafSpan>(&item); span && !span->last) {
            ++(std::holds_alternative<PlateRef>(span->first) ? named.plates : named.leaves);
        }
    }
    return named;
}

// How many leaves and plates a text names.
Named namedIn(const std::vector<VolumeBook>& books, const std::optional<Id<Item>>& part,
              const std::string& text) {
    const auto set = parseLeafSet(text);
    if (!set) {
        return {};
    }
    for (const VolumeBook& volume : books) {
        const auto located =
            volume.part == part ? locate(volume.book, *set) : tl::unexpected(PlaceError{});
        if (located) {
            return {static_cast<std::int64_t>(located->leaves.size()) + located->leavesUnplaced,
                    static_cast<std::int64_t>(located->plates.size()) + located->platesUnplaced};
        }
    }
    return namedIn(*set);
}

// What somebody answered: "28 leaves and 24 plates", "108"; a number alone is of leaves, a second
// one of plates.
void readCounted(LeafCount& into, std::string_view text) {
    constexpr std::string_view kDigits = "0123456789";
    for (std::size_t at = text.find_first_of(kDigits); at != std::string_view::npos;
         at = text.find_first_of(kDigits)) {
        std::int64_t number = 0;
        const auto read = std::from_chars(text.data() + at, text.data() + text.size(), number);
        text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()));
        if (read.ec != std::errc{}) {
            continue;
        }
        const std::string_view word =
            text.substr(std::min(text.find_first_not_of(' '), text.size()));
        auto& out = word.starts_with("pl") || (into.leaves.out && !word.starts_with("lea"))
                        ? into.plates.out
                        : into.leaves.out;
        out = out ? out : std::optional{number};
    }
}

// The volumes of a set that nobody collated.
std::vector<const Item*> notCounted(const JobFile& file) {
    std::vector<const Item*> left;
    for (const Item& part : file.parts) {
        const auto isOfIt = [&](const Collation& one) { return !one.part || *one.part == part.id; };
        if (std::ranges::none_of(file.collations, isOfIt)) {
            left.push_back(&part);
        }
    }
    return left;
}

std::optional<std::int64_t> leavesIn(const JobFile& file) {
    if (!notCounted(file).empty()) {
        return std::nullopt;
    }
    std::int64_t in = 0;
    for (const Collation& collation : file.collations) {
        if (collation.leavesPresent == 0) {
            return std::nullopt;
        }
        in += collation.leavesPresent;
    }
    return in > 0 ? std::optional{in} : std::nullopt;
}

std::optional<std::int64_t> platesIn(const JobFile& file, bool areAdded) {
    std::int64_t in = 0;
    bool hasPlates = areAdded && !file.collations.empty();
    for (const Collation& collation : file.collations) {
        hasPlates = hasPlates || collation.platesCalledFor > 0 || collation.platesPresent > 0;
        in += collation.platesPresent;
    }
    return hasPlates ? std::optional{in} : std::nullopt;
}

std::string presentText(std::int64_t present, std::int64_t calledFor, const char* one,
                        const char* many) {
    return calledFor > 0 ? fmt::format("{} of {}", present,
                                       counted(static_cast<std::size_t>(calledFor), one, many))
                         : counted(static_cast<std::size_t>(present), one, many);
}

std::string volumeName(const Item& part) {
    return part.volumeLabel.empty() ? headingOf(part) : part.volumeLabel;
}

bool isStruck(const JobFile& file, const std::optional<Id<Step>>& id) {
    const Step* step = file.step(id);
    return step != nullptr && step->struckAt;
}

} // namespace

std::optional<std::int64_t> Tally::due() const {
    return in ? std::optional{*in + added - removed} : std::nullopt;
}

bool Tally::isApart() const {
    return due() && out && *due() != *out;
}

LeafCount leafCountOf(const JobFile& file) {
    LeafCount tally{.leaves = {.in = leavesIn(file)}};
    const auto books = booksOf(file);
    for (const Facsimile& leaf : file.facsimiles) {
        if (!isStruck(file, leaf.step)) {
            const Named named = namedIn(books, leaf.part, leaf.place);
            tally.leaves.added += named.isNothing() ? 1 : named.leaves;
            tally.plates.added += named.plates;
        }
    }
    for (const Step& step : file.steps) {
        if (!step.struckAt) {
            const Named named = namedIn(books, step.part, step.removed);
            tally.leaves.removed += named.leaves;
            tally.plates.removed += named.plates;
        }
    }
    tally.plates.in = platesIn(file, tally.plates.added > 0);
    const auto check = std::ranges::find(file.releaseChecks, "leaf_tally", &ReleaseCheck::key);
    if (check != file.releaseChecks.end() && check->answer != ReleaseAnswer::open) {
        tally.isCountedOut = true;
        readCounted(tally, check->why);
    }
    return tally;
}

std::string leavesAndPlates(const std::optional<std::int64_t>& leaves,
                            const std::optional<std::int64_t>& plates) {
    std::vector<std::string> said;
    if (leaves) {
        said.push_back(counted(static_cast<std::size_t>(*leaves), "leaf", "leaves"));
    }
    if (plates) {
        said.push_back(counted(static_cast<std::size_t>(*plates), "plate", "plates"));
    }
    return listed(said);
}

std::string leafCountText(const JobFile& file) {
    const LeafCount tally = leafCountOf(file);
    std::vector<std::string> said;
    for (const Collation& collation : file.collations) {
        std::string present;
        if (collation.leavesPresent > 0) {
            present =
                presentText(collation.leavesPresent, collation.leavesCalledFor, "leaf", "leaves");
        }
        if (collation.platesPresent > 0 || collation.platesCalledFor > 0) {
            present += present.empty() ? "" : " and ";
            present +=
                presentText(collation.platesPresent, collation.platesCalledFor, "plate", "plates");
        }
        const Item* part = file.part(collation.part);
        const bool isVolume = part != nullptr && part->id != file.item.id;
        if (!present.empty()) {
            said.push_back(present + (isVolume ? " of " + volumeName(*part) : "") + " on arrival");
        }
    }
    for (const Item* part :
         file.collations.empty() ? std::vector<const Item*>{} : notCounted(file)) {
        said.push_back(volumeName(*part) + " not counted");
    }
    std::vector<std::string> supplied;
    for (const Facsimile& leaf : file.facsimiles) {
        if (!isStruck(file, leaf.step)) {
            supplied.push_back(leaf.place);
        }
    }
    if (!supplied.empty()) {
        said.push_back(listed(supplied) + " supplied");
    }
    if (tally.leaves.removed + tally.plates.removed > 0) {
        const auto some = [](std::int64_t count) {
            return count > 0 ? std::optional{count} : std::nullopt;
        };
        said.push_back(leavesAndPlates(some(tally.leaves.removed), some(tally.plates.removed)) +
                       " taken out");
    }
    const auto due = tally.leaves.due();
    if (!due) {
        return listed(said);
    }
    const bool isOne = *due + tally.plates.due().value_or(0) == 1;
    return fmt::format("{}: {} {} out", fmt::join(said, ", "),
                       leavesAndPlates(due, tally.plates.due()), isOne ? "goes" : "go");
}

} // namespace headcap::core
