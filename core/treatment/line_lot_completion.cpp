#include "core/treatment/line_lot_completion.h"

#include <algorithm>

#include "core/treatment/line_label.h"

namespace headcap::core::line {
namespace {

class LotCompleter {
public:
    LotCompleter(const Words& words, const LineContext& context)
        : m_words(words), m_context(context) {}

    [[nodiscard]] std::vector<LineCompletion> lots() const {
        std::vector<LineCompletion> found;
        const Word& last = m_words.back();
        if (last.lower.size() < kLeastLetters) {
            return found;
        }
        for (const CutForJob& cut : m_context.cut) {
            addCut(found, cut, last);
        }
        std::vector<const Lot*> lots;
        for (const Lot& lot : m_context.shelf.lots) {
            if (!lot.finished && begins(lot, last.lower) && !isNamed(lot)) {
                lots.push_back(&lot);
            }
        }
        std::ranges::stable_sort(lots, std::ranges::greater{}, &Lot::number);
        for (const Lot* lot : lots) {
            const Material* kind = m_context.shelf.material(lot->material);
            std::string says = kind == nullptr ? std::string{} : kind->name;
            const auto left = m_context.shelf.balanceOf(lot->id);
            if (left) {
                says += (says.empty() ? "" : ", ") + toText(*left) + " left";
            }
            found.push_back({LinePart::material, last.begin, lot->number, says});
        }
        return found;
    }

private:
    // By its number, or by a word of its kind or product: "past" of "wheat starch paste".
    [[nodiscard]] bool begins(const Lot& lot, std::string_view typed) const {
        typed = numberOnLabel(typed);
        if (lot.number.starts_with(typed)) {
            return lot.number.size() > typed.size();
        }
        const Material* kind = m_context.shelf.material(lot.material);
        const auto names =
            wordsOf((kind == nullptr ? std::string{} : kind->name) + " " + lot.product);
        return std::ranges::any_of(
            names, [&](const std::string& name) { return name.starts_with(typed); });
    }

    // What was cut for this job comes before whole sheets: by its lot, its kind, or the piece's
    // name.
    void addCut(std::vector<LineCompletion>& found, const CutForJob& cut, const Word& last) const {
        const Lot* lot = m_context.shelf.numbered(cut.lot);
        const bool isMeant = std::ranges::any_of(cut.names, [&](const std::string& name) {
            return std::ranges::any_of(wordsOf(name), [&](const std::string& word) {
                return word.starts_with(last.lower);
            });
        });
        if (lot == nullptr || isNamed(*lot) || !(isMeant || begins(*lot, last.lower))) {
            return;
        }
        const std::string pieces = toText(Amount::pieces(cut.pieces));
        std::string names;
        for (const std::string& name : cut.names) {
            names += (names.empty() ? "" : ", ") + name;
        }
        found.push_back({LinePart::material, last.begin, cut.lot + ' ' + pieces,
                         "cut for this job" + (names.empty() ? "" : ": " + names)});
    }

    [[nodiscard]] bool isNamed(const Lot& lot) const {
        return std::ranges::any_of(m_words, [&](const Word& word) {
            return lotOnLabel(word.text, m_context.shelf) == &lot;
        });
    }

    const Words& m_words;
    const LineContext& m_context;
};

} // namespace

std::vector<LineCompletion> lotCompletions(const Words& words, const LineContext& context) {
    return LotCompleter{words, context}.lots();
}

} // namespace headcap::core::line
