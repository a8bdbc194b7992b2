// All slips of the worklist, by group, in one column or two; where there are none, what belongs
// here and the first step.
#pragma once

#include <array>

#include <QWidget>

#include "app/shell/worklist.h"

class QBoxLayout;
class QPushButton;

namespace headcap::app {

class Label;
class SlipGroup;

class SlipSheet : public QWidget {
    Q_OBJECT
public:
    explicit SlipSheet(QWidget* parent = nullptr);
    void show(Worklist list);
    using QWidget::show;
    void setFilter(const QString& words);
    bool focusFirst(); // false where there is no slip
    // The job of the one slip that is shown; nothing where there are none or several.
    [[nodiscard]] std::optional<core::Id<core::Job>> onlyOne() const;
    [[nodiscard]] const std::array<SlipGroup*, kSlipGroups>& groups() const { return m_groups; }

Q_SIGNALS:
    void chosen(const headcap::core::Id<headcap::core::Job>& job);
    void newJobAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildEmpty();

    std::array<SlipGroup*, kSlipGroups> m_groups{};
    QBoxLayout* m_columns;
    QWidget* m_empty;
    Label* m_nothing;               // no slip holds the words that are looked for
    QPushButton* m_first = nullptr; // where no book is in the house
};

} // namespace headcap::app
