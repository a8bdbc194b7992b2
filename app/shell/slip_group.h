// A group of the worklist: its heading with the number of slips, and the slips below each other.
#pragma once

#include <vector>

#include <QWidget>

#include "app/shell/slip.h"

class QVBoxLayout;

namespace headcap::app {

class Label;

class SlipGroup : public QWidget {
    Q_OBJECT
public:
    explicit SlipGroup(const QString& heading, QWidget* parent = nullptr);
    void show(std::vector<SlipWords> slips);
    using QWidget::show;
    // Only slips that hold these folded words; the group goes where there are none.
    void setFilter(const std::string& folded);
    [[nodiscard]] const std::vector<Slip*>& slips() const { return m_slips; }
    [[nodiscard]] Slip* firstShown() const;

Q_SIGNALS:
    void chosen(const headcap::core::Id<headcap::core::Job>& job);

private:
    Label* m_count;
    QVBoxLayout* m_down;
    std::vector<Slip*> m_slips;
};

} // namespace headcap::app
