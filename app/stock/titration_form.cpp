#include "app/stock/titration_form.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/stock/plain_form.h"
#include "core/values/decimal.h"
#include "core/values/english.h"

namespace headcap::app {
namespace {

// A bare number is in the one unit that the field can have.
std::optional<core::Amount> amountIn(FieldRow& row, std::string_view unit,
                                     const ReadingContext& context) {
    const std::string text = toCore(row.text().trimmed());
    const auto bare = core::parseAmount(text);
    if (bare || bare.error().problem != core::TextProblem::unitMissing) {
        return valueOf<core::Amount>(row, context);
    }
    row.setError({});
    const auto read = core::parseAmount(text + " " + std::string{unit});
    return read ? std::optional{*read} : std::nullopt;
}

std::optional<core::Volume> volumeOf(FieldRow& row, const ReadingContext& context) {
    const auto amount = amountIn(row, "ml", context);
    if (!amount || amount->unit != core::Unit::millilitre) {
        if (amount) {
            row.setError(TitrationForm::tr("Write it in millilitres: 20.00 ml."));
        }
        return std::nullopt;
    }
    return core::Volume::microlitres(amount->count);
}

QString verdictOn(const core::AlkaliReserve& reserve) {
    QString said =
        TitrationForm::tr("%1 mol/kg, %2 % as calcium carbonate: %3")
            .arg(fromCore(core::decimalText(reserve.mmolKg, 3)),
                 fromCore(core::decimalText((reserve.carbonatePpm + 5) / 10, 3)),
                 core::permanenceFaults(std::nullopt, reserve.mmolKg).empty()
                     ? TitrationForm::tr("ISO 9706 is met (0.4 mol/kg).")
                     : TitrationForm::tr("ISO 9706 is not met (it asks for 0.4 mol/kg)."));
    if (reserve.isNearMethodsLimit) {
        said += QLatin1Char(' ') +
                TitrationForm::tr("Under about 2 % the method is at its limit: repeat it.");
    }
    return said;
}

} // namespace

TitrationForm::TitrationForm(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_form(new PlainForm),
      m_paper(&m_form->line(tr("Paper"), tr("1.000 g"))),
      m_acid(&m_form->line(tr("Acid given"), tr("20.00 ml"))),
      m_alkali(&m_form->line(tr("Alkali taken"), tr("15.50 ml"))),
      m_normality(&m_form->line(tr("Normality"), tr("0.1 of both"))),
      m_lot(&m_form->line(tr("Measured on"), tr("the lot's number"))),
      m_answer(new Label(Face::heading, Ink::quiet)),
      m_keep(new QPushButton(tr("Keep it with the lot"))) {
    const Choices lots = lotsOf(session);
    m_lot->completed([lots] { return wordsOf(lots()); });
    m_answer->setWordWrap(true);
    m_answer->setAccessibleName(tr("Alkali reserve"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_form);
    down->addWidget(m_answer);
    down->addWidget(m_keep, 0, Qt::AlignLeft);
    connect(m_form, &FormBase::edited, this, &TitrationForm::reckon);
    connect(m_keep, &QPushButton::clicked, this, &TitrationForm::keep);
    reckon();
}

QString TitrationForm::answer() const {
    return m_answer->text();
}

void TitrationForm::reckon() {
    const ReadingContext context{.today = m_session.clock().today()};
    const auto paper = amountIn(*m_paper, "g", context);
    if (paper && paper->unit != core::Unit::gram) {
        m_paper->setError(tr("Write what it weighed in grams: 1.000 g."));
    }
    const auto acid = volumeOf(*m_acid, context);
    const auto alkali = volumeOf(*m_alkali, context);
    const auto normality = m_normality->text().trimmed().isEmpty()
                               ? core::parseDecimal("0.1", 3)
                               : core::parseDecimal(toCore(m_normality->text().trimmed()), 3);
    m_normality->setError(normality ? QString{} : tr("Write it as a number: 0.1."));
    m_reserve.reset();
    m_answer->setInk(Ink::quiet);
    m_answer->setText(tr("Say what the paper weighed, and how much acid and alkali it took."));
    if (paper && paper->unit == core::Unit::gram && acid && alkali && normality) {
        const auto reserve = core::alkaliReserve({.paper = core::Mass::micrograms(paper->count),
                                                  .acid = *acid,
                                                  .acidMmolL = *normality,
                                                  .alkali = *alkali,
                                                  .alkaliMmolL = *normality});
        if (reserve) {
            m_reserve = *reserve;
            const bool isMet = core::permanenceFaults(std::nullopt, reserve->mmolKg).empty();
            m_answer->setInk(isMet ? Ink::settled : Ink::open);
            m_answer->setText(verdictOn(*reserve));
        } else {
            m_answer->setInk(Ink::open);
            m_answer->setText(reserve.error() == core::TitrationProblem::moreAlkaliThanAcid
                                  ? tr("It took more alkali than acid was given: the paper is "
                                       "acid, or a reading is wrong.")
                                  : tr("Weights and volumes must be above nothing."));
        }
    }
    m_keep->setEnabled(m_reserve.has_value());
}

void TitrationForm::keep() {
    const auto key = keyOf(lotsOf(m_session)(), m_lot->text().trimmed());
    const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
    std::optional<core::Stored<core::Lot>> lot;
    if (!m_session.guarded([&] {
            lot = id ? core::find(m_session.records(), core::Id<core::Lot>{*id}) : std::nullopt;
        })) {
        return;
    }
    if (!lot || !m_reserve) {
        m_lot->setError(notAmongThem());
        return;
    }
    lot->record.alkaliReserveMmolKg = m_reserve->mmolKg;
    if (lot->record.evidence.empty()) {
        lot->record.evidence = toCore(
            tr("own back titration, %1").arg(fromCore(core::dayText(m_session.clock().today()))));
    }
    core::Change change{.sentence =
                            toCore(tr("Lot %1: alkali reserve measured, %2 mol/kg")
                                       .arg(fromCore(lot->record.number),
                                            fromCore(core::decimalText(m_reserve->mmolKg, 3)))),
                        .who = m_session.person()};
    change.update(lot->record, lot->revision);
    const QString done = fromCore(change.sentence);
    if (m_session.apply(std::move(change))) {
        m_session.say({Notice::Kind::done, done, true});
    }
}

} // namespace headcap::app
