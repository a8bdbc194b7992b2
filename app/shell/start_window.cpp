#include "app/shell/start_window.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/ruled_list.h"
#include "app/look/grid.h"
#include "app/look/label.h"

namespace headcap::app {
namespace {

constexpr int kStopMs = 3000;

QString shown(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

core::Uuid rowId(std::size_t at) {
    return *core::Uuid::fromText("00000000-0000-7000-8000-00000000000" + std::to_string(at));
}

} // namespace

bool holdsWorkshop(const std::filesystem::path& folder) {
    std::error_code unreadable;
    return !folder.empty() && std::filesystem::exists(folder / "workshop.sqlite", unreadable);
}

StartWindow::StartWindow(const Means& means, QWidget* parent)
    : QWidget(parent), m_means(means), m_problem(new Label(Face::strong, Ink::must)),
      m_list(new RuledList(tr("Workshops"))), m_building(new Label(Face::body, Ink::ink)),
      m_stop(new QPushButton(tr("Stop"))) {
    setWindowTitle(QStringLiteral("Headcap"));
    layOut();
    fill();
    setBuilding(false);
    connect(m_list, &RuledList::opened, this, &StartWindow::take);
    connect(m_stop, &QPushButton::clicked, this, &StartWindow::stop);
    connect(&m_builder, &QProcess::finished, this, &StartWindow::demoDone);
}

StartWindow::~StartWindow() {
    m_builder.disconnect(this);
    stop();
}

void StartWindow::layOut() {
    m_problem->setRunning();
    m_building->setText(tr("The demo's photographs are being drawn; that takes a minute or two."));
    m_building->setRunning();
    m_list->setMarkWidth(0);
    auto* purpose = new Label(Face::body, Ink::quiet,
                              tr("The treatment records of a bindery. A workshop is a folder: its "
                                 "records, photographs and reports lie in it."));
    purpose->setRunning();
    auto* sheet = new QWidget;
    sheet->setMaximumWidth(760);
    auto* down = new QVBoxLayout(sheet);
    down->setContentsMargins(15 * kGrid, 12 * kGrid, 15 * kGrid, kSection);
    down->setSpacing(kGap);
    down->addWidget(new Label(Face::title, Ink::ink, QStringLiteral("Headcap")));
    down->addWidget(purpose);
    down->addSpacing(kSpace);
    down->addWidget(m_problem);
    down->addWidget(new HairRule);
    down->addWidget(m_list);
    down->addSpacing(kSpace);
    down->addWidget(m_building);
    down->addWidget(m_stop, 0, Qt::AlignLeft);
    down->addStretch(1);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->addStretch(1);
    across->addWidget(sheet, 4);
    across->addStretch(1);
    setMinimumSize(640, 480);
    resize(860, 600);
    m_problem->hide();
}

void StartWindow::fill() {
    if (holdsWorkshop(m_means.last)) {
        m_rows.push_back(
            {tr("Go on with the last workshop"), shown(m_means.last), &StartWindow::takeLast});
    }
    if (holdsWorkshop(m_means.usual)) {
        if (m_means.usual != m_means.last) {
            m_rows.push_back(
                {tr("Open your workshop"), shown(m_means.usual), &StartWindow::takeUsual});
        }
    } else {
        m_rows.push_back({tr("Begin a workshop"), tr("Empty, in %1").arg(shown(m_means.usual)),
                          &StartWindow::takeUsual});
    }
    m_rows.push_back({tr("Begin a workshop in another folder …"),
                      tr("A new or empty folder, on a disk of this computer"),
                      &StartWindow::beginElsewhere});
    m_rows.push_back({tr("Open another workshop …"), tr("The folder that holds workshop.sqlite"),
                      &StartWindow::openOther});
    m_rows.push_back(
        {tr("Look round the demo"),
         tr("An invented bindery with its jobs, lots and reports, to try everything in"),
         &StartWindow::lookRound});
    std::vector<RuledModel::Row> rows;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        rows.push_back({rowId(i), {.title = m_rows[i].title, .detail = m_rows[i].detail}});
    }
    m_list->show(std::move(rows));
    m_list->select(rowId(0));
    m_list->setFocus();
}

void StartWindow::setProblem(const QString& sentence) {
    m_problem->setText(sentence);
    m_problem->setVisible(!sentence.isEmpty());
}

void StartWindow::take() {
    const auto current = m_list->current();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (current == rowId(i)) {
            setProblem({});
            (this->*m_rows[i].take)();
            return;
        }
    }
}

void StartWindow::takeLast() {
    Q_EMIT chosen({Kind::open, m_means.last});
}

void StartWindow::takeUsual() {
    Q_EMIT chosen({holdsWorkshop(m_means.usual) ? Kind::open : Kind::begin, m_means.usual});
}

void StartWindow::beginElsewhere() {
    if (const auto folder = m_means.prompts.folder(tr("A new or empty folder for the workshop"))) {
        Q_EMIT chosen({Kind::begin, folder->toStdString()});
    }
}

void StartWindow::openOther() {
    if (const auto folder = m_means.prompts.folder(tr("The folder of the workshop"))) {
        Q_EMIT chosen({Kind::open, folder->toStdString()});
    }
}

void StartWindow::lookRound() {
    if (holdsWorkshop(m_means.demo)) {
        Q_EMIT chosen({Kind::open, m_means.demo});
        return;
    }
    // In a process of its own: the window stays alive, and stopping it leaves nothing half built.
    std::error_code ignored;
    std::filesystem::create_directories(m_means.demo.parent_path(), ignored);
    QStringList words = m_means.demoCommand.mid(1);
    words << shown(m_means.demo) + QStringLiteral(".part");
    std::filesystem::remove_all(words.back().toStdString(), ignored);
    m_isStopped = false;
    setBuilding(true);
    m_builder.start(m_means.demoCommand.front(), words);
}

void StartWindow::demoDone(int exitCode, QProcess::ExitStatus status) {
    setBuilding(false);
    const std::filesystem::path built = m_means.demo.string() + ".part";
    std::error_code failed;
    if (m_isStopped) {
        std::filesystem::remove_all(built, failed);
        return;
    }
    if (status != QProcess::NormalExit || exitCode != 0) {
        const QString said = QString::fromUtf8(m_builder.readAllStandardError()).trimmed();
        std::filesystem::remove_all(built, failed);
        setProblem(said.isEmpty() ? tr("The demo could not be built.") : said);
        return;
    }
    std::filesystem::rename(built, m_means.demo, failed);
    if (failed) {
        setProblem(tr("The demo was built, but can't be put at %1: %2.")
                       .arg(shown(m_means.demo), QString::fromStdString(failed.message())));
        return;
    }
    Q_EMIT chosen({Kind::open, m_means.demo});
}

void StartWindow::setBuilding(bool isBuilding) {
    m_building->setVisible(isBuilding);
    m_stop->setVisible(isBuilding);
    m_list->setEnabled(!isBuilding);
    if (isBuilding) {
        m_stop->setFocus();
    } else {
        m_list->setFocus();
    }
}

void StartWindow::stop() {
    if (m_builder.state() == QProcess::NotRunning) {
        return;
    }
    m_isStopped = true;
    m_builder.kill();
    m_builder.waitForFinished(kStopMs);
}

void StartWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (m_builder.state() != QProcess::NotRunning) {
            stop();
        } else {
            close();
        }
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace headcap::app
