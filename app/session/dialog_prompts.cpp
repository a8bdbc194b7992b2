#include "app/session/dialog_prompts.h"

#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QStandardPaths>
#include <QTreeView>

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

// The toolkit's own dialog, its columns as wide as their words.
QStringList chosen(QFileDialog& dialog) {
    if (auto* table = dialog.findChild<QTreeView*>()) {
        table->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    }
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles() : QStringList{};
}

} // namespace

QStringList DialogPrompts::filesToOpen(const QString& title, const QString& filter) {
    QFileDialog dialog{m_window, title, orUsual(m_openedFrom, QStandardPaths::PicturesLocation),
                       filter};
    dialog.setFileMode(QFileDialog::ExistingFiles);
    const QStringList files = chosen(dialog);
    if (!files.isEmpty()) {
        m_openedFrom = QFileInfo{files.front()}.path();
    }
    return files;
}

std::optional<QString> DialogPrompts::fileToSave(const QString& title, const QString& suggestion,
                                                 const QString& filter) {
    const QDir folder{orUsual(m_savedTo, QStandardPaths::DocumentsLocation)};
    QFileDialog dialog{m_window, title, folder.path(), filter};
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.selectFile(suggestion);
    const auto path = given(chosen(dialog).value(0));
    if (path) {
        m_savedTo = QFileInfo{*path}.path();
    }
    return path;
}

std::optional<QString> DialogPrompts::folder(const QString& title) {
    QFileDialog dialog{m_window, title, orUsual(m_folder, QStandardPaths::HomeLocation)};
    dialog.setFileMode(QFileDialog::Directory);
    dialog.setOption(QFileDialog::ShowDirsOnly);
    const auto folder = given(chosen(dialog).value(0));
    if (folder) {
        m_folder = *folder;
    }
    return folder;
}

void DialogPrompts::open(const QUrl& address) {
    QDesktopServices::openUrl(address);
}

} // namespace headcap::app
