// Backups: when the last were made, outside and inside the workshop; make one now, restore one into
// a new folder, check everything, look for files that are missing.
#pragma once

#include "app/session/long_work.h"
#include "app/shell/view.h"
#include "core/record/safe_keeping.h"

class QBoxLayout;
class QPushButton;

namespace headcap::app {

class Label;

class BackupView : public View {
    Q_OBJECT
public:
    explicit BackupView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    [[nodiscard]] QString title() const override { return tr("Backups"); }
    [[nodiscard]] LongWork& work() { return m_work; }

private:
    QBoxLayout* section(QBoxLayout& down, const QString& heading,
                        std::initializer_list<QPushButton*> buttons);
    void layOut(QBoxLayout& down);
    void connectParts();
    void showFound(const QStringList& lines);

    [[nodiscard]] QString folder() const;
    void chooseFolder();
    void backUp();
    void restore();
    void check();
    void mend();
    void begin(const QString& what, const QString& failed, const LongWork::Work& work);

    Session& m_session;
    core::SafeKeeping* m_keeping; // null: a store that has none
    QString m_chosen;             // a folder no backup was made in yet
    LongWork m_work;
    Label* m_outside;
    Label* m_folder;
    Label* m_inside;
    Label* m_found;
    QPushButton* m_backUp;
    QPushButton* m_choose;
    QPushButton* m_restore;
    QPushButton* m_check;
    QPushButton* m_mend;
};

} // namespace headcap::app
