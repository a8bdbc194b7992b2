#include "core/treatment/techniques_in_force.h"

#include <algorithm>

#include "core/record/stores.h"
#include "core/treatment/house_technique.h"
#include "core/values/fold.h"
#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

void longestFirst(std::vector<std::string>& phrases) {
    std::ranges::stable_sort(phrases, std::ranges::greater{}, &std::string::size);
}

} // namespace

std::shared_ptr<const TechniquesInForce::Table> TechniquesInForce::shipped() {
    static const auto kTable =
        std::make_shared<const Table>(Table{techniques(), techniques().size()});
    return kTable;
}

TechniquesInForce::TechniquesInForce() : m_table(shipped()) {}

TechniquesInForce::TechniquesInForce(std::span<const HouseTechnique> own) : m_table(shipped()) {
    if (own.empty()) {
        return;
    }
    Table table{techniques()};
    std::vector<std::string_view> retired;
    for (const HouseTechnique& one : own) {
        const auto there = std::ranges::find(table.all, one.key, &Technique::key);
        if (there == table.all.end()) {
            table.all.push_back(techniqueFrom(one, nullptr));
        } else {
            *there = techniqueFrom(one, &*there);
        }
        if (one.retired) {
            retired.push_back(one.key);
        }
    }
    const auto firstRetired =
        std::stable_partition(table.all.begin(), table.all.end(), [&](const Technique& one) {
            return std::ranges::find(retired, one.key) == retired.end();
        });
    table.offered = static_cast<std::size_t>(firstRetired - table.all.begin());
    m_table = std::make_shared<const Table>(std::move(table));
}

std::span<const Technique> TechniquesInForce::offered() const {
    return std::span{m_table->all}.first(m_table->offered);
}

const Technique* TechniquesInForce::named(std::string_view key) const {
    const auto found = std::ranges::find(m_table->all, key, &Technique::key);
    return found == m_table->all.end() ? nullptr : &*found;
}

std::string TechniquesInForce::nameOf(std::string_view keyOrWord) const {
    const Technique* known = named(keyOrWord);
    return known ? known->name : std::string{keyOrWord};
}

TechniquesInForce loadTechniques(const RecordStore& store) {
    std::vector<HouseTechnique> own;
    for (auto& one : all<HouseTechnique>(store)) {
        own.push_back(std::move(one.record));
    }
    return TechniquesInForce{own};
}

Technique techniqueFrom(const HouseTechnique& own, const Technique* shipped) {
    Technique t;
    t.key = own.key;
    t.name = own.name;
    t.kind = own.kind;
    for (const std::string& phrase : linesIn(own.said)) {
        t.said.push_back(inSmallLetters(phrase));
    }
    if (shipped != nullptr) {
        t.named = shipped->named;
        t.aat = shipped->aat;
    } else {
        t.named = {inSmallLetters(own.name)};
    }
    t.doneTo = own.doneTo;
    t.materials = linesIn(own.materials);
    t.minutes = own.minutes;
    t.minutesBasis = own.minutesBasis;
    t.sets = own.sets;
    t.reversibility = own.reversibility;
    t.undoing = own.undoing;
    t.adds = own.adds;
    t.wets = own.wets;
    t.testsMedia = own.testsMedia;
    t.disbinds = own.disbinds;
    t.checks = linesIn(own.checks);
    t.cautions = linesIn(own.cautions);
    t.before = linesIn(own.before);
    t.advice = own.advice;
    t.sources = linesIn(own.source);
    longestFirst(t.said);
    longestFirst(t.named);
    return t;
}

HouseTechnique houseTechniqueFrom(const Technique& shipped, const Id<HouseTechnique>& id) {
    return {.id = id,
            .key = shipped.key,
            .name = shipped.name,
            .kind = shipped.kind,
            .said = asLines(shipped.said),
            .doneTo = shipped.doneTo,
            .materials = asLines(shipped.materials),
            .minutes = shipped.minutes,
            .minutesBasis = shipped.minutesBasis,
            .sets = shipped.sets,
            .reversibility = shipped.reversibility,
            .undoing = shipped.undoing,
            .adds = shipped.adds,
            .wets = shipped.wets,
            .testsMedia = shipped.testsMedia,
            .disbinds = shipped.disbinds,
            .checks = asLines(shipped.checks),
            .cautions = asLines(shipped.cautions),
            .before = asLines(shipped.before),
            .advice = shipped.advice,
            .source = asLines(shipped.sources)};
}

std::string techniqueKeyFor(std::string_view name, const TechniquesInForce& inForce) {
    std::string key;
    for (const char c : foldForSearch(name)) {
        const bool isPlain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (isPlain) {
            key += c;
        } else if (!key.empty() && key.back() != '_') {
            key += '_';
        }
    }
    while (!key.empty() && key.back() == '_') {
        key.pop_back();
    }
    if (key.empty()) {
        key = "own";
    }
    std::string free = key;
    for (int i = 2; inForce.named(free) != nullptr; ++i) {
        free = key + '_' + std::to_string(i);
    }
    return free;
}

std::vector<std::string> linesIn(std::string_view text) {
    constexpr std::string_view kBlanks = " \t\r";
    std::vector<std::string> lines;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view line = text.substr(at, end - at);
        const std::size_t first = line.find_first_not_of(kBlanks);
        if (first != std::string_view::npos) {
            lines.emplace_back(line.substr(first, line.find_last_not_of(kBlanks) - first + 1));
        }
        at = end + 1;
    }
    return lines;
}

std::string asLines(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        text += (text.empty() ? "" : "\n") + line;
    }
    return text;
}

} // namespace headcap::core
