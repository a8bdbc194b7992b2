#include "app/pages/collation/walk_keys.h"

#include <algorithm>

#include <QGridLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/style.h"
#include "core/record/describe.h"

namespace headcap::app {
namespace {

constexpr int kColumn = 176;

} // namespace

ActionId keyOfKind(core::CollationKind kind) {
    return static_cast<ActionId>(static_cast<int>(ActionId::foundLacking) + static_cast<int>(kind));
}

std::optional<core::CollationKind> kindOf(ActionId action) {
    const int kind = static_cast<int>(action) - static_cast<int>(ActionId::foundLacking);
    const auto kinds = static_cast<int>(core::EnumNames<core::CollationKind>::kNames.size());
    return kind >= 0 && kind < kinds ? std::optional{static_cast<core::CollationKind>(kind)}
                                     : std::nullopt;
}

std::optional<ActionId> walkAction(const QKeyEvent& event) {
    if ((event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) != Qt::NoModifier) {
        return std::nullopt;
    }
    for (const ActionEntry& entry : actionTable()) {
        if (entry.place == Place::walk && keysOf(entry.id).contains(QKeySequence{event.key()})) {
            return entry.id;
        }
    }
    return std::nullopt;
}

WalkKeys::WalkKeys(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(kGap);
    m_grid->setVerticalSpacing(kGrid);
    for (const ActionEntry& entry : actionTable()) {
        if (entry.place != Place::walk) {
            continue;
        }
        auto* button =
            new QPushButton(QStringLiteral("%1   %2").arg(keyText(entry.id), wordsOf(entry.id)));
        button->setToolTip(tipOf(entry.id));
        button->setFocusPolicy(Qt::NoFocus); // the hand stays where the walk is
        button->setProperty(kQuietButton, entry.id >= ActionId::walkRead);
        button->setStyleSheet(QStringLiteral("text-align: left"));
        connect(button, &QPushButton::clicked, this, [this, id = entry.id] { Q_EMIT pressed(id); });
        m_buttons.push_back(button);
    }
    layOut(4);
}

void WalkKeys::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layOut(std::clamp(width() / kColumn, 2, 6));
}

void WalkKeys::layOut(int columns) {
    if (columns == m_columns) {
        return;
    }
    m_columns = columns;
    const auto count = static_cast<int>(m_buttons.size());
    for (int i = 0; i < count; ++i) {
        m_grid->addWidget(m_buttons[static_cast<std::size_t>(i)], i / columns, i % columns);
    }
    for (int column = 0; column < 6; ++column) {
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
    }
}

} // namespace headcap::app
