#include "app/shell/job_view.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/page_table.h"
#include "app/session/actions.h"
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
constexpr auto kPages = core::EnumNames<core::Page>::kNames.size();

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

void JobView::layOut() {
    auto* middle = new QVBoxLayout;
    middle->setSpacing(0);
    middle->addWidget(m_pages, 1);
    auto* beside = new QHBoxLayout;
    beside->setSpacing(0);
    beside->addLayout(middle, 1);
    beside->addWidget(m_margin);
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    right->addLayout(beside, 1);
    right->addWidget(m_bench);
    auto* across = new QHBoxLayout;
    across->setSpacing(0);
    across->addWidget(m_thread, 0, Qt::AlignTop);
    across->addLayout(right, 1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_head);
    down->addWidget(m_state);
    down->addSpacing(kSpace);
    down->addLayout(across, 1);
}

void JobView::addKeys() {
    const auto on = [this](ActionId id, auto work) {
        connect(app::addAction(this, id), &QAction::triggered, this, work);
    };
    for (std::size_t i = 0; i < kPages; ++i) {
        on(static_cast<ActionId>(static_cast<std::size_t>(ActionId::toBook) + i),
           [this, i] { turnTo(static_cast<core::Page>(i)); });
    }
    const auto turnBy = [this](std::size_t by) {
        turnTo(static_cast<core::Page>((static_cast<std::size_t>(m_page) + by) % kPages));
    };
    on(ActionId::nextPage, [turnBy] { turnBy(1); });
    on(ActionId::previousPage, [turnBy] { turnBy(kPages - 1); });
    on(ActionId::toBenchLine, [this] { m_bench->line().setFocus(Qt::ShortcutFocusReason); });
    on(ActionId::toMargin, [this] { m_margin->focusFirst(); });
    on(ActionId::foldMargin, [this] {
        m_isFoldChosen = true;
        foldMargin(!m_margin->isFolded());
    });
    on(ActionId::changeState, [this] {
        if (m_file && leave()) {
            m_state->ask(m_file->job, m_file->revisionOf(core::refOf(m_file->job.id)));
        }
    });
}

void JobView::connectParts() {
    connect(m_thread, &SewingLine::chosen, this, [this](core::Page page) { turnTo(page); });
    connect(m_head, &JobHead::stateAsked, this, [this] {
        if (m_file && leave()) {
            m_state->ask(m_file->job, m_file->revisionOf(core::refOf(m_file->job.id)));
        }
    });
    connect(m_head, &JobHead::backAsked, this, [this] { Q_EMIT goAsked({ViewId::worklist}); });
    connect(m_margin, &Margin::pointChosen, this,
            [this](const core::RecordRef& record, core::Page page) { goTo(record, page); });
    connect(m_margin, &Margin::foldAsked, this, [this] {
        m_isFoldChosen = true;
        foldMargin(!m_margin->isFolded());
    });
    m_bench->setReader(
        [this](const QString& line) { return m_reader.read(line, m_file ? &*m_file : nullptr); });
    m_bench->setTaker([this](const QString& line, const QString& reason) {
        return m_file && m_reader.log(line, *m_file, reason);
    });
    m_bench->setAsker([this](const QString& line) {
        return m_file ? m_reader.question(line, *m_file) : QString{};
    });
    m_bench->setCompleter([this](const QString& upToCursor) {
        return m_file ? m_reader.offers(upToCursor, *m_file) : std::vector<LineOffer>{};
    });
    m_bench->setScanner([this](const QString& before, const QString& word, const QString& after) {
        return m_reader.scanned(before, word, after);
    });
    connect(&m_session, &Session::personChanged, m_bench, &BenchLine::readAgain);
}

bool JobView::enter(const Destination& destination) {
    if (!destination.job) {
        return false;
    }
    if (!m_file || m_file->job.id != *destination.job) {
        std::optional<core::JobFile> file;
        if (!m_session.guarded(
                [&] { file = core::loadJobFile(m_session.records(), *destination.job); }) ||
            !file) {
            return false;
        }
        m_file = std::move(file);
        m_page = core::Page::book;
        m_state->hide();
    }
    refresh();
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
    return page == nullptr || page->leave();
}

void JobView::refresh() {
    if (!m_file) {
        return;
    }
    std::optional<core::JobFile> fresh;
    m_session.guarded([&] { fresh = core::loadJobFile(m_session.records(), m_file->job.id); });
    if (!fresh) {
        return; // gone, or not to be read just now: a notice has said so
    }
    m_file = std::move(fresh);
    m_points = core::audit(*m_file, m_session.clock());
    m_head->show(*m_file, m_session.clock().today());
    m_thread->show(core::pageStates(*m_file, m_points));
    m_margin->show(*m_file, m_points, m_page);
    m_reader.refresh();
    m_bench->readAgain();
    m_isStale.fill(true);
    loadPage();
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
    return false;
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
