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

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/all_jobs.h"
#include "app/shell/person_menu.h"
#include "app/shell/slip_group.h"
#include "core/values/fold.h"

namespace headcap::app {
namespace {

constexpr int kSide = 15 * kGrid;
constexpr int kTwoColumnsFrom = 960;
constexpr int kRefreshMs = 30'000; // setting times run

// Which groups stand in the left column; the others stand at the right.
bool isLeft(std::size_t group) {
    return group == static_cast<std::size_t>(core::WorklistGroup::needsYou) ||
           group == static_cast<std::size_t>(core::WorklistGroup::waitingForOwner);
}

} // namespace

WorklistView::WorklistView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_summary(new Label(Face::body, Ink::quiet)),
      m_find(new QLineEdit), m_all(makeLink(wordsOf(ActionId::allJobs), tipOf(ActionId::allJobs))),
      m_person(makeLink({}, tipOf(ActionId::choosePerson))), m_faces(new QStackedWidget),
      m_columns(new QBoxLayout(QBoxLayout::LeftToRight)), m_empty(new QWidget),
      m_model(new AllJobsModel(session, this)), m_table(makeTable()) {
    m_faces->addWidget(makeSlips());
    auto* tableFace = new QWidget;
    auto* tableBox = new QVBoxLayout(tableFace);
    tableBox->setContentsMargins(kSide - kGap, 0, kSide - kGap, kSpace);
    tableBox->addWidget(m_table);
    m_faces->addWidget(tableFace);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addLayout(makeHead());
    down->addWidget(m_faces, 1);

    connect(app::addAction(this, ActionId::allJobs), &QAction::triggered, m_all,
            &QPushButton::click);
    connect(m_all, &QPushButton::clicked, this, [this] { setTable(m_faces->currentIndex() == 0); });
    connect(m_person, &QPushButton::clicked, this, [this] {
        if (!popUpPeople(m_session, *m_person)) {
            Q_EMIT goAsked({ViewId::workshop});
        }
    });
    connect(m_find, &QLineEdit::textChanged, this, &WorklistView::filter);
    connect(m_find, &QLineEdit::returnPressed, this, &WorklistView::openFirst);
    const auto showPerson = [this] { m_person->setText(personWords(m_session)); };
    connect(&session, &Session::personChanged, this, showPerson);
    showPerson();
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, [this] {
        if (isVisible()) {
            refresh();
        }
    });
    timer->start(kRefreshMs);
    setFocusPolicy(Qt::StrongFocus);
    setTable(m_session.settings().value(Setting::worklistAsTable).toBool());
}

QPushButton* WorklistView::makeLink(const QString& words, const QString& tip) {
    auto* button = new QPushButton(words, this);
    button->setProperty(kQuietButton, true);
    button->setToolTip(tip);
    return button;
}

QBoxLayout* WorklistView::makeHead() {
    m_find->setProperty(kBoxed, true);
    m_find->setAccessibleName(tr("Find"));
    m_find->setPlaceholderText(tr("Find a book, a step, a lot, a leaf …"));
    m_find->setToolTip(tr("Type anywhere on this page to find; Enter looks everywhere"));
    m_find->setMinimumWidth(240);
    m_find->setMaximumWidth(400);
    m_find->installEventFilter(this);
    auto* newJob = new QPushButton(wordsOf(ActionId::newJob));
    newJob->setToolTip(tipOf(ActionId::newJob));
    connect(newJob, &QPushButton::clicked, this, [this] { Q_EMIT goAsked({ViewId::newJob}); });
    QPushButton* materials = makeLink(wordsOf(ActionId::materials), tipOf(ActionId::materials));
    connect(materials, &QPushButton::clicked, this,
            [this] { Q_EMIT goAsked({ViewId::materials}); });

    auto* above = new QHBoxLayout;
    above->setSpacing(kGap);
    above->addWidget(new Label(Face::title, Ink::ink, title()));
    above->addStretch(1);
    above->addWidget(m_find, 2);
    above->addWidget(newJob);
    auto* below = new QHBoxLayout;
    below->setSpacing(kGrid);
    below->addWidget(m_summary);
    below->addStretch();
    below->addWidget(m_person);
    below->addWidget(materials);
    below->addWidget(m_all);
    auto* head = new QVBoxLayout;
    head->setContentsMargins(kSide, 7 * kGrid, kSide, kGap);
    head->setSpacing(kGrid);
    head->addLayout(above);
    head->addLayout(below);
    return head;
}

QWidget* WorklistView::makeSlips() {
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    for (std::size_t i = 0; i < kSlipGroups; ++i) {
        m_groups[i] = new SlipGroup(groupHeading(i));
        (isLeft(i) ? left : right)->addWidget(m_groups[i]);
        connect(m_groups[i], &SlipGroup::chosen, this, &WorklistView::openJob);
    }
    left->setSpacing(0);
    right->setSpacing(0);
    left->addStretch(1);
    right->addStretch(1);
    m_columns->setSpacing(10 * kGrid);
    m_columns->addLayout(left, 1);
    m_columns->addLayout(right, 1);

    auto* words = new Label(Face::body, Ink::quiet,
                            tr("No book is in the house. Each one that is taken in has a slip "
                               "here, with the next thing to do."));
    words->setRunning();
    auto* first = new QPushButton(tr("Take in the first book"));
    first->setDefault(true);
    connect(first, &QPushButton::clicked, this, [this] { Q_EMIT goAsked({ViewId::newJob}); });
    auto* empty = new QVBoxLayout(m_empty);
    empty->setContentsMargins(0, kSection, 0, 0);
    empty->addWidget(words);
    empty->addSpacing(kSpace);
    empty->addWidget(first, 0, Qt::AlignLeft);

    auto* sheet = new QWidget;
    auto* down = new QVBoxLayout(sheet);
    down->setContentsMargins(kSide, kGap, kSide, kSpace);
    down->addWidget(m_empty);
    down->addLayout(m_columns);
    down->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(sheet);
    return scroll;
}

QTableView* WorklistView::makeTable() {
    auto* table = new QTableView;
    table->setModel(m_model);
    table->setAccessibleName(tr("All jobs"));
    table->setFrameShape(QFrame::NoFrame);
    table->setShowGrid(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(controlHeight(table->fontMetrics()));
    table->horizontalHeader()->setFont(faceFont(Face::small));
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    table->viewport()->setAutoFillBackground(false);
    connect(table, &QTableView::activated, this,
            [this](const QModelIndex& at) { openJob(m_model->line(at.row()).id); });
    connect(table, &QTableView::clicked, this,
            [this](const QModelIndex& at) { openJob(m_model->line(at.row()).id); });
    return table;
}

bool WorklistView::enter(const Destination&) {
    refresh();
    setFocus(Qt::OtherFocusReason);
    for (const SlipGroup* group : m_groups) {
        if (Slip* slip = group->firstShown()) {
            slip->setFocus(Qt::OtherFocusReason);
            break;
        }
    }
    return true;
}

void WorklistView::refresh() {
    Worklist list;
    if (!m_session.guarded([&] { list = worklistOf(m_session.stores(), m_session.clock()); })) {
        return;
    }
    m_inTheHouse = list.inTheHouse;
    m_summary->setText(QStringLiteral("%1 · %2").arg(
        counted(m_inTheHouse, tr("%1 job in the house"), tr("%1 jobs in the house")),
        fullDay(m_session.clock().today())));
    bool isEmpty = true;
    for (std::size_t i = 0; i < kSlipGroups; ++i) {
        isEmpty = isEmpty && list.groups[i].empty();
        m_groups[i]->show(std::move(list.groups[i]));
    }
    m_empty->setVisible(isEmpty);
    if (m_faces->currentIndex() == 1) {
        m_model->reload();
    }
    filter();
}

void WorklistView::setTable(bool isTable) {
    m_session.settings().set(Setting::worklistAsTable, isTable);
    if (isTable) {
        m_model->reload();
    }
    m_faces->setCurrentIndex(isTable ? 1 : 0);
    m_all->setText(isTable ? tr("What needs you") : wordsOf(ActionId::allJobs));
}

void WorklistView::filter() {
    const std::string asked = core::foldForSearch(toCore(m_find->text().trimmed()));
    for (SlipGroup* group : m_groups) {
        group->setFilter(asked);
    }
}

void WorklistView::openFirst() {
    const QString asked = m_find->text().trimmed();
    if (const auto line = m_session.stores().jobs.numbered(toCore(asked))) {
        openJob(line->id);
    } else if (!asked.isEmpty()) {
        Q_EMIT goAsked({.view = ViewId::find, .words = asked});
    }
}

void WorklistView::openJob(const core::Id<core::Job>& job) {
    m_find->clear();
    Q_EMIT goAsked({.view = ViewId::job, .job = job});
}

bool WorklistView::back() {
    if (!m_find->text().isEmpty()) {
        m_find->clear();
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
        m_find->setFocus(Qt::OtherFocusReason);
        m_find->setText(m_find->text() + text);
        return;
    }
    View::keyPressEvent(event);
}

void WorklistView::resizeEvent(QResizeEvent* event) {
    View::resizeEvent(event);
    const bool isTwo = width() >= kTwoColumnsFrom;
    m_columns->setDirection(isTwo ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_columns->setSpacing(isTwo ? 10 * kGrid : 0);
}

bool WorklistView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
        for (const SlipGroup* group : m_groups) {
            if (Slip* slip = group->firstShown()) {
                slip->setFocus(Qt::TabFocusReason);
                return true;
            }
        }
    }
    return View::eventFilter(watched, event);
}

} // namespace headcap::app
