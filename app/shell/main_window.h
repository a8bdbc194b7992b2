// The window: one view at a time, Esc steps back the way one came, notices float at the foot. Every
// step away from a view saves it first.
#pragma once

#include <map>
#include <vector>

#include <QDeadlineTimer>
#include <QWidget>

#include "app/session/session.h"
#include "app/shell/view.h"

class QPushButton;
class QStackedWidget;

namespace headcap::app {

class NoticeBar;
class QuietLine;
class SettingWatch;
namespace photo {
class CameraDesk;
}

class MainWindow : public QWidget {
    Q_OBJECT
public:
    explicit MainWindow(Session& session, QWidget* parent = nullptr);
    ~MainWindow() override;

    bool go(const Destination& destination);
    void back();
    [[nodiscard]] View* current() const;
    [[nodiscard]] ViewId currentId() const { return m_way.back().view; }
    [[nodiscard]] NoticeBar& notices() { return *m_notices; }
    // What has set; what the camera has brought.
    [[nodiscard]] QuietLine& settingLine() { return *m_settingLine; }
    [[nodiscard]] QuietLine& cameraLine() { return *m_cameraLine; }
    [[nodiscard]] SettingWatch& settings() { return *m_setting; }
    [[nodiscard]] photo::CameraDesk& camera() { return *m_camera; }

Q_SIGNALS:
    // The person has chosen another tone or size of text.
    void lookChanged();
    // The window has saved and closed; the workshop of that folder is wanted, or one to be asked
    // for.
    void otherWorkshopAsked(const QString& folder);

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void addKeys();
    void keepFocus(const QWidget* before, const QWidget* now);
    void layOut();
    void watchSettings();
    void readAhead();
    void watchCamera();
    void takeFromCamera();
    void sayCamera();
    [[nodiscard]] View* viewOf(ViewId id);
    void showWayBack(ViewId view);
    bool open(const Destination& destination);
    void turnTo(View* view);
    void leaveWorkshop(const QString& folder);
    [[nodiscard]] bool mayClose();
    void askWho();
    void changeText(int byPercent);
    void turnTone();

    Session& m_session;
    QStackedWidget* m_views;
    NoticeBar* m_notices;
    QuietLine* m_settingLine;
    QuietLine* m_cameraLine;
    SettingWatch* m_setting;
    photo::CameraDesk* m_camera;
    QPushButton* m_back;
    std::map<ViewId, View*> m_made;
    std::vector<Destination> m_way; // the last is where we are
    QDeadlineTimer m_isMeant{0};    // till then, closing again closes all the same
};

} // namespace headcap::app
