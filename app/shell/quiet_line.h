// A line across the window, above whatever is shown: one sentence, what can be done about it, and
// a cross. It is in nobody's way, takes no focus, and is read out where that is wanted.
#pragma once

#include <QWidget>

#include "app/session/actions.h"

class QHBoxLayout;
class QPushButton;

namespace headcap::app {

class Label;

class QuietLine : public QWidget {
    Q_OBJECT
public:
    explicit QuietLine(QWidget* parent = nullptr);
    // Its key stands in the tooltip; the key itself is the window's.
    QPushButton* addWay(ActionId id, const QString& words);
    // Empty: it goes.
    void say(const QString& sentence);
    [[nodiscard]] QString sentence() const;

Q_SIGNALS:
    void closed(); // by its cross

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Label* m_words;
    QHBoxLayout* m_ways;
};

} // namespace headcap::app
