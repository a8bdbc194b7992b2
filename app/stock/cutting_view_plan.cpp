// What the cutting view plans and books.
#include "app/stock/cutting_view.h"

#include <algorithm>

#include <QComboBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTimer>

#include "app/drawing/cutting_drawing.h"
#include "app/look/label.h"
#include "app/stock/cutting_plan_widget.h"
#include "app/stock/cutting_words.h"
#include "app/stock/house_value_list.h"
#include "app/stock/piece_list.h"
#include "app/stock/plain_form.h"
#include "app/stock/plan_paper.h"
#include "app/stock/work_proposer.h"
#include "core/custody/people.h"
#include "core/materials/fitness.h"
#include "core/materials/ledger_in_brief.h"
#include "core/values/english.h"

namespace headcap::app {

const core::Material* CuttingView::material() const {
    const int index = qobject_cast<QComboBox*>(m_material->control())->currentIndex();
    return index < 0 ? nullptr : m_shelf.material(m_materials[static_cast<std::size_t>(index)]);
}

bool CuttingView::chooseMaterialFor(const std::vector<core::WorkPiece>& pieces) {
    const auto mayGive = [&](const core::Material* kind) {
        return kind != nullptr && std::ranges::any_of(pieces, [&](const core::WorkPiece& piece) {
                   return mayBeCutFrom(piece.stock, kind->kind);
               });
    };
    if (mayGive(material())) {
        return true;
    }
    const auto at = std::ranges::find_if(
        m_materials, [&](const auto& id) { return mayGive(m_shelf.material(id)); });
    if (at == m_materials.end()) {
        return false;
    }
    qobject_cast<QComboBox*>(m_material->control())
        ->setCurrentIndex(static_cast<int>(at - m_materials.begin()));
    return true;
}

void CuttingView::propose() {
    const auto asked = m_proposer->pieces(m_house->house().work);
    if (asked.empty()) {
        return;
    }
    const bool isAnyHere = chooseMaterialFor(asked);
    const core::Material* kind = material();
    QStringList others;
    std::vector<core::WantedPiece> wanted;
    for (const core::WorkPiece& piece : asked) {
        if (kind != nullptr && !mayBeCutFrom(piece.stock, kind->kind)) {
            others << tr("%1 %2 of %3, %4 mm")
                          .arg(piece.count)
                          .arg(words(piece.use), words(piece.stock),
                               sizeWords(piece.width, piece.height));
            continue;
        }
        wanted.push_back({.id = toCore(words(piece.use)),
                          .width = piece.width,
                          .height = piece.height,
                          .grain = piece.grain,
                          .count = piece.count,
                          .isPasted = piece.isPasted});
    }
    m_pieces->propose(m_proposer->work(), wanted);
    m_others->setText(tr("Of other stock, cut apart: %1.").arg(others.join(QStringLiteral("; "))));
    m_others->setVisible(!others.isEmpty());
    if (!isAnyHere && kind != nullptr) {
        m_session.say({Notice::Kind::refused, tr("Nothing of this work is cut from %1, and no "
                                                 "sheet on the shelf is of its stock.")
                                                  .arg(fromCore(kind->name))});
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

bool CuttingView::isPlanning() const {
    return m_soon->isActive() || m_work->isRunning();
}

QString CuttingView::standing() const {
    return m_standing->text();
}

void CuttingView::planSoon() {
    m_isBooked = false;
    m_asked.reset();
    m_book->setText(tr("Book the cutting"));
    forget(m_pieces->pieces().empty() ? tr("Say what is wanted, and the plan stands here.")
                                      : tr("Planning …"));
    m_soon->start();
}

void CuttingView::plan() {
    m_asked = problem(m_lots);
    if (m_asked->pieces.empty()) {
        return;
    }
    m_work->start(*m_asked);
    m_stop->setVisible(true);
}

void CuttingView::forget(const QString& why, bool isWrong) {
    m_work->drop();
    m_planned.reset();
    m_standing->setInk(isWrong ? Ink::open : Ink::quiet);
    m_standing->setText(why);
    m_drawing->hide();
    m_against->hide();
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
    const QString against = m_planned->job ? grainAgainst(problem, plan) : QString{};
    m_against->setText(against.isEmpty() ? QString{} : against + QLatin1Char('.'));
    m_against->setVisible(!against.isEmpty());
    m_drawing->show(problem, plan);
    m_drawing->setVisible(!plan.placed.empty());
    m_book->setEnabled(!plan.placed.empty());
}

PlanHead CuttingView::planHead() const {
    PlanHead head{.material = material() == nullptr ? QString{} : fromCore(material()->name),
                  .day = fromCore(core::dayText(m_session.clock().today())),
                  .note = m_note->text().trimmed()};
    m_session.guarded([&] {
        for (const auto& one : core::all<core::Workshop>(m_session.records())) {
            head.workshop = fromCore(one.record.name);
        }
        if (job()) {
            head.job = m_job->text().trimmed();
        }
        const auto who = m_session.person();
        const auto person = who ? core::find(m_session.records(), *who) : std::nullopt;
        head.by = person ? fromCore(person->record.name) : QString{};
    });
    return head;
}

bool CuttingView::print() {
    if (!m_planned || m_planned->plan.placed.empty()) {
        return false;
    }
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(tr("Cutting plan"));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() == QDialog::Accepted) {
        printPlan(printer, planHead(), m_planned->problem, m_planned->plan);
        m_session.say({Notice::Kind::done, tr("The plan is sent to be printed")});
    }
    return true;
}

} // namespace headcap::app
