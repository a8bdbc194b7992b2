#include "app/shell/slip_sheet.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "app/shell/slip_group.h"
#include "core/values/fold.h"

namespace headcap::app {
namespace {

constexpr int kTwoColumnsFrom = 1100;

// Which groups stand in the left column; the others stand at the right.
bool isLeft(std::size_t group) {
    return group == static_cast<std::size_t>(core::WorklistGroup::needsYou) ||
           group == static_cast<std::size_t>(core::WorklistGroup::waitingForOwner);
}

} // namespace

SlipSheet::SlipSheet(QWidget* parent)
    : QWidget(parent), m_columns(new QBoxLayout(QBoxLayout::LeftToRight)), m_empty(new QWidget),
      m_nothing(new Label(Face::body, Ink::quiet)) {
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    for (std::size_t i = 0; i < kSlipGroups; ++i) {
        m_groups[i] = new SlipGroup(groupHeading(i));
        m_groups[i]->hide(); // till it is known what it holds: what is hidden is not measured
        (isLeft(i) ? left : right)->addWidget(m_groups[i]);
        connect(m_groups[i], &SlipGroup::chosen, this, &SlipSheet::chosen);
    }
    for (QVBoxLayout* column : {left, right}) {
        column->setSpacing(0);
        column->addStretch(1);
        m_columns->addLayout(column, 1);
    }
    buildEmpty();
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(15 * kGrid, kGap, 15 * kGrid, kSpace);
    m_nothing->setRunning();
    m_nothing->hide();
    down->addWidget(m_empty);
    down->addWidget(m_nothing);
    down->addLayout(m_columns);
    down->addStretch(1);
}

void SlipSheet::buildEmpty() {
    m_empty->hide();
    auto* words = new Label(Face::body, Ink::quiet,
                            tr("No book is in the house. Each one that is taken in has a slip "
                               "here, with the next thing to do."));
    words->setRunning();
    m_first = new QPushButton(tr("Take in the first book"));
    m_first->setDefault(true);
    connect(m_first, &QPushButton::clicked, this, &SlipSheet::newJobAsked);
    auto* down = new QVBoxLayout(m_empty);
    down->setContentsMargins(0, kSection, 0, 0);
    down->addWidget(words);
    down->addSpacing(kSpace);
    down->addWidget(m_first, 0, Qt::AlignLeft);
}

void SlipSheet::show(Worklist list) {
    bool isEmpty = true;
    for (std::size_t i = 0; i < kSlipGroups; ++i) {
        isEmpty = isEmpty && list.groups[i].empty();
        m_groups[i]->show(std::move(list.groups[i]));
    }
    m_empty->setVisible(isEmpty);
}

void SlipSheet::setFilter(const QString& words) {
    const std::string asked = core::foldForSearch(toCore(words.trimmed()));
    bool isAnyShown = false;
    for (SlipGroup* group : m_groups) {
        group->setFilter(asked);
        isAnyShown = isAnyShown || group->firstShown() != nullptr;
    }
    m_nothing->setText(tr("No slip says “%1”. Enter looks everywhere: in past jobs, steps and "
                          "lots; Esc shows the slips again.")
                           .arg(words.trimmed()));
    m_nothing->setVisible(!asked.empty() && !isAnyShown && m_empty->isHidden());
}

bool SlipSheet::focusFirst() {
    for (const SlipGroup* group : m_groups) {
        if (Slip* slip = group->firstShown()) {
            slip->setFocus(Qt::TabFocusReason);
            return true;
        }
    }
    if (!m_empty->isHidden()) {
        m_first->setFocus(Qt::TabFocusReason);
    }
    return false;
}

std::optional<core::Id<core::Job>> SlipSheet::onlyOne() const {
    std::optional<core::Id<core::Job>> only;
    for (const SlipGroup* group : m_groups) {
        for (const Slip* slip : group->slips()) {
            if (slip->isHidden()) {
                continue;
            }
            if (only) {
                return std::nullopt;
            }
            only = slip->words().job;
        }
    }
    return only;
}

void SlipSheet::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isTwo = width() >= kTwoColumnsFrom;
    m_columns->setDirection(isTwo ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_columns->setSpacing(isTwo ? 10 * kGrid : 0);
}

} // namespace headcap::app
