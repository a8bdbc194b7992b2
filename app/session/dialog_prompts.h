// The questions, asked with the system's dialogs.
#pragma once

#include <QString>

#include "app/session/prompts.h"

class QWidget;

namespace headcap::app {

class DialogPrompts final : public Prompts {
public:
    void setWindow(QWidget* window) { m_window = window; }
    [[nodiscard]] QStringList filesToOpen(const QString& title, const QString& filter) override;
    [[nodiscard]] std::optional<QString> fileToSave(const QString& title, const QString& suggestion,
                                                    const QString& filter) override;
    [[nodiscard]] std::optional<QString> folder(const QString& title) override;
    void open(const QUrl& address) override;

private:
    // Where a dialog begins: where one was last, else where such files are usually kept.
    QString m_openedFrom{};
    QString m_savedTo{};
    QString m_folder{};
    QWidget* m_window = nullptr;
};

} // namespace headcap::app
