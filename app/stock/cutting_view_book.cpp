// What is booked of a plan, and what stays in sight of it.
#include <QPushButton>

#include "app/drawing/cutting_drawing.h"
#include "app/look/label.h"
#include "app/stock/cutting_view.h"
#include "app/stock/cutting_words.h"
#include "app/stock/piece_list.h"
#include "app/stock/plain_form.h"
#include "core/custody/job_states.h"
#include "core/materials/fitness.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {

QString CuttingView::unfitness() const {
    QStringList said;
    if (const QString grain = grainAgainst(m_planned->problem, m_planned->plan);
        m_planned->job && !grain.isEmpty()) {
        said << grain;
    }
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
    if (m_isBooked) {
        startAnew();
        return;
    }
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
    core::Change change;
    const bool isMade = m_session.guarded([&] {
        const auto last = m_session.records().greatest(core::RecordKind::lot, "number",
                                                       core::lotNumberPrefix(today.year()));
        auto booked =
            core::bookCutting(*m_planned, *core::shelfInBrief(m_session.records()), last, today,
                              {m_session.person(), m_session.clock().now()}, m_session.ids());
        if (booked) {
            change = *std::move(booked);
        } else {
            m_session.say({Notice::Kind::refused, sentenceFor(booked.error())});
        }
    });
    if (!isMade || change.writes.empty()) {
        return;
    }
    const QString done = fromCore(change.sentence);
    m_isBooked = true; // before all is read anew
    if (m_session.apply(std::move(change))) {
        keepInSight(done);
        m_session.say({Notice::Kind::done, done, true});
    } else {
        m_isBooked = false;
    }
}

// What was booked is now cut: its plan stays to be cut and printed by, until another is begun.
void CuttingView::keepInSight(const QString& done) {
    const QSignalBlocker quiet{m_pieces};
    m_pieces->clear();
    m_others->hide();
    m_standing->setInk(Ink::settled);
    m_standing->setText(tr("Booked. %1").arg(done));
    m_book->setText(tr("Plan another"));
    m_book->setFocus(Qt::OtherFocusReason);
}

void CuttingView::startAnew() {
    m_note->accept({});
    planSoon();
    m_job->control()->setFocus(Qt::OtherFocusReason);
}

} // namespace headcap::app
