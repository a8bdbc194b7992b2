// What a mix is taken from.
#include <algorithm>

#include "app/form/record_choices.h"
#include "app/session/words.h"
#include "app/stock/mix_editor.h"
#include "app/stock/plain_form.h"
#include "core/custody/job_states.h"
#include "core/materials/fitness.h"
#include "core/values/english.h"

namespace headcap::app {
namespace {

QString sentenceFor(core::StrengthProblem problem, const core::RecipeCard& recipe) {
    switch (problem) {
    case core::StrengthProblem::notAbove:
        return MixEditor::tr("Write how much there is to be, above nothing.");
    case core::StrengthProblem::tooMuch:
        return MixEditor::tr("A part of it would be more than can be counted.");
    case core::StrengthProblem::tooLittle:
        return MixEditor::tr("A part of it would be less than can be measured out.");
    case core::StrengthProblem::strongerThanStock:
    case core::StrengthProblem::densityUnknown:
    case core::StrengthProblem::otherMeasure:
    case core::StrengthProblem::beyondWhole:
        break;
    }
    return MixEditor::tr("The recipe says what it makes in %1; write the amount so.")
        .arg(recipe.yields ? words(recipe.yields->unit) : MixEditor::tr("no measure"));
}

} // namespace

void MixEditor::addPart(const core::RecipeCardPart& part) {
    const core::Material* kind = part.material ? m_shelf.material(*part.material) : nullptr;
    const QString name =
        fromCore(core::capitalised(kind != nullptr && part.what.empty() ? kind->name : part.what));
    PartRows rows{&m_form->line(name), &m_form->line(tr("from lot")), nullptr, false};
    rows.amount->accept(fromCore(core::toText(part.amount)));
    const auto offered = core::lotsFor(part, m_shelf, m_session.clock().today());
    if (!offered.empty()) {
        rows.lot->accept(
            fromCore(core::lotName(*offered.front(), m_shelf.material(offered.front()->material))));
    }
    const Choices lots = lotsOf(m_session);
    rows.lot->completed([lots] { return wordsOf(lots()); })
        .placeholder(offered.empty() ? tr("none: comes with it") : tr("scan its label, or type"))
        .understood([this, isNoneThere = offered.empty()](const QString& text) {
            return standingOf(text, isNoneThere);
        });
    rows.why = &m_form->line(tr("used because"), tr("why, though it is not fit"), true);
    const auto showWhy = [this, rows] {
        const core::Lot* lot = lotOf(rows.lot->text());
        rows.why->setVisible(lot != nullptr && !unfitness(*lot).isEmpty());
    };
    connect(rows.lot, &FieldRow::edited, this, showWhy);
    connect(rows.lot, &FieldRow::left, this, showWhy);
    showWhy();
    rows.isNoneThere = offered.empty();
    m_parts.push_back(rows);
}

const core::Lot* MixEditor::lotOf(const QString& text) const {
    if (text.trimmed().isEmpty()) {
        return nullptr;
    }
    const auto key = keyOf(lotsOf(m_session)(), text.trimmed());
    const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
    return id ? m_shelf.lot(core::Id<core::Lot>{*id}) : nullptr;
}

QString MixEditor::unfitness(const core::Lot& lot) const {
    const core::Material* kind = m_shelf.material(lot.material);
    QStringList said;
    if (kind != nullptr) {
        for (const core::FitnessPoint& point :
             core::fitnessOf(lot, *kind, {.on = m_session.clock().today(), .stays = false})) {
            if (point.asksReason) {
                said << fromCore(point.sentence);
            }
        }
    }
    return said.join(QStringLiteral("; "));
}

QString MixEditor::standingOf(const QString& text, bool isNoneThere) const {
    const core::Lot* lot = lotOf(text);
    if (lot == nullptr) {
        return text.trimmed().isEmpty() ? QString{}
               : isNoneThere            ? tr("received with the mix, under this number")
                                        : tr("no such lot on the shelf");
    }
    QStringList said;
    if (const auto balance = m_shelf.balanceOf(lot->id)) {
        said << tr("%1 left").arg(fromCore(core::toText(*balance)));
    }
    const core::Material* kind = m_shelf.material(lot->material);
    if (kind != nullptr) {
        for (const core::FitnessPoint& point :
             core::fitnessOf(*lot, *kind, {.on = m_session.clock().today(), .stays = false})) {
            said << fromCore(point.sentence);
        }
    }
    return dotted(said);
}

// The numbers of lots received with a mix follow its own.
std::string MixEditor::numberAfter(const std::string& last) const {
    const auto year = m_session.clock().today().year();
    std::optional<std::string> kept;
    m_session.guarded([&] {
        kept = m_session.records().greatest(core::RecordKind::lot, "number",
                                            core::lotNumberPrefix(year));
    });
    return core::nextLotNumber(std::max(kept.value_or(std::string{}), last), year)
        .value_or(std::string{});
}

std::optional<std::vector<core::PartTaken>> MixEditor::parts() {
    const ReadingContext context{.today = m_session.clock().today()};
    std::vector<core::PartTaken> parts;
    std::string last = toCore(m_number->text().trimmed());
    bool isWhole = true;
    for (const PartRows& rows : m_parts) {
        const auto amount = valueOf<core::Amount>(*rows.amount, context);
        const QString named = rows.lot->text().trimmed();
        const core::Lot* lot = lotOf(named);
        const QString why = rows.why->text().trimmed();
        const bool isReceived = lot == nullptr && rows.isNoneThere;
        isWhole = isWhole && amount && (lot != nullptr || isReceived);
        if (lot == nullptr && !isReceived) {
            rows.lot->setError(
                tr("Which lot was it taken from? Receive it first, if it has none."));
        } else if (lot != nullptr && !unfitness(*lot).isEmpty() && why.isEmpty()) {
            rows.why->setError(
                tr("%1 %2: say why it is used.").arg(fromCore(lot->number), unfitness(*lot)));
            isWhole = false;
        }
        if (isReceived) {
            last = named.isEmpty() ? numberAfter(last) : toCore(named);
        }
        if (amount) {
            parts.push_back({.amount = *amount,
                             .lot = lot == nullptr ? std::nullopt : std::optional{lot->id},
                             .number = isReceived ? last : std::string{},
                             .why = toCore(why)});
        }
    }
    return isWhole ? std::optional{parts} : std::nullopt;
}

// By what is to be made; amounts changed by hand are put anew.
void MixEditor::scale() {
    const ReadingContext context{.today = m_session.clock().today()};
    const auto yield = valueOf<core::Amount>(*m_yield, context);
    if (!yield) {
        return;
    }
    const auto scaled = core::scaledToYield(m_recipe, *yield);
    if (!scaled) {
        m_yield->setError(sentenceFor(scaled.error(), m_recipe));
        return;
    }
    m_scaled = *scaled;
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        m_parts[i].amount->accept(fromCore(core::toText(m_scaled.parts[i].amount)));
    }
}

} // namespace headcap::app
