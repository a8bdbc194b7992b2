#include "app/stock/cutting_view.h"

#include <algorithm>

#include <QComboBox>
#include <QHBoxLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/drawing/cutting_drawing.h"
#include "app/form/record_form.h"
#include "app/form/ruled_list.h"
#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/scrolled_page.h"
#include "app/look/style.h"
#include "app/stock/cutting_plan_widget.h"
#include "app/stock/cutting_words.h"
#include "app/stock/house_value_list.h"
#include "app/stock/piece_list.h"
#include "app/stock/plain_form.h"
#include "app/stock/swell_form.h"
#include "app/stock/work_proposer.h"
#include "core/custody/job_states.h"
#include "core/materials/fitness.h"
#include "core/values/decimal.h"

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
      m_sheetList(new RuledList(tr("Sheets and offcuts"))),
      m_noSheets(new Label(Face::body, Ink::quiet)), m_standing(new Label(Face::heading)),
      m_stop(new QPushButton(tr("Stop"))), m_book(new QPushButton(tr("Book the cutting"))),
      m_drawing(new CuttingPlanWidget), m_swell(new SwellForm(session)),
      m_house(new HouseValueList(session)), m_work(new PlanWork(this)), m_soon(new QTimer(this)) {
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
    addHeading(*down, tr("Sheets and offcuts"));
    m_sheetList->setMarkWidth(104);
    m_noSheets->setText(tr("No lot of this material can be cut: it needs the size of its sheets, "
                           "and a whole one left."));
    down->addWidget(m_sheetList);
    down->addWidget(m_noSheets);
    addHeading(*down, tr("The plan"));
    m_standing->setWordWrap(true);
    m_standing->setAccessibleName(tr("How the plan stands"));
    m_stop->setProperty(kQuietButton, true);
    m_stop->setToolTip(tr("Takes the best plan found so far"));
    m_book->setToolTip(
        tr("Pieces to the job, offcuts back to stock, waste written down; one change"));
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    ways->addWidget(m_standing, 1);
    ways->addWidget(m_stop);
    ways->addWidget(m_book);
    down->addLayout(ways);
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
                    m_proposer->setBook(item->record);
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
        m_shelf = core::loadShelf(m_session.records());
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
    planSoon();
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

void CuttingView::propose() {
    const int index = qobject_cast<QComboBox*>(m_material->control())->currentIndex();
    const core::Material* kind =
        index < 0 ? nullptr : m_shelf.material(m_materials[static_cast<std::size_t>(index)]);
    QStringList others;
    int added = 0;
    for (const core::WorkPiece& piece : m_proposer->pieces(m_house->house().work)) {
        if (kind != nullptr && !mayBeCutFrom(piece.stock, kind->kind)) {
            others << tr("%1 (%2)").arg(words(piece.use), words(piece.stock));
            continue;
        }
        m_pieces->add({.id = toCore(words(piece.use)),
                       .width = piece.width,
                       .height = piece.height,
                       .grain = piece.grain,
                       .count = piece.count,
                       .isPasted = piece.isPasted});
        ++added;
    }
    if (!others.isEmpty()) {
        m_session.say(
            {added > 0 ? Notice::Kind::done : Notice::Kind::refused,
             tr("Of other stock, to be cut apart: %1").arg(others.join(QStringLiteral(", ")))});
    }
}

core::CutProblem CuttingView::problem(std::vector<core::Id<core::Lot>>& lots) const {
    const int index = qobject_cast<QComboBox*>(m_material->control())->currentIndex();
    core::CutProblem problem;
    lots.clear();
    for (const core::SheetOfLot& one : m_sheets) {
        if (index >= 0 && !m_spared.contains(one.lot) &&
            m_shelf.lot(one.lot)->material == m_materials[static_cast<std::size_t>(index)]) {
            problem.sheets.push_back(one.sheet);
            lots.push_back(one.lot);
        }
    }
    problem.pieces = m_pieces->pieces();
    problem.rules = m_house->house().rules;
    return problem;
}

void CuttingView::planSoon() {
    forget(m_pieces->pieces().empty() ? tr("Say what is wanted, and the plan stands here.")
                                      : tr("Planning …"));
    m_soon->start();
}

void CuttingView::plan() {
    core::CutProblem asked = problem(m_lots);
    if (asked.pieces.empty()) {
        return;
    }
    m_work->start(std::move(asked));
    m_stop->setVisible(true);
}

void CuttingView::forget(const QString& why, bool isWrong) {
    m_work->drop();
    m_planned.reset();
    m_standing->setInk(isWrong ? Ink::open : Ink::quiet);
    m_standing->setText(why);
    m_drawing->hide();
    m_stop->hide();
    m_book->setEnabled(false);
}

void CuttingView::showOutcome(const PlanWork::Outcome& outcome) {
    m_stop->hide();
    if (!outcome.plan) {
        forget(sentenceFor(outcome.plan.error(), outcome.problem), true);
        return;
    }
    showPlan(outcome.problem, *outcome.plan);
}

void CuttingView::showPlan(const core::CutProblem& problem, const core::CutPlan& plan) {
    m_planned = core::CuttingToBook{
        .job = job(), .problem = problem, .plan = plan, .lots = m_lots, .note = {}};
    m_standing->setInk(plan.leftOut.empty() ? Ink::settled : Ink::open);
    m_standing->setText(standingWords(problem, plan));
    m_drawing->show(problem, plan);
    m_drawing->setVisible(!plan.placed.empty());
    m_book->setEnabled(!plan.placed.empty());
}

QString CuttingView::unfitness() const {
    QStringList said;
    for (const core::SheetPlace& on : sheetsCut(m_planned->plan)) {
        const core::Lot* lot = m_shelf.lot(m_planned->lots[on.sheet]);
        const core::Material* kind = lot == nullptr ? nullptr : m_shelf.material(lot->material);
        if (kind == nullptr || on.number != 1) {
            continue;
        }
        for (const core::FitnessPoint& point :
             core::fitnessOf(*lot, *kind, {.on = m_session.clock().today()})) {
            if (point.asksReason) {
                said << tr("%1 %2").arg(fromCore(lot->number), fromCore(point.sentence));
            }
        }
    }
    return said.join(QStringLiteral("; "));
}

void CuttingView::book() {
    if (!m_planned) {
        return;
    }
    m_planned->job = job();
    m_planned->note = toCore(m_note->text().trimmed());
    if (const QString unfit = unfitness(); !unfit.isEmpty() && m_planned->note.empty()) {
        m_note->setError(tr("%1: say why it is cut all the same.").arg(unfit));
        m_note->control()->setFocus();
        return;
    }
    const core::Day today = m_session.clock().today();
    const auto last = m_session.records().greatest(core::RecordKind::lot, "number",
                                                   core::lotNumberPrefix(today.year()));
    auto change = core::bookCutting(*m_planned, core::loadShelf(m_session.records()), last, today,
                                    {m_session.person(), m_session.clock().now()}, m_session.ids());
    if (!change) {
        m_session.say({Notice::Kind::refused, sentenceFor(change.error())});
        return;
    }
    const QString done = fromCore(change->sentence);
    if (m_session.apply(std::move(*change))) {
        m_note->accept({});
        m_pieces->clear();
        m_session.say({Notice::Kind::done, done, true});
    }
}

bool CuttingView::print() {
    if (!m_planned || m_planned->plan.placed.empty()) {
        return false;
    }
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(tr("Cutting plan"));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() == QDialog::Accepted) {
        printPlan(printer, m_planned->problem, m_planned->plan);
    }
    return true;
}

} // namespace headcap::app
