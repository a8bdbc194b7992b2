#include "app/shell/slip_group.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"

namespace headcap::app {

SlipGroup::SlipGroup(const QString& heading, QWidget* parent)
    : QWidget(parent), m_count(new Label(Face::small, Ink::quiet)), m_down(new QVBoxLayout(this)) {
    auto* head = new QHBoxLayout;
    head->setSpacing(3 * kGrid);
    head->addWidget(new Label(Face::heading, Ink::ink, heading));
    head->addWidget(m_count, 1);
    m_down->setContentsMargins(0, 0, 0, kSection);
    m_down->setSpacing(kGap);
    m_down->addLayout(head);
}

void SlipGroup::show(std::vector<SlipWords> slips) {
    if (std::ranges::equal(slips, m_slips, {}, {}, &Slip::words)) {
        return;
    }
    std::optional<core::Id<core::Job>> focused;
    for (Slip* slip : m_slips) {
        if (slip->hasFocus()) {
            focused = slip->words().job;
        }
        slip->hide();
        slip->deleteLater();
    }
    m_slips.clear();
    hide(); // else the whole page is laid out anew for each slip
    Slip* toFocus = nullptr;
    for (SlipWords& words : slips) {
        auto* slip = new Slip(std::move(words), this);
        m_down->addWidget(slip);
        m_slips.push_back(slip);
        connect(slip, &QAbstractButton::clicked, this,
                [this, slip] { Q_EMIT chosen(slip->words().job); });
        if (focused && slip->words().job == *focused) {
            toFocus = slip;
        }
    }
    setFilter({});
    if (toFocus != nullptr) {
        toFocus->setFocus(Qt::OtherFocusReason);
    }
}

void SlipGroup::setFilter(const std::string& folded) {
    int shown = 0;
    for (Slip* slip : m_slips) {
        const bool isShown = slip->holds(folded);
        slip->setVisible(isShown);
        shown += isShown ? 1 : 0;
    }
    m_count->setText(QString::number(shown));
    setVisible(shown > 0);
}

Slip* SlipGroup::firstShown() const {
    for (Slip* slip : m_slips) {
        if (!slip->isHidden()) {
            return slip;
        }
    }
    return nullptr;
}

} // namespace headcap::app
