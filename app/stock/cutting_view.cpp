#include "app/stock/cutting_view.h"

#include <algorithm>

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/form/record_form.h"
#include "app/form/ruled_list.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/scrolled_page.h"
#include "app/stock/cutting_plan_widget.h"
#include "app/stock/cutting_words.h"
#include "app/stock/house_value_list.h"
#include "app/stock/piece_list.h"
#include "app/stock/plain_form.h"
#include "app/stock/swell_form.h"
#include "app/stock/work_proposer.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {
namespace {

constexpr int kSoonMs = 200;

Choices jobsInTheHouse(Session& session) {
    return [&session] {
        std::vector<Choice> choices;
        session.guarded([&] {
            for (const core::JobLine& line : session.stores().jobs.inTheHouse()) {
                choices.push_back({line.id.text(), fromCore(line.number + ", " + line.title)});
            }
        });
        return choices;
    };
}

} // namespace

CuttingView::CuttingView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_form(new PlainForm),
      m_job(&m_form->line(tr("For job"), tr("its number; empty: for stock"))),
      m_material(&m_form->control(tr("Cut from"), new QComboBox)),
      m_note(&m_form->line(tr("Note"), tr("what for; or why a lot that is not fit is cut"), true)),
      m_proposer(new WorkProposer(session)), m_pieces(new PieceList(session)),
      m_others(new Label(Face::body)), m_sheetList(new RuledList(tr("Sheets and offcuts"))),
      m_noSheets(new Label(Face::body, Ink::quiet)), m_standing(new Label(Face::heading)),
      m_against(new Label(Face::body, Ink::open)),
      m_stop(quietButton(tr("Stop"), tr("Takes the best plan found so far"))),
      m_book(new QPushButton(tr("Book the cutting"))), m_drawing(new CuttingPlanWidget),
      m_swell(new SwellForm(session)), m_house(new HouseValueList(session)),
      m_work(new PlanWork(this)), m_soon(new QTimer(this)) {
    const Choices jobs = jobsInTheHouse(session);
    m_job->completed([jobs] { return wordsOf(jobs()); });
    m_soon->setSingleShot(true);
    m_soon->setInterval(kSoonMs);
    layOut();
    connectAll();
}

void CuttingView::layOut() {
    auto* down = scrolledPage(
        this, title(),
        tr("Straight through, edge to edge, in order; the grain runs as it must; offcuts before "
           "whole sheets."));
    addHeading(*down, tr("For what, from what"));
    down->addWidget(m_form);
    down->addSpacing(kGap);
    down->addWidget(m_proposer);
    down->addSpacing(kSection);
    down->addWidget(m_pieces);
    m_others->setRunning();
    m_others->hide();
    down->addWidget(m_others);
    const int label = std::max(m_form->widestLabel(), m_proposer->form().widestLabel());
    m_form->alignLabels(label);
    m_proposer->form().alignLabels(label);
    addHeading(*down, tr("Sheets and offcuts"));
    m_sheetList->setMarkWidth(104);
    m_noSheets->setText(tr("No lot of this material can be cut: it needs the size of its sheets, "
                           "and a whole one left."));
    down->addWidget(m_sheetList);
    down->addWidget(m_noSheets);
    addHeading(*down, tr("The plan"));
    m_standing->setWordWrap(true);
    m_standing->setAccessibleName(tr("How the plan stands"));
    m_book->setDefault(true);
    m_book->setToolTip(
        tr("Pieces to the job, offcuts back to stock, waste written down; one change"));
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    ways->addWidget(m_standing, 1);
    ways->addWidget(m_stop);
    ways->addWidget(m_book);
    down->addLayout(ways);
    m_against->setRunning();
    down->addWidget(m_against);
    down->addSpacing(kGap);
    down->addWidget(m_drawing);
    addHeading(*down, tr("Swell of the spine"));
    down->addWidget(m_swell);
    down->addSpacing(kSection);
    down->addWidget(m_house);
    down->addStretch(1);
}

void CuttingView::connectAll() {
    auto* material = qobject_cast<QComboBox*>(m_material->control());
    connect(material, &QComboBox::currentIndexChanged, this, [this] {
        if (const core::Material* kind = this->material();
            kind != nullptr && kind->kind == core::MaterialClass::board && kind->thickness) {
            m_proposer->setBoard(*kind->thickness);
        }
        showSheets();
        planSoon();
    });
    connect(m_job, &FieldRow::left, this, [this] {
        if (const auto id = job()) {
            m_session.guarded([&] {
                const auto record = core::find(m_session.records(), *id);
                const auto item =
                    record ? core::find(m_session.records(), record->record.item) : std::nullopt;
                if (item) {
                    m_proposer->setBook(item->record, m_house->house().work);
                }
            });
        }
        planSoon();
    });
    connect(m_proposer, &WorkProposer::proposeAsked, this, &CuttingView::propose);
    connect(m_pieces, &PieceList::changed, this, &CuttingView::planSoon);
    connect(m_sheetList, &RuledList::opened, this, &CuttingView::toggleSheet);
    connect(m_soon, &QTimer::timeout, this, &CuttingView::plan);
    connect(m_stop, &QPushButton::clicked, m_work, &PlanWork::stop);
    connect(m_book, &QPushButton::clicked, this, &CuttingView::book);
    connect(
        m_work, &PlanWork::done, this,
        [this](const std::shared_ptr<const PlanWork::Outcome>& outcome) { showOutcome(*outcome); });
    forget(tr("Say what is wanted, and the plan stands here."));
}

bool CuttingView::enter(const Destination& destination) {
    m_isBooked = false; // come to anew, one plans anew
    refresh();
    if (destination.job) {
        for (const Choice& one : jobsInTheHouse(m_session)()) {
            if (one.key == destination.job->text()) {
                m_job->accept(one.words);
                Q_EMIT m_job->left();
            }
        }
    }
    m_job->control()->setFocus();
    return true;
}

void CuttingView::refresh() {
    m_session.guarded([this] {
        m_shelf = *core::shelfInBrief(m_session.records());
        m_house->refresh();
        m_sheets = core::sheetsOnShelf(m_shelf, m_house->house());
        m_swell->show(m_shelf, m_house->house().sewing);
        auto* box = qobject_cast<QComboBox*>(m_material->control());
        const auto chosen =
            box->currentIndex() >= 0 && !m_materials.empty()
                ? std::optional{m_materials[static_cast<std::size_t>(box->currentIndex())]}
                : std::nullopt;
        const QSignalBlocker quiet{box};
        box->clear();
        m_materials.clear();
        for (const core::Material& kind : m_shelf.materials) {
            if (std::ranges::any_of(m_sheets, [&](const core::SheetOfLot& one) {
                    return m_shelf.lot(one.lot)->material == kind.id;
                })) {
                m_materials.push_back(kind.id);
                box->addItem(fromCore(kind.name));
            }
        }
        const auto at = std::ranges::find(m_materials, chosen);
        box->setCurrentIndex(at == m_materials.end() ? (m_materials.empty() ? -1 : 0)
                                                     : static_cast<int>(at - m_materials.begin()));
    });
    showSheets();
    // Most of what changes in the workshop changes no plan.
    std::vector<core::Id<core::Lot>> lots;
    const bool isTheSame = m_asked && *m_asked == problem(lots) && lots == m_lots;
    if (!m_isBooked && !isTheSame) {
        planSoon();
    }
}

std::optional<core::Id<core::Job>> CuttingView::job() const {
    const QString text = m_job->text().trimmed();
    const auto key = text.isEmpty() ? std::nullopt : keyOf(jobsInTheHouse(m_session)(), text);
    const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
    return id ? std::optional{core::Id<core::Job>{*id}} : std::nullopt;
}

void CuttingView::showSheets() {
    const int index = qobject_cast<QComboBox*>(m_material->control())->currentIndex();
    std::vector<RuledModel::Row> rows;
    for (const core::SheetOfLot& one : m_sheets) {
        const core::Lot& lot = *m_shelf.lot(one.lot);
        if (index >= 0 && lot.material == m_materials[static_cast<std::size_t>(index)]) {
            rows.push_back({lot.id.uuid(), sheetWords(m_shelf, one, m_spared.contains(one.lot),
                                                      m_session.clock().today())});
        }
    }
    m_noSheets->setVisible(rows.empty());
    m_sheetList->setVisible(!rows.empty());
    m_sheetList->show(std::move(rows));
}

void CuttingView::toggleSheet() {
    if (const auto id = m_sheetList->current()) {
        const core::Id<core::Lot> lot{*id};
        if (m_spared.erase(lot) == 0) {
            m_spared.insert(lot);
        }
        showSheets();
        planSoon();
    }
}

} // namespace headcap::app
