// A piece of work as a large button: what it is, below it what it needs or how long its clock has
// run. A mark says what a touch does: a triangle starts, a square stops, a ring is to be logged.
#pragma once

#include <QPushButton>

namespace headcap::app {

class WorkButton : public QPushButton {
    Q_OBJECT
public:
    enum class Mark { none, starts, stops, toLog };

    explicit WorkButton(QWidget* parent = nullptr);
    void show(const QString& title, const QString& below, Mark mark);
    using QPushButton::show;
    [[nodiscard]] Mark mark() const { return m_mark; }
    [[nodiscard]] const QString& title() const { return m_title; }
    [[nodiscard]] const QString& below() const { return m_below; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_title;
    QString m_below;
    Mark m_mark = Mark::none;
};

} // namespace headcap::app
