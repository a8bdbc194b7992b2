#include "app/shell/job_view.h"

#include <QKeyEvent>
#include <QStackedWidget>

#include "app/pages/page_table.h"
#include "app/session/words.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_head.h"
#include "app/shell/margin.h"
#include "app/shell/sewing_line.h"
#include "app/shell/state_bar.h"
#include "core/audit/audit.h"
#include "core/custody/page_state.h"

namespace headcap::app {
namespace {

constexpr int kMarginFrom = 1200; // narrower, it is folded

} // namespace

JobView::JobView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_reader(session), m_head(new JobHead(this)),
      m_state(new StateBar(session, this)), m_thread(new SewingLine(this)),
      m_pages(new QStackedWidget(this)), m_margin(new Margin(session, this)),
      m_bench(new BenchLine(this)) {
    layOut();
    addKeys();
    connectParts();
}

bool JobView::enter(const Destination& destination) {
    if (!destination.job) {
        return false;
    }
    const bool isOther = !m_file || m_file->job.id != *destination.job;
    if (read(*destination.job) != Found::read && isOther) {
        return false;
    }
    if (isOther) {
        m_page = destination.page.value_or(core::Page::book);
        m_state->hide();
    }
    showAround();
    const core::Page page = destination.page.value_or(m_page);
    if (destination.record) {
        goTo(*destination.record, page);
    } else {
        turnTo(page);
    }
    return true;
}

bool JobView::leave() {
    JobPage* page = currentPage();
    return !m_file || page == nullptr || page->leave();
}

void JobView::refresh() {
    if (!m_file) {
        return;
    }
    const Found found = read(m_file->job.id);
    if (found == Found::gone) {
        leaveForGood();
    } else if (found == Found::read) {
        showAround();
        m_margin->show(*m_file, m_points, m_page);
        loadPage();
    }
}

// Its taking in was undone, here or elsewhere: there is nothing left to say about it.
void JobView::leaveForGood() {
    const QString number = fromCore(m_file->job.number);
    m_file.reset();
    m_session.say({Notice::Kind::refused,
                   tr("Job %1 is no longer there: its taking in was undone.").arg(number)});
    QMetaObject::invokeMethod(
        this, [this] { Q_EMIT goAsked({ViewId::worklist}); }, Qt::QueuedConnection);
}

JobView::Found JobView::read(const core::Id<core::Job>& job) {
    std::optional<core::JobFile> fresh;
    if (!m_session.guarded([&] { fresh = core::loadJobFile(m_session.records(), job); })) {
        return Found::notNow;
    }
    if (!fresh) {
        return Found::gone;
    }
    m_file = std::move(fresh);
    m_points = core::audit(*m_file, m_session.clock());
    m_isStale.fill(true);
    return Found::read;
}

// What stands around the page whichever it is.
void JobView::showAround() {
    m_head->show(*m_file, m_session.clock().today());
    m_thread->show(core::pageStates(*m_file, m_points));
    m_reader.refresh();
    m_bench->readAgain();
}

JobPage* JobView::pageOf(core::Page page) {
    auto& made = m_made[static_cast<std::size_t>(page)];
    if (made == nullptr) {
        for (const PageEntry& entry : pageTable()) {
            if (entry.page == page) {
                made = entry.make(m_session);
                m_pages->addWidget(made);
                connect(made, &JobPage::recordAsked, this, &JobView::goTo);
                connect(made, &JobPage::pageAsked, this, &JobView::turnTo);
            }
        }
    }
    return made;
}

JobPage* JobView::currentPage() const {
    return m_made[static_cast<std::size_t>(m_page)];
}

void JobView::loadPage() {
    JobPage* page = pageOf(m_page);
    auto& isStale = m_isStale[static_cast<std::size_t>(m_page)];
    if (page != nullptr && m_file && isStale) {
        isStale = false;
        page->load(*m_file);
    }
}

bool JobView::turnTo(core::Page page) {
    if (!m_file) {
        return false;
    }
    JobPage* next = pageOf(page);
    if (next == nullptr || (page != m_page && !leave())) {
        m_thread->setCurrent(m_page);
        return false;
    }
    m_page = page;
    loadPage();
    m_pages->setCurrentWidget(next);
    m_thread->setCurrent(page);
    m_margin->show(*m_file, m_points, m_page);
    next->enter();
    return true;
}

bool JobView::goTo(const core::RecordRef& record, core::Page page) {
    if (!turnTo(page)) {
        return false;
    }
    if (currentPage()->goTo(record)) {
        return true;
    }
    for (const PageEntry& entry : pageTable()) {
        if (entry.page == page) {
            continue;
        }
        JobPage* other = pageOf(entry.page);
        if (m_isStale[static_cast<std::size_t>(entry.page)]) {
            m_isStale[static_cast<std::size_t>(entry.page)] = false;
            other->load(*m_file);
        }
        if (other->goTo(record) && turnTo(entry.page)) {
            return other->goTo(record);
        }
    }
    return false;
}

bool JobView::back() {
    if (m_state->isVisible()) {
        m_state->hide();
        return true;
    }
    JobPage* page = currentPage();
    return page != nullptr && page->back();
}

bool JobView::print() {
    JobPage* page = currentPage();
    return page != nullptr && page->print();
}

QString JobView::title() const {
    return m_file ? QStringLiteral("%1 %2").arg(fromCore(m_file->job.number),
                                                fromCore(core::headingOf(m_file->item)))
                  : QString{};
}

void JobView::foldMargin(bool isFolded) {
    m_margin->setFolded(isFolded);
    m_session.settings().set(Setting::marginFolded, isFolded);
}

// At the bench, what is typed or scanned where no field takes it goes into the line.
void JobView::keyPressEvent(QKeyEvent* event) {
    const QString text = event->text();
    const bool isPlain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
    const bool isWord = !text.isEmpty() && (text.front().isLetterOrNumber() || text == u'#');
    if (m_page == core::Page::bench && isPlain && isWord) {
        m_bench->typed(*event);
        return;
    }
    View::keyPressEvent(event);
}

void JobView::resizeEvent(QResizeEvent* event) {
    View::resizeEvent(event);
    if (!m_isFoldChosen) {
        m_margin->setFolded(width() < kMarginFrom ||
                            m_session.settings().value(Setting::marginFolded).toBool());
    }
}

} // namespace headcap::app
