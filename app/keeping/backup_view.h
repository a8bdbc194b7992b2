// The backups of the workshop: how they stand, a new one to a folder outside, and a workshop made
// from one. The work runs beside; the window stays alive, and Esc stops it.
#pragma once

#include <QThreadPool>

#include "app/keeping/keeping_work.h"
#include "app/session/session.h"
#include "app/shell/view.h"

class QGridLayout;
class QPushButton;
class QVBoxLayout;

namespace headcap::app {

class Label;

class BackupView : public View {
    Q_OBJECT
public:
    explicit BackupView(Session& session, QWidget* parent = nullptr);
    ~BackupView() override;
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool back() override; // stops what runs
    [[nodiscard]] QString title() const override { return tr("Backups"); }
    [[nodiscard]] KeepingWork& work() { return *m_work; }

private:
    void layOut();
    void addOutside(QVBoxLayout& down);
    void addInside(QVBoxLayout& down);
    void addRestore(QVBoxLayout& down);
    void connectParts();
    void lookOutside(const std::filesystem::path& folder);
    void backUpAgain();
    void backUpElsewhere();
    void restore();
    void begin(KeepingWork::Kind kind);
    void done(const KeepingWork::Outcome& outcome);
    void setRunning(bool isRunning);

    Session& m_session;
    KeepingWork* m_work;
    Label* m_need;
    Label* m_outside;
    Label* m_where;
    Label* m_place;
    Label* m_inside;
    QPushButton* m_again;
    QPushButton* m_elsewhere;
    QPushButton* m_restore;
    QPushButton* m_stop;
    QPushButton* m_openRestored;
    Label* m_progress;
    Label* m_outcome;
    std::optional<std::filesystem::path> m_folder; // of the last backup outside
    QString m_restored;
    QThreadPool m_looks;
};

} // namespace headcap::app
