// The techniques in force in a workshop: as they ship, its own in place of them and beside them.
// Everything that asks what a technique is asks here, so that the bench line, the proposal, the
// checks, the estimate and the audit speak of the same one. Copies are cheap.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/treatment/techniques.h"

namespace headcap::core {

class RecordStore;
struct HouseTechnique;

class TechniquesInForce {
public:
    TechniquesInForce(); // as they ship
    explicit TechniquesInForce(std::span<const HouseTechnique> own);

    // In the order of the vocabulary, the workshop's further ones behind; none that is retired.
    [[nodiscard]] std::span<const Technique> offered() const;
    // A retired one too: what was done with it keeps its name.
    [[nodiscard]] const Technique* named(std::string_view key) const;
    // Its name, or the workshop's own word as it stands.
    [[nodiscard]] std::string nameOf(std::string_view keyOrWord) const;

private:
    struct Table {
        std::vector<Technique> all{}; // the retired ones last
        std::size_t offered = 0;
    };
    static std::shared_ptr<const Table> shipped();
    std::shared_ptr<const Table> m_table;
};

// Those of the workshop.
[[nodiscard]] TechniquesInForce loadTechniques(const RecordStore& store);

// As the house's record says it; what a record does not keep (the words that name it, its
// identifier) is from the one it stands in place of.
[[nodiscard]] Technique techniqueFrom(const HouseTechnique& own, const Technique* shipped);

// A record of the house to begin from: one that ships, with every value as it ships. Without
// its key's record yet: `id` is the caller's.
[[nodiscard]] HouseTechnique houseTechniqueFrom(const Technique& shipped,
                                                const Id<HouseTechnique>& id);

// The key of a further technique of this name: "our_own_tipping", and another where it is taken.
[[nodiscard]] std::string techniqueKeyFor(std::string_view name, const TechniquesInForce& inForce);

// Its lines, without the blanks around them and the empty ones; and back.
[[nodiscard]] std::vector<std::string> linesIn(std::string_view text);
[[nodiscard]] std::string asLines(const std::vector<std::string>& lines);

} // namespace headcap::core
