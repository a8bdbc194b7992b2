#include "app/shell/worklist_view.h"

#include <QAction>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/all_jobs.h"
#include "app/shell/slip_group.h"
#include "app/shell/slip_sheet.h"
#include "app/shell/worklist_head.h"

namespace headcap::app {
namespace {

constexpr int kRefreshMs = 30'000; // setting times run

} // namespace

WorklistView::WorklistView(Session& session, QWidget* parent)
    : View(parent), m_session(session),
      m_ahead(std::async(std::launch::async,
                         [stores = session.stores(), &clock = session.clock()] {
                             const auto version = stores.records.dataVersion();
                             return Ahead{version, worklistOf(stores, clock)};
                         })),
      m_head(new WorklistHead(session)), m_faces(new QStackedWidget), m_slips(new SlipSheet),
      m_model(new AllJobsModel(session, this)) {
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_slips);
    m_faces->addWidget(scroll);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_head);
    down->addWidget(m_faces, 1);
    setFocusPolicy(Qt::StrongFocus);
    connectParts();
    setTable(m_session.settings().value(Setting::worklistAsTable).toBool());
}

QTableView& WorklistView::table() {
    if (m_table != nullptr) {
        return *m_table;
    }
    m_table = new QTableView;
    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("All jobs"));
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(controlHeight(m_table->fontMetrics()));
    m_table->horizontalHeader()->setFont(faceFont(Face::small));
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    m_table->viewport()->setAutoFillBackground(false);
    auto* face = new QWidget;
    auto* box = new QVBoxLayout(face);
    box->setContentsMargins(13 * kGrid, 0, 13 * kGrid, kSpace); // its words stand on the grid
    box->addWidget(m_table);
    m_faces->addWidget(face);
    const auto openRow = [this](const QModelIndex& at) { openJob(m_model->line(at.row()).id); };
    connect(m_table, &QTableView::activated, this, openRow);
    connect(m_table, &QTableView::clicked, this, openRow);
    return *m_table;
}

void WorklistView::connectParts() {
    connect(app::addAction(this, ActionId::allJobs), &QAction::triggered, m_head,
            &WorklistHead::tableTurned);
    connect(m_head, &WorklistHead::tableTurned, this,
            [this] { setTable(m_faces->currentIndex() == 0); });
    connect(m_head, &WorklistHead::goAsked, this, &View::goAsked);
    connect(m_head, &WorklistHead::downAsked, this, [this] { m_slips->focusFirst(); });
    connect(&find(), &QLineEdit::textChanged, m_slips, &SlipSheet::setFilter);
    connect(&find(), &QLineEdit::returnPressed, this, &WorklistView::openFound);
    connect(m_slips, &SlipSheet::chosen, this, &WorklistView::openJob);
    connect(m_slips, &SlipSheet::newJobAsked, this, [this] { Q_EMIT goAsked({ViewId::newJob}); });
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, [this] {
        if (isVisible()) {
            refresh();
        }
    });
    timer->start(kRefreshMs);
}

QLineEdit& WorklistView::find() {
    return m_head->find();
}

const std::array<SlipGroup*, kSlipGroups>& WorklistView::groups() const {
    return m_slips->groups();
}

bool WorklistView::enter(const Destination&) {
    refresh();
    setFocus(Qt::OtherFocusReason);
    m_slips->focusFirst();
    return true;
}

Worklist WorklistView::read() {
    if (m_ahead.valid()) {
        Ahead ahead = m_ahead.get();
        if (ahead.version == m_session.records().dataVersion()) {
            return std::move(ahead.list);
        }
    }
    return worklistOf(m_session.stores(), m_session.clock());
}

void WorklistView::refresh() {
    Worklist list;
    if (!m_session.guarded([&] { list = read(); })) {
        return;
    }
    m_head->setInTheHouse(list.inTheHouse);
    m_head->setBackup(list.backup);
    m_slips->show(std::move(list));
    m_slips->setFilter(find().text());
    if (m_faces->currentIndex() == 1) {
        m_model->reload();
        m_head->setTable(m_model->total());
    }
}

void WorklistView::setTable(bool isTable) {
    m_session.settings().set(Setting::worklistAsTable, isTable);
    if (isTable) {
        m_model->reload();
        m_faces->setCurrentWidget(table().parentWidget());
    } else {
        m_faces->setCurrentIndex(0);
    }
    m_head->setTable(isTable ? std::optional{m_model->total()} : std::nullopt);
}

void WorklistView::openFound() {
    const QString asked = find().text().trimmed();
    const auto only = m_faces->currentIndex() == 0 ? m_slips->onlyOne() : std::nullopt;
    if (only && !asked.isEmpty()) {
        openJob(*only);
        return;
    }
    std::optional<core::JobLine> line;
    m_session.guarded([&] { line = m_session.stores().jobs.numbered(toCore(asked)); });
    if (line) {
        openJob(line->id);
    } else if (!asked.isEmpty()) {
        Q_EMIT goAsked({.view = ViewId::find, .words = asked});
    }
}

void WorklistView::openJob(const core::Id<core::Job>& job) {
    find().clear();
    Q_EMIT goAsked({.view = ViewId::job, .job = job});
}

QWidget* WorklistView::personAnchor() {
    return &m_head->person();
}

bool WorklistView::back() {
    if (!find().text().isEmpty()) {
        find().clear();
        return true;
    }
    if (m_faces->currentIndex() == 1) {
        setTable(false);
        return true;
    }
    return false;
}

void WorklistView::keyPressEvent(QKeyEvent* event) {
    const QString text = event->text();
    const bool isPlain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (isPlain && !text.isEmpty() && text.at(0).isPrint()) {
        find().setFocus(Qt::OtherFocusReason);
        find().setText(find().text() + text);
        return;
    }
    View::keyPressEvent(event);
}

} // namespace headcap::app
