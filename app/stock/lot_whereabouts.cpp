#include "app/stock/lot_whereabouts.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/drawing/cutting_drawing.h"
#include "app/form/ruled_table.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "app/stock/fit_height.h"
#include "app/stock/lot_story.h"
#include "core/treatment/bench_log.h"

namespace headcap::app {
namespace {

constexpr int kMostHeight = 420;

QString tr(const char* text) {
    return LotWhereabouts::tr(text);
}

QString numbersOf(const std::vector<const core::Lot*>& lots) {
    QStringList numbers;
    for (const core::Lot* lot : lots) {
        numbers << fromCore(lot->number);
    }
    return numbers.join(QStringLiteral(", "));
}

TableCell throughOf(const core::LotTrace& trace, const core::Lot& used) {
    const auto way = trace.through(used);
    return {way.empty() ? QString{} : tr("through %1").arg(numbersOf(way))};
}

TableRow headingOf(const core::TracedJob& job) {
    QString title = fromCore(job.job->number);
    if (job.item != nullptr) {
        title += QStringLiteral(" · ") + fromCore(core::headingOf(*job.item));
    }
    QString owner = job.owner == nullptr ? QString{} : fromCore(job.owner->name);
    if (job.ownerNow != nullptr) {
        owner = tr("%1, now of %2").arg(owner, fromCore(job.ownerNow->name));
    }
    return {.title = {title, Face::heading, Ink::ink},
            .below = {owner.isEmpty() ? QString{} : tr("to tell: %1").arg(owner)}};
}

QString nameOf(const core::LotTrace& trace, const core::Step& step) {
    const std::string name = trace.techniques.nameOf(step.technique);
    return fromCore(name.empty() ? step.description : name);
}

const std::string& placeOf(const core::TracedUse& one) {
    return one.use->place.empty() ? one.step->place : one.use->place;
}

TableRow rowOf(const core::LotTrace& trace, const core::TracedUse& one, const core::Clock& clock) {
    return {
        .id = one.use->id.uuid(),
        .title = {nameOf(trace, *one.step), Face::body, Ink::ink},
        .mark = shortDay(clock.dayOf(one.step->at), clock.today()),
        .middle = {{fromCore(placeOf(one)), Face::formula, Ink::ink}, throughOf(trace, *one.lot)},
        .right = {one.use->amount ? fromCore(core::toText(*one.use->amount)) : QString{},
                  Face::small, Ink::ink},
        .below = {one.use->stays ? QString{} : tr("nothing of it stays")}};
}

TableRow rowOf(const core::LotTrace& trace, const core::TracedLeaf& one) {
    return {.id = one.leaf->id.uuid(),
            .title = {one.isPrintedOn ? tr("Facsimile printed on it") : tr("Facsimile held by it"),
                      Face::body, Ink::ink},
            .middle = {{fromCore(one.leaf->place), Face::formula, Ink::ink},
                       throughOf(trace, *one.lot)}};
}

TableRow rowOf(const core::LotTrace& trace, const core::TracedPiece& one,
               const core::Clock& clock) {
    const core::CutPart& piece = *one.piece;
    return {.id = piece.id.uuid(),
            .title = {tr("Cut: %1").arg(fromCore(piece.name)), Face::body, Ink::ink},
            .mark = shortDay(clock.dayOf(one.cutting->at), clock.today()),
            .middle = {{piece.width && piece.height
                            ? tr("%1 mm").arg(sizeWords(*piece.width, *piece.height))
                            : QString{}},
                       throughOf(trace, *one.lot)}};
}

} // namespace

LotWhereabouts::LotWhereabouts(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_heading(new Label(Face::heading)),
      m_count(new Label(Face::small, Ink::quiet)), m_made(new Label(Face::body)),
      m_none(new Label(Face::body, Ink::quiet, tr("It has gone into no book yet."))),
      m_table(new RuledTable(tr("Where the lot went"),
                             {.mark = 88, .right = 88, .title = 5, .middle = {3, 4}})) {
    m_made->setRunning();
    auto* head = new QHBoxLayout;
    head->addWidget(m_heading);
    head->addStretch(1);
    head->addWidget(m_count);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addLayout(head);
    down->addWidget(new HairRule);
    down->addSpacing(kGap);
    down->addWidget(m_made);
    down->addWidget(m_none);
    down->addWidget(m_table);
    connect(m_table, &RuledTable::opened, this, &LotWhereabouts::open);
    connect(m_table, &QListView::clicked, this, &LotWhereabouts::open);
}

void LotWhereabouts::show(const LotStory* story) {
    const core::LotTrace* trace = story != nullptr && story->trace ? &*story->trace : nullptr;
    setVisible(trace != nullptr);
    m_places.clear();
    m_uses.clear();
    std::vector<TableRow> rows;
    if (trace != nullptr) {
        m_heading->setText(tr("Where %1 went").arg(fromCore(trace->lot->number)));
        m_made->setText(tr("Made from it: %1").arg(numbersOf(trace->lots)));
        m_made->setVisible(!trace->lots.empty());
        for (const core::TracedJob& job : trace->jobs) {
            addJob(*trace, job, rows);
        }
        const QString books =
            counted(static_cast<int>(trace->jobs.size()), tr("in %1 book"), tr("in %1 books"));
        m_count->setText(story->whereabouts.hasMoreUses
                             ? tr("%1 by its newest %2 uses; headcap trace lists them all")
                                   .arg(books)
                                   .arg(story->whereabouts.uses.size())
                             : books);
    }
    m_count->setVisible(!rows.empty());
    m_none->setVisible(rows.empty());
    m_table->setVisible(!rows.empty());
    m_table->show(std::move(rows));
    fitHeight(*m_table, kMostHeight);
}

void LotWhereabouts::addJob(const core::LotTrace& trace, const core::TracedJob& job,
                            std::vector<TableRow>& rows) {
    const auto add = [&](TableRow row, core::Page page,
                         const std::optional<core::RecordRef>& record) {
        m_places[*row.id] = {
            .view = ViewId::job, .job = job.job->id, .page = page, .record = record};
        rows.push_back(std::move(row));
    };
    rows.push_back(headingOf(job));
    for (const core::TracedUse& one : job.uses) {
        add(rowOf(trace, one, m_session.clock()), core::Page::bench, core::refOf(one.step->id));
        m_uses[one.use->id] =
            dotted({fromCore(job.job->number), nameOf(trace, *one.step), fromCore(placeOf(one))});
    }
    for (const core::TracedLeaf& one : job.leaves) {
        add(rowOf(trace, one), core::Page::collation, core::refOf(one.leaf->id));
    }
    for (const core::TracedPiece& one : job.pieces) {
        add(rowOf(trace, one, m_session.clock()), core::Page::materials, std::nullopt);
    }
}

void LotWhereabouts::open() {
    const auto id = m_table->current();
    if (const auto place = id ? m_places.find(*id) : m_places.end(); place != m_places.end()) {
        Q_EMIT goAsked(place->second);
    }
}

} // namespace headcap::app
