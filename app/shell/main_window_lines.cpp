// The lines above the window's views: what has set, and what the camera has brought.
#include "app/shell/main_window.h"

#include <QAction>
#include <QPushButton>

#include "app/photo/camera_desk.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/job_view.h"
#include "app/shell/quiet_line.h"
#include "app/work/setting_watch.h"

namespace headcap::app {

void MainWindow::watchSettings() {
    const auto goThere = [this] {
        if (const auto over = m_setting->over(); !over.empty()) {
            go({.view = ViewId::job,
                .job = over.front().setting.job,
                .page = core::Page::bench,
                .record = core::refOf(over.front().setting.id)});
        }
    };
    const auto see = [this] { m_setting->seeToFirst(); };
    connect(m_settingLine->addWay(ActionId::toSetting, tr("Go there")), &QPushButton::clicked, this,
            goThere);
    connect(m_settingLine->addWay(ActionId::seeToSetting, tr("Seen to")), &QPushButton::clicked,
            this, see);
    connect(app::addAction(this, ActionId::toSetting), &QAction::triggered, this, goThere);
    connect(app::addAction(this, ActionId::seeToSetting), &QAction::triggered, this, see);
    connect(m_settingLine, &QuietLine::closed, m_setting, &SettingWatch::putAside);
    const auto say = [this] { m_settingLine->say(m_setting->sentence()); };
    connect(m_setting, &SettingWatch::changed, this, say);
    say();
}

void MainWindow::watchCamera() {
    const auto take = [this] { takeFromCamera(); };
    connect(m_cameraLine->addWay(ActionId::takeFromCamera, tr("Take them in")),
            &QPushButton::clicked, this, take);
    connect(app::addAction(this, ActionId::takeFromCamera), &QAction::triggered, this, take);
    connect(m_cameraLine, &QuietLine::closed, m_camera, &photo::CameraDesk::putAside);
    connect(m_camera, &photo::CameraDesk::waitingChanged, this, &MainWindow::sayCamera);
}

void MainWindow::sayCamera() {
    const auto* job = qobject_cast<JobView*>(current());
    const bool isInJob = job != nullptr && job->file().has_value();
    m_cameraLine->say(m_camera->sentence(isInJob ? fromCore(job->file()->job.number) : QString{}));
}

// Into the job in hand.
void MainWindow::takeFromCamera() {
    const auto* view = qobject_cast<JobView*>(current());
    if (view == nullptr || !view->file()) {
        m_session.say({Notice::Kind::refused, tr("Photographs are taken into a job: open it, and "
                                                 "press %1 there.")
                                                  .arg(keyText(ActionId::takeFromCamera))});
        return;
    }
    m_camera->takeInto(view->file()->job);
}

} // namespace headcap::app
