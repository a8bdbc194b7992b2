// What was done, refused or has failed, in one sentence at the foot of what is shown, which gives
// it the room: it lies over nothing. What was done goes by itself; what was refused stays until it
// is read, or its cause is gone.
#pragma once

#include <QWidget>

#include "app/session/session.h"

class QPushButton;
class QTimer;

namespace headcap::app {

class Label;

class NoticeBar : public QWidget {
    Q_OBJECT
public:
    explicit NoticeBar(Session& session, QWidget* parent);
    [[nodiscard]] QString sentence() const;
    // Where its left edge stands: on that of the page's words.
    void setLeft(int left);
    // A refusal belongs to the view where it was said, and goes with what it stood against.
    void putAway();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void show(const Notice& notice);
    void revealFocus();
    void fit();

    Label* m_words;
    QPushButton* m_undo;
    QPushButton* m_close;
    QTimer* m_going;
    int m_left = 0;
    Notice::Kind m_kind = Notice::Kind::done;
};

} // namespace headcap::app
