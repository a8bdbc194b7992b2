// The parts of a job's view laid out, and wired to one another.
#include <QAction>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/session/actions.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_head.h"
#include "app/shell/job_view.h"
#include "app/shell/margin.h"
#include "app/shell/sewing_line.h"
#include "app/shell/state_bar.h"

namespace headcap::app {
namespace {

constexpr auto kPages = core::EnumNames<core::Page>::kNames.size();

} // namespace

void JobView::layOut() {
    m_middle = new QVBoxLayout;
    m_middle->setSpacing(0);
    m_middle->addWidget(m_pages, 1);
    auto* beside = new QHBoxLayout;
    beside->setSpacing(0);
    beside->addLayout(m_middle, 1);
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

QBoxLayout* JobView::noticePlace() {
    return m_middle;
}

void JobView::addKeys() {
    const auto on = [this](ActionId id, auto work) {
        connect(app::addAction(this, id), &QAction::triggered, this, work);
    };
    // The pages and the ways to them are told in one order.
    static_assert(static_cast<std::size_t>(ActionId::toReport) -
                          static_cast<std::size_t>(ActionId::toBook) ==
                      static_cast<std::size_t>(core::Page::report) &&
                  static_cast<std::size_t>(core::Page::report) + 1 == kPages);
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
    // The margin is made anew on the way: the note that was clicked comes to its end first.
    connect(
        m_margin, &Margin::pointChosen, this,
        [this](const core::RecordRef& record, core::Page page) { goTo(record, page); },
        Qt::QueuedConnection);
    connect(m_margin, &Margin::foldAsked, this, [this] {
        m_isFoldChosen = true;
        foldMargin(!m_margin->isFolded());
    });
    m_bench->setReader(
        [this](const QString& line) { return m_reader.read(line, m_file ? &*m_file : nullptr); });
    m_bench->setTaker([this](const QString& line, const QStringList& answers) {
        return m_file && m_reader.log(line, *m_file, answers);
    });
    m_bench->setDoubter(
        [this](const QString& line) { return m_reader.doubt(line, m_file ? &*m_file : nullptr); });
    m_bench->setAsker([this](const QString& line, const QStringList& answers) {
        return m_file ? m_reader.questions(line, *m_file).value(answers.size()) : QString{};
    });
    m_bench->setCompleter([this](const QString& upToCursor) {
        return m_file ? m_reader.offers(upToCursor, *m_file) : std::vector<LineOffer>{};
    });
    m_bench->setScanner([this](const QString& before, const QString& word, const QString& after) {
        return m_reader.scanned(before, word, after);
    });
    connect(&m_session, &Session::personChanged, m_bench, &BenchLine::readAgain);
}

} // namespace headcap::app
