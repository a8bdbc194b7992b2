#include "app/session/dialog_prompts.h"

#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QStandardPaths>

namespace headcap::app {
namespace {

std::optional<QString> given(const QString& path) {
    return path.isEmpty() ? std::nullopt : std::optional{path};
}

QString usual(QStandardPaths::StandardLocation place) {
    const QString folder = QStandardPaths::writableLocation(place);
    return QFileInfo{folder}.isDir() ? folder : QDir::homePath();
}

QString orUsual(const QString& last, QStandardPaths::StandardLocation place) {
    return QFileInfo{last}.isDir() ? last : usual(place);
}

} // namespace

QStringList DialogPrompts::filesToOpen(const QString& title, const QString& filter) {
    const QStringList files = QFileDialog::getOpenFileNames(
        m_window, title, orUsual(m_openedFrom, QStandardPaths::PicturesLocation), filter);
    if (!files.isEmpty()) {
        m_openedFrom = QFileInfo{files.front()}.path();
    }
    return files;
}

std::optional<QString> DialogPrompts::fileToSave(const QString& title, const QString& suggestion,
                                                 const QString& filter) {
    const QDir folder{orUsual(m_savedTo, QStandardPaths::DocumentsLocation)};
    const auto path =
        given(QFileDialog::getSaveFileName(m_window, title, folder.filePath(suggestion), filter));
    if (path) {
        m_savedTo = QFileInfo{*path}.path();
    }
    return path;
}

std::optional<QString> DialogPrompts::folder(const QString& title) {
    const auto folder = given(QFileDialog::getExistingDirectory(
        m_window, title, orUsual(m_folder, QStandardPaths::HomeLocation)));
    if (folder) {
        m_folder = *folder;
    }
    return folder;
}

void DialogPrompts::open(const QUrl& address) {
    QDesktopServices::openUrl(address);
}

} // namespace headcap::app
