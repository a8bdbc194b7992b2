#include "app/work/setting_watch.h"

#include <algorithm>

#include <QTimer>

#include "app/session/words.h"
#include "core/record/job_file.h"
#include "core/treatment/setting_times.h"

namespace headcap::app {
namespace {

constexpr int kLookMs = 10'000;

} // namespace

SettingWatch::SettingWatch(Session& session, QObject* parent)
    : QObject(parent), m_session(session) {
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &SettingWatch::look);
    connect(&session, &Session::changed, this, &SettingWatch::read);
    timer->start(kLookMs);
    read();
}

void SettingWatch::read() {
    m_session.guarded(
        [this] { m_settings = core::loadSettings(m_session.records(), m_session.clock().now()); });
    look();
}

std::vector<core::SettingWork> SettingWatch::over() const {
    std::vector<core::SettingWork> over;
    const core::Instant now = m_session.clock().now();
    std::ranges::copy_if(m_settings, std::back_inserter(over), [&](const core::SettingWork& one) {
        return one.isOver(now) && !m_aside.contains(one.setting.id);
    });
    std::ranges::reverse(over);
    return over;
}

QString SettingWatch::sentence() const {
    const auto all = over();
    if (all.empty()) {
        return {};
    }
    const core::SettingWork& first = all.front();
    const core::Day on = m_session.clock().dayOf(first.setting.endsAt);
    const core::Day today = m_session.clock().today();
    const QString since =
        on == today
            ? clockTime(first.setting.endsAt)
            : QStringLiteral("%1, %2").arg(clockTime(first.setting.endsAt), shortDay(on, today));
    QString said = tr("It has set, since %1: %2 · %3")
                       .arg(since, fromCore(first.setting.what),
                            dotted({fromCore(first.job), fromCore(first.book)}));
    const auto more = static_cast<int>(all.size()) - 1;
    if (more > 0) {
        said += QLatin1Char(' ') + counted(more, tr("And %1 more."), tr("And %1 more."));
    }
    return said;
}

void SettingWatch::look() {
    QString now = sentence();
    if (now != m_said) {
        m_said = std::move(now);
        Q_EMIT changed();
    }
}

void SettingWatch::putAside() {
    for (const core::SettingWork& one : over()) {
        m_aside.insert(one.setting.id);
    }
    look();
}

void SettingWatch::seeToFirst() {
    const auto all = over();
    if (all.empty()) {
        return;
    }
    m_session.guarded([&] {
        const auto file = core::loadJobFile(m_session.records(), all.front().setting.job);
        if (!file) {
            return;
        }
        const core::Instant now = m_session.clock().now();
        for (const core::SettingTime& time : core::settingTimes(*file, now)) {
            if (time.setting == nullptr || time.setting->id != all.front().setting.id) {
                continue;
            }
            auto change = core::seeTo(*file, time, m_session.person(), now, m_session.ids());
            const QString said = fromCore(change.sentence);
            if (m_session.apply(std::move(change))) {
                m_session.say({Notice::Kind::done, said, true});
            }
            return;
        }
    });
}

} // namespace headcap::app
