// The keys of a walk as they lie under the hand: what is as it should be, and one key a finding.
// They are also buttons, for a knuckle.
#pragma once

#include <QWidget>

#include "app/session/actions.h"
#include "core/collation/collation_record.h"

class QGridLayout;

namespace headcap::app {

// The key of a kind of finding.
[[nodiscard]] ActionId keyOfKind(core::CollationKind kind);
// Which action of a walk a key press is; none: not one of them.
[[nodiscard]] std::optional<ActionId> walkAction(const QKeyEvent& event);
// The kind of finding an action makes.
[[nodiscard]] std::optional<core::CollationKind> kindOf(ActionId action);

class WalkKeys : public QWidget {
    Q_OBJECT
public:
    explicit WalkKeys(QWidget* parent = nullptr);

Q_SIGNALS:
    void pressed(headcap::app::ActionId action);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut(int columns);

    std::vector<QWidget*> m_buttons;
    QGridLayout* m_grid;
    int m_columns = 0;
};

} // namespace headcap::app
