// The questions that only a dialog of the system can ask, behind an interface passed in, so that
// tests answer them and nothing hangs.
#pragma once

#include <optional>

#include <QString>
#include <QStringList>
#include <QUrl>

namespace headcap::app {

class Prompts {
public:
    virtual ~Prompts() = default;
    // Empty: the person thought better of it.
    [[nodiscard]] virtual QStringList filesToOpen(const QString& title, const QString& filter) = 0;
    [[nodiscard]] virtual std::optional<QString>
    fileToSave(const QString& title, const QString& suggestion, const QString& filter) = 0;
    [[nodiscard]] virtual std::optional<QString> folder(const QString& title) = 0;
    virtual void open(const QUrl& address) = 0;
};

} // namespace headcap::app
