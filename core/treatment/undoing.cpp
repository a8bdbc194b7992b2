#include "core/treatment/undoing.h"

#include <algorithm>
#include <array>
#include <memory>

#include <fmt/format.h>

#include "core/materials/substances.h"
#include "core/treatment/technique_facts.h"
#include "core/values/fold.h"

namespace headcap::core {
namespace {

struct ClassOfThing {
    std::string_view thing;
    MaterialClass kind;
};
constexpr auto kClasses = std::to_array<ClassOfThing>({
    {"tissue", MaterialClass::tissue},
    {"leather", MaterialClass::leather},
    {"vellum", MaterialClass::vellum},
});

bool holds(std::string_view text, std::string_view word) {
    return text.find(word) != std::string_view::npos;
}

bool isOf(const UsedInStep& used, std::string_view thing) {
    const std::string words =
        foldForSearch(used.words + ' ' + (used.kind == nullptr ? std::string{} : used.kind->name));
    return holds(words, thing) ||
           (used.kind != nullptr && std::ranges::any_of(kClasses, [&](const ClassOfThing& one) {
                return one.thing == thing && one.kind == used.kind->kind;
            }));
}

bool speaksOfMoisture(std::string_view text) {
    const std::string folded = foldForSearch(text);
    return holds(folded, "moist") || holds(folded, "water") || holds(folded, "poultice");
}

// An adhesive that is known not to give way to moisture.
bool resistsMoisture(const UsedInStep& used) {
    if (used.kind == nullptr || used.kind->kind != MaterialClass::adhesivePrepared) {
        return false;
    }
    const std::string& removal = used.removal.empty() ? used.kind->removal : used.removal;
    return !removal.empty() && !speaksOfMoisture(removal);
}

std::string thingsLacking(std::string_view technique, const std::vector<UsedInStep>& used) {
    std::string things;
    for (const std::string& thing : factsOf(technique).takesForGranted) {
        if (std::ranges::any_of(used, [&](const UsedInStep& u) { return isOf(u, thing); })) {
            return {};
        }
        things += (things.empty() ? "" : " or ") + thing;
    }
    return things;
}

// The kinds that substances without a lot are of must outlive what names them.
class Uses {
public:
    void add(const Lot* lot, const Material* kind, const std::string& material,
             const std::string& role = {}, const std::string& removal = {}) {
        if (kind == nullptr) {
            if (auto of = substanceAsMaterial(material)) {
                m_kinds.push_back(std::make_unique<Material>(std::move(*of)));
                kind = m_kinds.back().get();
            }
        }
        m_used.push_back({kind, material.empty() && kind != nullptr ? kind->name : material,
                          material + ' ' + role + ' ' + (lot == nullptr ? "" : lot->product),
                          removal});
    }
    [[nodiscard]] const std::vector<UsedInStep>& used() const { return m_used; }

private:
    std::vector<std::unique_ptr<Material>> m_kinds;
    std::vector<UsedInStep> m_used;
};

} // namespace

std::string undoingDoubt(const Technique* technique, std::string_view undoing,
                         const std::vector<UsedInStep>& used) {
    if (technique == nullptr || used.empty() || undoing.empty() || undoing != technique->undoing) {
        return {};
    }
    const auto shipped = std::ranges::find(techniques(), technique->key, &Technique::key);
    const bool isShipped = shipped != techniques().end() && shipped->undoing == undoing;
    const std::string things = isShipped ? thingsLacking(technique->key, used) : std::string{};
    if (!things.empty()) {
        return fmt::format("speaks of {}, and none is used", things);
    }
    const auto resisting =
        speaksOfMoisture(undoing) ? std::ranges::find_if(used, resistsMoisture) : used.end();
    return resisting == used.end()
               ? std::string{}
               : fmt::format("speaks of moisture, and {} does not give way to it", resisting->name);
}

std::string undoingDoubt(const JobFile& file, const Step& step) {
    Uses uses;
    for (const MaterialUse* use : file.usesOf(step)) {
        const Lot* lot = file.lot(use->lot);
        uses.add(lot, lot == nullptr ? nullptr : file.material(lot->material), use->material,
                 use->role, use->removal);
    }
    return undoingDoubt(file.techniques.named(step.technique), step.undoing, uses.used());
}

std::string undoingDoubt(const LoggedStep& logged, const Shelf& shelf,
                         const TechniquesInForce& techniques) {
    Uses uses;
    for (const MaterialUse& use : logged.uses) {
        const Lot* lot = use.lot ? shelf.lot(*use.lot) : nullptr;
        uses.add(lot, lot == nullptr ? nullptr : shelf.material(lot->material), use.material,
                 use.role, use.removal);
    }
    return undoingDoubt(techniques.named(logged.step.technique), logged.step.undoing, uses.used());
}

std::string undoingDoubt(const StepLine& line, const LineContext& context) {
    const auto technique = std::ranges::find(context.techniques, line.technique, &Technique::key);
    if (technique == context.techniques.end()) {
        return {};
    }
    Uses uses;
    for (const LineUse& use : line.uses) {
        const Lot* lot = use.lot ? context.shelf.lot(*use.lot) : nullptr;
        uses.add(lot, lot == nullptr ? nullptr : context.shelf.material(lot->material),
                 use.material);
    }
    return undoingDoubt(&*technique, technique->undoing, uses.used());
}

} // namespace headcap::core
