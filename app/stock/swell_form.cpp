#include "app/stock/swell_form.h"

#include <algorithm>

#include <QComboBox>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/stock/plain_form.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

constexpr std::int64_t kMostSections = 1'000;

QWidget* wayChoice() {
    auto* box = new QComboBox;
    box->addItems({SwellForm::tr("all along"), SwellForm::tr("two on"), SwellForm::tr("three on")});
    return box;
}

// To the hundredth of a millimetre.
QString fine(core::Length length) {
    const std::int64_t step = 10'000;
    return fromCore(
        core::toText(core::Length::nanometres((length.count() + step / 2) / step * step)));
}

} // namespace

SwellForm::SwellForm(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_form(new PlainForm),
      m_sections(&m_form->line(tr("Sections"), QStringLiteral("24"))),
      m_bulk(&m_form->line(tr("Bulk"), tr("at the fore edge: 27 mm"))),
      m_thread(&m_form->line(tr("Thread"), tr("its thickness: 0.5 mm"))),
      m_way(&m_form->control(tr("Sewn"), wayChoice())),
      m_guards(&m_form->line(tr("Guarded folds"), QStringLiteral("0"))),
      m_guardPaper(&m_form->line(tr("Guard paper"), tr("its thickness: 0.03 mm"))),
      m_answer(new Label(Face::heading, Ink::quiet)) {
    m_answer->setWordWrap(true);
    m_answer->setAccessibleName(tr("Swell of the spine"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_form);
    down->addWidget(m_answer);
    connect(m_form, &FormBase::edited, this, &SwellForm::reckon);
    reckon();
}

void SwellForm::show(const core::Shelf& shelf, const core::SewingHouseValues& house) {
    m_shelf = shelf;
    m_house = house;
    reckon();
}

QString SwellForm::answer() const {
    return m_answer->text();
}

void SwellForm::reckon() {
    const ReadingContext context{.today = m_session.clock().today()};
    const auto sections = valueOf<std::int64_t>(*m_sections, context);
    const auto bulk = valueOf<core::Length>(*m_bulk, context);
    const auto thread = valueOf<core::Length>(*m_thread, context);
    const auto guards = valueOf<std::int64_t>(*m_guards, context);
    const auto paper = valueOf<core::Length>(*m_guardPaper, context);
    m_answer->setInk(Ink::quiet);
    const bool isCounted = sections && *sections > 0 && *sections <= kMostSections && bulk &&
                           *bulk > core::Length{} && guards.value_or(0) >= 0 &&
                           guards.value_or(0) <= kMostSections;
    if (!isCounted) {
        m_answer->setText(tr("Say how many sections there are, and how thick the text block is at "
                             "its fore edge."));
        return;
    }
    const core::FoldRepairs repairs{.guardedFolds = static_cast<int>(guards.value_or(0)),
                                    .guardThickness = paper.value_or(core::Length{})};
    const auto way = static_cast<core::SewingWay>(m_way->text().toInt());
    const auto count = static_cast<int>(*sections);
    QStringList said;
    if (thread && *thread > core::Length{}) {
        const core::SpineSwell swell =
            core::spineSwell(count, *thread, way, repairs, *bulk, m_house);
        said << tr("The spine swells by %1, %2 % of its bulk; %3 % is wanted.")
                    .arg(fine(swell.total), fromCore(core::decimalText(swell.perMille, 1)),
                         fromCore(core::decimalText(m_house.wantedPerMille, 1)));
    }
    const auto wanted = core::threadWanted(count, way, repairs, *bulk, m_house);
    said << (wanted ? threadWords(*wanted)
                    : tr("The guards alone swell it more than is wanted: sew two on, or use a "
                         "thinner paper."));
    m_answer->setInk(Ink::ink);
    m_answer->setText(said.join(QLatin1Char(' ')));
}

QString SwellForm::threadWords(core::Length wanted) const {
    std::vector<core::Length> thick;
    std::vector<const core::Material*> threads;
    for (const core::Material& kind : m_shelf.materials) {
        if (kind.kind == core::MaterialClass::thread && kind.thickness) {
            thick.push_back(*kind.thickness);
            threads.push_back(&kind);
        }
    }
    QString said = tr("A thread of %1 gives what is wanted").arg(fine(wanted));
    if (const auto nearest = core::nearestThread(thick, wanted)) {
        said += tr("; nearest on the shelf: %1, %2")
                    .arg(fromCore(threads[*nearest]->name), fine(thick[*nearest]));
    }
    return said + QLatin1Char('.');
}

} // namespace headcap::app
