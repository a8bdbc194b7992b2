#include "app/stock/strength_calculator.h"

#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/stock/plain_form.h"
#include "core/materials/strengths.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

QString sentenceFor(core::StrengthProblem problem) {
    using P = core::StrengthProblem;
    switch (problem) {
    case P::notAbove:
        return StrengthCalculator::tr("Strengths and amounts must be above nothing.");
    case P::strongerThanStock:
        return StrengthCalculator::tr("It is wanted stronger than the stock is: add more of what "
                                      "is dissolved, no thinner makes it so.");
    case P::densityUnknown:
        return StrengthCalculator::tr("The one is by weight and the other by volume: say how heavy "
                                      "the stock is, in g/ml.");
    case P::otherMeasure:
        return StrengthCalculator::tr("Strengths by volume make millilitres, those by weight "
                                      "grams: say how much in that.");
    case P::beyondWhole:
        return StrengthCalculator::tr("That would be more than the whole of it.");
    case P::tooMuch:
        return StrengthCalculator::tr("That is more than can be counted.");
    case P::tooLittle:
        return StrengthCalculator::tr("That is less than can be measured out.");
    }
    return {};
}

// To a tenth of a millilitre or a hundredth of a gram, as it is measured out.
QString measured(core::Amount amount) {
    const std::int64_t step = amount.unit == core::Unit::gram ? 10'000 : 1;
    amount.count = (amount.count + step / 2) / step * step;
    return fromCore(core::toText(amount));
}

} // namespace

StrengthCalculator::StrengthCalculator(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_form(new PlainForm),
      m_stock(
          &m_form->line(tr("The stock is"), tr("5 % w/v; empty where it is made from the dry"))),
      m_wanted(&m_form->line(tr("Wanted"), tr("2 % w/v"))),
      m_total(&m_form->line(tr("How much"), tr("400 ml"))),
      m_density(&m_form->line(tr("Stock weighs"), tr("g/ml, where the basis changes"))),
      m_answer(new Label(Face::heading)) {
    m_answer->setWordWrap(true);
    m_answer->setAccessibleName(tr("How much of what"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_form);
    down->addWidget(m_answer);
    connect(m_form, &FormBase::edited, this, &StrengthCalculator::reckon);
    reckon();
}

QString StrengthCalculator::answer() const {
    return m_answer->text();
}

void StrengthCalculator::reckon() {
    const ReadingContext context{.today = m_session.clock().today()};
    const auto wanted = valueOf<core::Strength>(*m_wanted, context);
    const auto total = valueOf<core::Amount>(*m_total, context);
    m_answer->setInk(Ink::quiet);
    if (m_stock->text().trimmed().isEmpty() && wanted && total) {
        fromTheDry(*wanted, *total);
        return;
    }
    const auto stock = valueOf<core::Strength>(*m_stock, context);
    if (!stock || !wanted || !total) {
        m_answer->setText(tr("Say the strength of the stock, the strength wanted, and how much."));
        return;
    }
    QString density = m_density->text().trimmed();
    density.remove(QStringLiteral("g/ml"), Qt::CaseInsensitive);
    const auto heavy = core::parseDecimal(toCore(density.trimmed()), 3);
    m_density->setError(heavy || density.isEmpty() ? QString{}
                                                   : tr("Write it as a number: 0.789."));
    const auto made = core::diluted(
        *stock, *wanted, *total,
        {.solution = heavy ? std::optional{*heavy} : std::nullopt, .solute = std::nullopt});
    if (!made) {
        refuse(made.error());
        return;
    }
    m_answer->setInk(Ink::ink);
    m_answer->setText(tr("%1 of the stock and %2 of what thins it.")
                          .arg(measured(made->stock), measured(made->diluent)));
}

// How much is weighed out: the strength is on the solvent by volume, by weight on the whole.
void StrengthCalculator::fromTheDry(const core::Strength& wanted, const core::Amount& solvent) {
    const auto solute = core::soluteIn(solvent, wanted);
    if (!solute) {
        refuse(solute.error());
        return;
    }
    m_answer->setInk(Ink::ink);
    m_answer->setText(tr("%1 into %2 of the solvent.").arg(measured(*solute), measured(solvent)));
}

void StrengthCalculator::refuse(core::StrengthProblem problem) {
    m_answer->setInk(Ink::open);
    m_answer->setText(sentenceFor(problem));
}

} // namespace headcap::app
