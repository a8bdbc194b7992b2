#include "app/form/list_section.h"

#include <QAction>
#include <QApplication>
#include <QBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>

#include "app/form/form_base.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "app/session/actions.h"

namespace headcap::app {
namespace {

constexpr int kBesideFrom = 860; // the form stands beside the list
constexpr int kFilterFrom = 8;   // rows

// The page may be scrolled far below the form that is gone into.
void bringIntoView(QWidget* at) {
    for (QWidget* up = at; up != nullptr; up = up->parentWidget()) {
        if (auto* scroll = qobject_cast<QScrollArea*>(up)) {
            scroll->ensureWidgetVisible(at, 0, kSection);
        }
    }
}

} // namespace

ListSection::ListSection(const Words& words, FormBase* form, QWidget* parent)
    : QWidget(parent), m_form(form), m_heading(new Label(Face::heading, Ink::ink, words.heading)),
      m_count(new Label(Face::small, Ink::quiet)), m_note(new Label(Face::small, Ink::quiet)),
      m_add(new QPushButton(words.add)), m_filter(new QLineEdit),
      m_list(new RuledList(words.heading)), m_empty(new QWidget), m_formFrame(new QWidget),
      m_head(new QHBoxLayout), m_formBox(new QVBoxLayout(m_formFrame)),
      m_body(new QBoxLayout(QBoxLayout::TopToBottom)) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    layOut(words);
    connectKeys();
    showRows({});
    closeForm();
}

void ListSection::layOut(const Words& words) {
    m_add->setProperty(kQuietButton, true);
    m_add->setToolTip(tipOf(ActionId::addRecord));
    m_filter->setProperty(kBoxed, true);
    m_filter->setPlaceholderText(tr("Filter …"));
    m_filter->setAccessibleName(tr("Filter %1").arg(words.heading.toLower()));
    m_filter->setMaximumWidth(220);

    m_head->setSpacing(kSpace);
    m_head->addWidget(m_heading);
    m_head->addWidget(m_count);
    m_head->addWidget(m_note, 1);
    m_head->addWidget(m_filter);
    m_head->addWidget(m_add);

    auto* emptyWords = new Label(Face::small, Ink::quiet, words.empty);
    emptyWords->setRunning();
    auto* emptyBox = new QVBoxLayout(m_empty);
    emptyBox->setContentsMargins(0, kGrid, 0, kGap);
    emptyBox->addWidget(emptyWords);

    m_formBox->setContentsMargins(0, kGap, 0, kGap);
    if (m_form != nullptr) {
        m_formBox->addWidget(m_form);
        m_formBox->addStretch();
    }
    auto* listBox = new QVBoxLayout;
    listBox->addWidget(m_list);
    listBox->addStretch();
    m_body->addLayout(listBox, 2);
    m_body->addWidget(m_formFrame, 3);
    m_body->setSpacing(kGap);

    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(kGrid);
    all->addLayout(m_head);
    all->addWidget(new HairRule);
    all->addWidget(m_empty);
    all->addLayout(m_body);
}

void ListSection::connectKeys() {
    connect(m_add, &QPushButton::clicked, this, &ListSection::addAsked);
    connect(m_filter, &QLineEdit::textChanged, m_list, &RuledList::setFilter);
    connect(m_list, &RuledList::currentMoved, this, &ListSection::currentMoved);
    connect(m_list, &RuledList::opened, this, [this] { openForm(true); });
    QAction* add = app::addAction(this, ActionId::addRecord);
    connect(add, &QAction::triggered, this, [this] {
        if (m_isAddable) {
            Q_EMIT addAsked();
        }
    });
    QAction* remove = app::addAction(m_list, ActionId::removeRecord);
    remove->setShortcutContext(Qt::WidgetShortcut);
    connect(remove, &QAction::triggered, this, &ListSection::removeAsked);
}

void ListSection::setAddable(bool isAddable) {
    m_isAddable = isAddable;
    m_add->setVisible(isAddable);
}

void ListSection::addBelowForm(QWidget* part) {
    part->setContentsMargins(0, kSection, 0, 0);
    m_formBox->insertWidget(m_formBox->count() - 1, part);
}

void ListSection::setNote(const QString& sentence) {
    m_note->setText(sentence);
}

void ListSection::addWay(QPushButton* way) {
    m_head->insertWidget(m_head->count() - 1, way);
}

void ListSection::showRows(std::vector<RuledModel::Row> rows) {
    const auto count = static_cast<int>(rows.size());
    m_count->setText(count == 0 ? QString{} : QString::number(count));
    m_empty->setVisible(count == 0);
    m_list->setVisible(count > 0);
    m_filter->setVisible(count >= kFilterFrom);
    m_list->show(std::move(rows));
}

void ListSection::openForm(bool isFocused) {
    if (m_form == nullptr) {
        return;
    }
    m_formFrame->show();
    if (isFocused) {
        m_form->focusFirst();
        QTimer::singleShot(0, this, [this] { bringIntoView(QApplication::focusWidget()); });
    }
}

void ListSection::closeForm() {
    m_formFrame->hide();
}

void ListSection::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isBeside = width() >= kBesideFrom;
    m_body->setDirection(isBeside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_body->setSpacing(isBeside ? 8 * kGrid : kGap);
}

bool ListSection::event(QEvent* event) {
    // Esc in the form goes back to its row; a new one that can't be kept is dropped.
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape &&
        m_formFrame->isVisible() && !m_list->hasFocus() && (m_list->isVisible() || isOwed())) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            QWidget* to = m_list->isVisible() ? static_cast<QWidget*>(m_list) : m_add;
            to->setFocus(Qt::OtherFocusReason);
            if (isOwed()) {
                dropOwed();
            }
        }
        return true;
    }
    return QWidget::event(event);
}

} // namespace headcap::app
