#include "app/session/dialog_prompts.h"

#include <QDesktopServices>
#include <QFileDialog>

namespace headcap::app {
namespace {

std::optional<QString> given(const QString& path) {
    return path.isEmpty() ? std::nullopt : std::optional{path};
}

} // namespace

QStringList DialogPrompts::filesToOpen(const QString& title, const QString& filter) {
    return QFileDialog::getOpenFileNames(m_window, title, {}, filter);
}

std::optional<QString> DialogPrompts::fileToSave(const QString& title, const QString& suggestion,
                                                 const QString& filter) {
    return given(QFileDialog::getSaveFileName(m_window, title, suggestion, filter));
}

std::optional<QString> DialogPrompts::folder(const QString& title) {
    return given(QFileDialog::getExistingDirectory(m_window, title));
}

void DialogPrompts::open(const QUrl& address) {
    QDesktopServices::openUrl(address);
}

} // namespace headcap::app
