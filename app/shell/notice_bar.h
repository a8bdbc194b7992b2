// What was done, refused or has failed, in one sentence that floats at the foot of the window and
// is in nobody's way. What was done goes by itself; what was refused stays until it is read.
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
    // Keeps its place above the foot of its parent.
    void place(int aboveFoot);
    // A refusal belongs to the view where it was said.
    void putAway();

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void show(const Notice& notice);

    Label* m_words;
    QPushButton* m_undo;
    QPushButton* m_close;
    QTimer* m_going;
    Notice::Kind m_kind = Notice::Kind::done;
    int m_aboveFoot = 0;
};

} // namespace headcap::app
