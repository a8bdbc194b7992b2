// The setting times of a job, to be read across the room: until when, how long still, and when one
// is over, that it is, until a touch says that somebody has seen to it.
#pragma once

#include <QWidget>

#include "core/treatment/setting_times.h"

class QPushButton;
class QVBoxLayout;

namespace headcap::app {

class SettingStrip : public QWidget {
    Q_OBJECT
public:
    explicit SettingStrip(const core::Clock& clock, QWidget* parent = nullptr);
    void show(const core::JobFile& file);
    using QWidget::show;
    // As the clock now stands; done by itself every few seconds.
    void tick();
    bool focusFirst();

Q_SIGNALS:
    void seen(const headcap::core::SettingTime& time);

private:
    const core::Clock& m_clock;
    std::optional<core::JobFile> m_file;
    std::vector<core::SettingTime> m_times;
    QVBoxLayout* m_down;
};

// One of them: what sets, a bar that empties, the time by the clock.
class SettingRow : public QWidget {
    Q_OBJECT
public:
    struct Words {
        QString what;
        QString left;     // "1 h 52 min", large: read from across the room
        QString until;    // "until 15:40", "over since 15:40"
        double share = 0; // of its time still to run
        bool isOver = false;
    };
    explicit SettingRow(QWidget* parent = nullptr);
    void show(const Words& words);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QPushButton& see() { return *m_see; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Words m_words;
    QPushButton* m_see;
};

} // namespace headcap::app
