#include "app/shell/find_view.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/form/ruled_list.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "app/session/words.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {
namespace {

constexpr std::size_t kMostShown = 200;

QString plain(core::RecordKind kind) {
    QString said = words(kind);
    return said.startsWith(QLatin1String("the ")) ? said.mid(4) : said;
}

// The newest job about a book, its works and hazards, or an owner; nothing for what is of no job.
std::optional<core::Id<core::Job>> jobAbout(const core::RecordStore& store,
                                            const core::RecordRef& ref) {
    const auto found = store.find(ref);
    if (!found) {
        return std::nullopt;
    }
    std::vector<core::Stored<core::Job>> jobs;
    const auto ofItem = [&](core::Id<core::Item> id) {
        jobs = core::allWith(store, &core::Job::item, id);
        const auto item = core::find(store, id);
        if (jobs.empty() && item && item->record.partOf) {
            jobs = core::allWith(store, &core::Job::item, *item->record.partOf);
        }
    };
    if (const auto* item = std::get_if<core::Item>(&found->record)) {
        ofItem(item->id);
    } else if (const auto* work = std::get_if<core::Work>(&found->record)) {
        ofItem(work->item);
    } else if (const auto* hazard = std::get_if<core::Hazard>(&found->record)) {
        ofItem(hazard->item);
    } else if (const auto* owner = std::get_if<core::Owner>(&found->record)) {
        jobs = core::allWith(store, &core::Job::owner, owner->id);
    }
    return jobs.empty() ? std::nullopt : std::optional{jobs.back().record.id};
}

// What is of no job itself names the job that Enter goes to; a lot, its material and what is left.
void sayWhereItIs(core::SearchHit& hit, const core::Stores& stores) {
    if (!hit.job) {
        hit.job = jobAbout(stores.records, hit.record);
        if (hit.job) {
            if (const auto job = core::find(stores.records, *hit.job)) {
                hit.jobNumber = job->record.number;
                const auto item = core::find(stores.records, job->record.item);
                hit.item = hit.item.empty() && item ? core::headingOf(item->record) : hit.item;
            }
        }
    }
    if (hit.record.kind == core::RecordKind::lot && hit.item.empty()) {
        const auto shelf = core::shelfInBrief(stores.records);
        const core::Id<core::Lot> id{hit.record.id};
        const core::Lot* lot = shelf->lot(id);
        const core::Material* kind = lot == nullptr ? nullptr : shelf->material(lot->material);
        hit.item = kind == nullptr ? std::string{} : kind->name;
        if (const auto left = shelf->balanceOf(id)) {
            hit.place = core::toText(*left) + " left";
        }
    }
}

} // namespace

FindView::FindView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_words(new QLineEdit),
      m_count(new Label(Face::small, Ink::quiet)), m_list(new RuledList(tr("Found"))) {
    m_words->setProperty(kBoxed, true);
    m_words->setAccessibleName(tr("Find"));
    m_words->setPlaceholderText(tr("A book, a step, a lot, a leaf …"));
    m_words->setMaximumWidth(160 * kGrid);
    m_words->installEventFilter(this);
    m_list->setMarkWidth(22 * kGrid);
    connect(m_words, &QLineEdit::textChanged, this, &FindView::find);
    connect(m_words, &QLineEdit::returnPressed, this, &FindView::open);
    connect(m_list, &RuledList::opened, this, &FindView::open);

    auto* sheet = new QWidget;
    auto* rows = new QVBoxLayout(sheet);
    rows->setContentsMargins(15 * kGrid, 0, 15 * kGrid, kSection);
    rows->addWidget(m_list);
    rows->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(sheet);

    auto* head = new QVBoxLayout;
    head->setContentsMargins(15 * kGrid, 8 * kGrid, 15 * kGrid, kGap);
    head->addWidget(new Label(Face::title, Ink::ink, tr("Find")));
    head->addSpacing(kGap);
    head->addWidget(m_words);
    head->addWidget(m_count);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addLayout(head);
    down->addWidget(scroll, 1);
}

bool FindView::enter(const Destination& destination) {
    if (!destination.words.isEmpty()) {
        m_words->setText(destination.words);
    }
    find();
    m_words->setFocus(Qt::OtherFocusReason);
    m_words->selectAll();
    return true;
}

void FindView::refresh() {
    find();
}

// Looked for elsewhere: a common word of many years must not hold up the typing.
void FindView::find() {
    m_isOpening = false;
    const std::string asked = toCore(m_words->text().trimmed());
    m_aside.ask(
        [&stores = m_session.stores(), asked] {
            auto answer =
                asked.empty() ? core::SearchAnswer{} : stores.search.find(asked, kMostShown);
            for (core::SearchHit& hit : answer.hits) {
                sayWhereItIs(hit, stores);
            }
            return answer;
        },
        [this](core::SearchAnswer answer) {
            show(std::move(answer));
            if (m_isOpening) {
                open();
            }
        });
}

void FindView::show(core::SearchAnswer answer) {
    const QString asked = m_words->text().trimmed();
    const auto total = static_cast<int>(answer.total);
    m_hits = std::move(answer.hits);
    std::vector<RuledModel::Row> rows;
    for (const core::SearchHit& hit : m_hits) {
        const QString where =
            hit.item.empty()
                ? plain(hit.record.kind)
                : QStringLiteral("%1 · %2").arg(fromCore(hit.item), plain(hit.record.kind));
        rows.push_back({hit.record.id, RowWords{.mark = fromCore(hit.jobNumber),
                                                .title = fromCore(hit.text),
                                                .detail = where,
                                                .right = fromCore(hit.place)}});
    }
    m_list->show(std::move(rows));
    if (asked.isEmpty()) {
        m_count->setText(tr("Every word must be there; the last may be a beginning. Accents, long "
                            "s and ligatures need not be typed."));
    } else if (total == 0) {
        m_count->setText(tr("Nothing holds all of these words. Try fewer, or a beginning."));
    } else {
        m_count->setText(answer.totalCapped ? tr("More than %1 found").arg(total)
                                            : tr("%1 found").arg(total));
    }
}

// What is being looked for is opened when it is found.
void FindView::open() {
    m_isOpening = m_aside.isReading();
    if (m_isOpening || m_hits.empty()) {
        return;
    }
    const auto current = m_list->current();
    const core::SearchHit* hit = &m_hits.front();
    for (const core::SearchHit& one : m_hits) {
        if (current && one.record.id == *current) {
            hit = &one;
        }
    }
    auto job = hit->job;
    if (!job && !m_session.guarded([&] { job = jobAbout(m_session.records(), hit->record); })) {
        return;
    }
    if (job) {
        Q_EMIT goAsked({.view = ViewId::job,
                        .job = job,
                        .page = core::pageOf(hit->record.kind),
                        .record = hit->record});
    } else {
        Q_EMIT goAsked({.view = ViewId::materials, .record = hit->record});
    }
}

bool FindView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* press = static_cast<QKeyEvent*>(event);
        if (press->key() == Qt::Key_Down && !m_hits.empty()) {
            m_list->setFocus(Qt::TabFocusReason);
            return true;
        }
        // The key of a job's page, where no job is open, is no word to look for.
        if (press->modifiers() == Qt::AltModifier && press->key() >= Qt::Key_0 &&
            press->key() <= Qt::Key_9) {
            return true;
        }
    }
    return View::eventFilter(watched, event);
}

} // namespace headcap::app
