// The head of an option in the table: its name, and under it what the owner decided about it.
// Enter, Space or a click chooses it; the arrows go to the next.
#pragma once

#include <QWidget>

#include "app/look/palette.h"

namespace headcap::app {

class OptionHead : public QWidget {
    Q_OBJECT
public:
    explicit OptionHead(QWidget* parent = nullptr);
    struct Words {
        QString name;
        QString below;
        Ink belowInk = Ink::quiet;
    };
    void show(const Words& words, bool isChosen);
    using QWidget::show;
    [[nodiscard]] bool isChosen() const { return m_isChosen; }
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void chosen();
    void opened();
    void stepAsked(int by);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    Words m_words;
    bool m_isChosen = false;
};

} // namespace headcap::app
