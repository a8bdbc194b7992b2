#include "app/photo/contact_sheet.h"

#include <QAction>
#include <QApplication>
#include <QBoxLayout>
#include <QDropEvent>
#include <QKeyEvent>
#include <QMimeData>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/photo/photo_grid.h"
#include "app/session/actions.h"
#include "app/session/words.h"

namespace headcap::app::photo {
namespace {

constexpr std::array<const char*, ContactSheet::kRoles> kHeadings{
    QT_TRANSLATE_NOOP("photo", "Before"), QT_TRANSLATE_NOOP("photo", "During"),
    QT_TRANSLATE_NOOP("photo", "After"), QT_TRANSLATE_NOOP("photo", "Details")};

constexpr std::array<const char*, ContactSheet::kRoles> kBelongs{
    QT_TRANSLATE_NOOP("photo", "The book as it came, before anything is done: both boards, spine, "
                               "edges, title page, every loss."),
    QT_TRANSLATE_NOOP("photo", "What is seen only while it is open: the spine without its linings, "
                               "the sewing, old repairs."),
    QT_TRANSLATE_NOOP("photo", "The same views as before, when the work is done."),
    QT_TRANSLATE_NOOP("photo", "Close views: a watermark, a repair, a facsimile's marking.")};

QString say(const char* text) {
    return QCoreApplication::translate("photo", text);
}

} // namespace

ContactSheet::ContactSheet(print::PhotoLoader& loader, QWidget* form, QWidget* parent)
    : QWidget(parent), m_form(form), m_body(new QVBoxLayout(this)) {
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(kGap);
    for (std::size_t i = 0; i < kRoles; ++i) {
        m_groups[i] = buildGroup(static_cast<core::PhotoRole>(i), loader);
        m_body->addWidget(m_groups[i].area);
        connectGroup(i);
    }
    m_body->addWidget(m_form);
    m_form->hide();
}

ContactSheet::Group ContactSheet::buildGroup(core::PhotoRole role, print::PhotoLoader& loader) {
    const auto at = static_cast<std::size_t>(role);
    const QString heading = say(kHeadings[at]);
    Group group{new QWidget, new PhotoGrid(loader, heading), new Label(Face::small, Ink::quiet),
                new Label(Face::small, Ink::quiet, say(kBelongs[at]))};
    group.empty->setRunning();
    auto* head = new QHBoxLayout;
    head->setSpacing(kSpace);
    head->addWidget(new Label(Face::heading, Ink::ink, heading));
    head->addWidget(group.count, 1);
    auto* box = new QVBoxLayout(group.area);
    box->setContentsMargins(0, kSpace, 0, 0);
    box->setSpacing(kGrid);
    box->addLayout(head);
    box->addWidget(new HairRule);
    box->addSpacing(kGrid);
    box->addWidget(group.empty);
    box->addWidget(group.grid);
    group.area->setAcceptDrops(true);
    group.area->installEventFilter(this);
    // The list takes drags for itself otherwise.
    group.grid->setAcceptDrops(false);
    group.grid->viewport()->setAcceptDrops(false);
    return group;
}

void ContactSheet::connectGroup(std::size_t at) {
    PhotoGrid* grid = m_groups[at].grid;
    connect(grid, &PhotoGrid::opened, this, &ContactSheet::opened);
    connect(grid, &PhotoGrid::leftBy, this, [this, at](int direction) { goBeyond(at, direction); });
    connect(grid, &PhotoGrid::currentMoved, this, [this, at] {
        if (m_isMoving) {
            return;
        }
        m_isMoving = true;
        for (std::size_t i = 0; i < kRoles; ++i) {
            if (i != at && m_groups[at].grid->current()) {
                m_groups[i].grid->select(std::nullopt);
            }
        }
        m_isMoving = false;
        placeForm();
        Q_EMIT currentMoved();
    });
    const auto key = [&](ActionId id, auto asked) {
        QAction* action = app::addAction(grid, id);
        action->setShortcutContext(Qt::WidgetShortcut);
        connect(action, &QAction::triggered, this, asked);
    };
    key(ActionId::removeRecord, [this] { Q_EMIT removeAsked(); });
    key(ActionId::moveEarlier, [this] { Q_EMIT moveAsked(-1); });
    key(ActionId::moveLater, [this] { Q_EMIT moveAsked(1); });
}

void ContactSheet::show(const std::vector<core::Photograph>& photographs) {
    const auto kept = current();
    m_isMoving = true;
    for (std::size_t i = 0; i < kRoles; ++i) {
        std::vector<core::Photograph> own;
        for (const core::Photograph& photo : photographs) {
            if (static_cast<std::size_t>(photo.role) == i) {
                own.push_back(photo);
            }
        }
        const auto count = own.size();
        m_groups[i].count->setText(count == 0 ? QString{} : QString::number(count));
        m_groups[i].empty->setVisible(count == 0);
        m_groups[i].grid->setVisible(count > 0);
        m_groups[i].grid->show(std::move(own));
        m_groups[i].grid->select(kept);
    }
    m_isMoving = false;
    placeForm();
    if (current() != kept) {
        Q_EMIT currentMoved();
    }
}

std::optional<core::Id<core::Photograph>> ContactSheet::current() const {
    for (const Group& group : m_groups) {
        if (const auto chosen = group.grid->current()) {
            return chosen;
        }
    }
    return std::nullopt;
}

bool ContactSheet::select(const core::Id<core::Photograph>& id) {
    for (const Group& group : m_groups) {
        group.grid->select(id);
        if (group.grid->current() == id) {
            return true;
        }
    }
    return false;
}

PhotoGrid& ContactSheet::grid(core::PhotoRole role) const {
    return *m_groups[static_cast<std::size_t>(role)].grid;
}

void ContactSheet::focusCurrent() {
    for (const Group& group : m_groups) {
        if (group.grid->current()) {
            group.grid->setFocus(Qt::OtherFocusReason);
        }
    }
}

void ContactSheet::goBeyond(std::size_t from, int direction) {
    auto at = static_cast<std::ptrdiff_t>(from) + direction;
    while (at >= 0 && at < static_cast<std::ptrdiff_t>(kRoles)) {
        PhotoGrid* grid = m_groups[static_cast<std::size_t>(at)].grid;
        if (grid->count() > 0) {
            grid->enterFrom(direction);
            return;
        }
        at += direction;
    }
}

void ContactSheet::placeForm() {
    for (std::size_t i = 0; i < kRoles; ++i) {
        if (!m_groups[i].grid->current()) {
            continue;
        }
        const int wanted = m_body->indexOf(m_groups[i].area) + 1;
        if (m_body->indexOf(m_form) != wanted) {
            m_body->removeWidget(m_form);
            m_body->insertWidget(m_body->indexOf(m_groups[i].area) + 1, m_form);
        }
        // Tab goes from the photographs of a group to the form, then to the next group.
        QWidget::setTabOrder(m_groups[i].grid, m_form);
        m_form->show();
        return;
    }
    m_form->hide();
}

bool ContactSheet::event(QEvent* event) {
    // Esc in the form goes back to its photograph.
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape &&
        m_form->isAncestorOf(QApplication::focusWidget())) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            focusCurrent();
        }
        return true;
    }
    return QWidget::event(event);
}

bool ContactSheet::eventFilter(QObject* watched, QEvent* event) {
    const bool isEntering = event->type() == QEvent::DragEnter || event->type() == QEvent::DragMove;
    if (!isEntering && event->type() != QEvent::Drop) {
        return QWidget::eventFilter(watched, event);
    }
    auto* drop = static_cast<QDropEvent*>(event);
    if (!holdsPhotographs(*drop->mimeData())) {
        return QWidget::eventFilter(watched, event);
    }
    drop->setDropAction(Qt::CopyAction);
    drop->accept();
    for (std::size_t i = 0; i < kRoles && !isEntering; ++i) {
        if (m_groups[i].area == watched) {
            Q_EMIT dropped(incomingFrom(*drop->mimeData()), static_cast<core::PhotoRole>(i));
        }
    }
    return true;
}

} // namespace headcap::app::photo
