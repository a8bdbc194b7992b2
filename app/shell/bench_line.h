// The foot of a job: one large line to type or scan into. What has been understood of it stands
// above as small labelled parts before Enter takes it. How a line is read and taken is passed in.
#pragma once

#include <functional>
#include <vector>

#include <QWidget>

class QLineEdit;

namespace headcap::app {

class Label;

struct LineChip {
    QString label; // "lot"
    QString text;  // "31-006 wheat paste 0.6 g"
    bool isDoubtful = false;
};

class ChipRow : public QWidget {
    Q_OBJECT
public:
    explicit ChipRow(QWidget* parent = nullptr);
    void show(std::vector<LineChip> chips);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<LineChip> m_chips;
};

class BenchLine : public QWidget {
    Q_OBJECT
public:
    using Reader = std::function<std::vector<LineChip>(const QString&)>;
    using Taker = std::function<bool(const QString&)>; // true: taken, the line is empty again

    explicit BenchLine(QWidget* parent = nullptr);
    void setReader(Reader reader);
    void setTaker(Taker taker) { m_take = std::move(taker); }
    // The names of lots and people have changed: reads the line again.
    void readAgain();
    [[nodiscard]] QLineEdit& line() { return *m_line; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void take();

    ChipRow* m_chips;
    QLineEdit* m_line;
    Label* m_hint;
    Reader m_read;
    Taker m_take;
};

} // namespace headcap::app
