#include "app/work/techniques_view.h"

#include <QAction>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/style.h"
#include "app/session/actions.h"

namespace headcap::app {
TechniquesView::TechniquesView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_edits(session), m_techniques(session),
      m_filter(new QLineEdit),
      m_add(quietButton(tr("Add a technique"), tipOf(ActionId::addRecord))),
      m_list(new RuledTable(title(), {.mark = 0, .right = 96})), m_name(new Label(Face::slip)),
      m_standing(new Label(Face::small, Ink::quiet)), m_back(quietButton({})),
      m_scroll(new QScrollArea), m_form(makeTechniqueForm(session)) {
    m_edits.watch(m_form);
    // A name makes the key of a new one.
    m_form->setAlso([this](const Own&, const Own& after, core::Change& change) {
        auto* added = std::get_if<Own>(&change.writes.back().record);
        if (added != nullptr && added->key.empty()) {
            added->key = core::techniqueKeyFor(after.name, m_techniques.inForce());
        }
    });
    m_edits.alignLabels();
    layOut();
    connectAll();
}

void TechniquesView::layOut() {
    m_filter->setProperty(kBoxed, true);
    m_filter->setPlaceholderText(tr("Filter …"));
    m_filter->setAccessibleName(tr("Filter the techniques"));
    m_standing->setRunning();
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // the rule ends with the fields
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto* sheet = new QWidget;
    auto* rows = new QVBoxLayout(sheet);
    rows->setContentsMargins(0, kGap, 0, 0);
    rows->addWidget(m_form);
    rows->addStretch(1);
    m_scroll->setWidget(sheet);

    auto* left = new QVBoxLayout;
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    ways->addWidget(m_filter, 1);
    ways->addWidget(m_add);
    left->setSpacing(kGap);
    left->addLayout(ways);
    left->addWidget(m_list, 1);
    auto* head = new QHBoxLayout;
    head->addWidget(m_name, 1);
    head->addWidget(m_back, 0, Qt::AlignTop);
    auto* right = new QVBoxLayout;
    right->setSpacing(kGrid);
    right->addLayout(head);
    right->addWidget(m_standing);
    auto* rule = new QHBoxLayout;
    rule->addWidget(new HairRule);
    rule->addSpacing(style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    right->addLayout(rule);
    right->addWidget(m_scroll, 1);

    auto* across = new QHBoxLayout;
    across->setSpacing(10 * kGrid);
    across->addLayout(left, 4);
    across->addLayout(right, 5);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(15 * kGrid, 8 * kGrid, 10 * kGrid, kGap);
    down->setSpacing(0);
    down->addWidget(new Label(Face::title, Ink::ink, title()));
    down->addWidget(new Label(Face::small, Ink::quiet,
                              tr("What is done to a book: how this workshop does it, what it takes "
                                 "and what it asks for.")));
    down->addSpacing(kSpace);
    down->addLayout(across, 1);
}

void TechniquesView::connectAll() {
    connect(m_filter, &QLineEdit::textChanged, this, &TechniquesView::showRows);
    connect(m_filter, &QLineEdit::returnPressed, this,
            [this] { m_list->setFocus(Qt::OtherFocusReason); });
    connect(m_add, &QPushButton::clicked, this, &TechniquesView::startNew);
    connect(m_back, &QPushButton::clicked, this, &TechniquesView::takeBack);
    connect(m_list, &RuledTable::currentMoved, this, [this] {
        m_edits.save();
        showCurrent();
    });
    connect(m_list, &RuledTable::opened, this, [this] { m_form->focusFirst(); });
    connect(app::addAction(this, ActionId::addRecord), &QAction::triggered, this,
            &TechniquesView::startNew);
    QAction* remove = app::addAction(m_list, ActionId::removeRecord);
    remove->setShortcutContext(Qt::WidgetShortcut);
    connect(remove, &QAction::triggered, this, &TechniquesView::takeBack);
}

void TechniquesView::showRows() {
    m_list->show(m_techniques.rows(m_filter->text()));
    if (!m_list->current() && m_list->rows().rowCount() > 0 && !m_form->isDraft()) {
        m_list->select(m_list->rows().row(0).id);
    }
}

void TechniquesView::showCurrent() {
    const auto id = m_list->current();
    if (!id) {
        return;
    }
    if (const auto* own = m_techniques.ownWith(*id)) {
        m_form->show(own->record, own->revision);
    } else if (!m_form->isDraft() || m_form->record()->id.uuid() != *id) {
        for (const core::Technique& one : m_techniques.inForce().offered()) {
            const auto key = m_techniques.idOf(one.key);
            if (key.uuid() == *id) {
                m_form->showDraft(core::houseTechniqueFrom(one, key));
                m_scroll->verticalScrollBar()->setValue(0);
            }
        }
    }
    showHead();
}

void TechniquesView::showHead() {
    const auto& shown = m_form->record();
    const bool isOwn = shown && m_techniques.ownOf(shown->key) != nullptr;
    const bool isShipped = shown && HouseTechniques::shippedOf(shown->key) != nullptr;
    m_name->setText(shown && !shown->name.empty() ? fromCore(shown->name)
                                                  : tr("A technique of our own"));
    m_standing->setText(!isShipped ? tr("Of this workshop. The bench line reads it as soon as it "
                                        "is said how it is written.")
                        : isOwn    ? tr("As this workshop does it; everything goes by it.")
                                   : tr("As it ships. Change a value, and it is this workshop's "
                                           "way."));
    m_back->setVisible(isOwn);
    m_back->setText(isShipped ? tr("As it ships") : tr("Remove"));
    m_back->setToolTip(QStringLiteral("%1 (%2)").arg(
        isShipped ? tr("Takes our way back") : tr("Removes it; in the log it keeps its name"),
        keyText(ActionId::removeRecord)));
}

void TechniquesView::startNew() {
    if (!m_edits.leave()) {
        return;
    }
    m_list->select(std::nullopt);
    m_form->showDraft({.id = m_session.ids().next<Own>()});
    m_scroll->verticalScrollBar()->setValue(0);
    showHead();
    m_form->focusFirst();
}

void TechniquesView::takeBack() {
    const auto& shown = m_form->record();
    if (shown && m_techniques.ownOf(shown->key) != nullptr) {
        const std::string key = shown->key;
        m_form->clear();
        m_techniques.takeBack(key);
        showCurrent();
    }
}

bool TechniquesView::enter(const Destination& destination) {
    refresh();
    if (destination.record) {
        m_list->select(destination.record->id);
        showCurrent();
    }
    m_list->setFocus(Qt::OtherFocusReason);
    return true;
}

void TechniquesView::refresh() {
    m_techniques.read();
    const auto shown = m_form->record() ? std::optional{m_form->record()->id.uuid()} : std::nullopt;
    showRows();
    if (shown && m_list->rows().rowOf(*shown) >= 0) {
        m_list->select(shown);
    }
    showCurrent();
}

bool TechniquesView::back() {
    if (m_list->hasFocus() || m_list->rows().rowCount() == 0) {
        return false;
    }
    if (m_edits.leave()) {
        m_list->setFocus(Qt::OtherFocusReason);
    }
    return true;
}

} // namespace headcap::app
