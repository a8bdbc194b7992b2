// One note of the margin: a line in the ink of its weight and a quieter one below. Enter, Space or
// a click goes to its place.
#pragma once

#include <QWidget>

#include "app/look/palette.h"
#include "core/treatment/setting_times.h"

namespace headcap::app {

class MarginNote : public QWidget {
    Q_OBJECT
public:
    MarginNote(const QString& sentence, const QString& below, Ink ink, QWidget* parent = nullptr);

Q_SIGNALS:
    void chosen();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
};

// A setting time: a bar that empties, and the clock time at which it is over.
class SettingBar : public QWidget {
    Q_OBJECT
public:
    // In words: "until 09:00", and on which day where it is another than today.
    SettingBar(const core::SettingTime& time, const QString& clock, const QString& day,
               QWidget* parent = nullptr);
    void setNow(core::Instant now);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    core::SettingTime m_time; // its records are not asked for: they may be gone
    QString m_what;
    QString m_clock;
    QString m_day;
    core::Instant m_now{};
};

} // namespace headcap::app
