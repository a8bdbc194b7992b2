// Before a workshop is open: begin one, open one, or look round the demo. Also where the one asked
// for could not be opened, with the reason.
#pragma once

#include <filesystem>
#include <optional>

#include <QProcess>
#include <QWidget>

#include "app/session/prompts.h"

class QPushButton;

namespace headcap::app {

class Label;
class RuledList;

// Whether there is one to open; whether it can be, only opening it says.
[[nodiscard]] bool holdsWorkshop(const std::filesystem::path& folder);

class StartWindow : public QWidget {
    Q_OBJECT
public:
    enum class Kind { open, begin };
    struct Choice {
        Kind kind = Kind::open;
        std::filesystem::path folder;
    };
    struct Means {
        Prompts& prompts;
        std::filesystem::path usual; // where a workshop lies when nobody says otherwise
        std::filesystem::path demo;  // where the demo is built
        QStringList demoCommand;     // program and words; the folder is added to them
        std::filesystem::path last;  // the one open before; empty: none
    };

    explicit StartWindow(const Means& means, QWidget* parent = nullptr);
    ~StartWindow() override;

    // Why the last choice came to nothing.
    void setProblem(const QString& sentence);

Q_SIGNALS:
    void chosen(const headcap::app::StartWindow::Choice& choice);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Row {
        QString title;
        QString detail;
        void (StartWindow::*take)();
    };
    void layOut();
    void fill();
    void take();
    void takeLast();
    void takeUsual();
    void beginElsewhere();
    void openOther();
    void lookRound();
    void demoDone(int exitCode, QProcess::ExitStatus status);
    void setBuilding(bool isBuilding);
    void stop();

    Means m_means;
    std::vector<Row> m_rows;
    Label* m_problem;
    RuledList* m_list;
    Label* m_building;
    QPushButton* m_stop;
    QProcess m_builder;
    bool m_isStopped = false;
};

} // namespace headcap::app
