// Long work as it goes on: what it is, how far, and the way to stop it. Hidden while there is none.
#pragma once

#include <QWidget>

class QPushButton;

namespace headcap::app {

class Label;
class LongWork;

class WorkStrip : public QWidget {
    Q_OBJECT
public:
    explicit WorkStrip(LongWork& work, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void begin(const QString& what);
    void progress(qint64 done, qint64 total);

    QString m_what;
    Label* m_words;
    QPushButton* m_stop;
    double m_share = 0;
};

} // namespace headcap::app
