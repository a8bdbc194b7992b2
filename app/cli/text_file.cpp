#include "app/cli/text_file.h"

#include <QFile>

#include "app/cli/command.h"

namespace headcap::app::cli {

std::string textOf(const QString& path) {
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly)) {
        throw Failure{Exit::inputUnusable, path.toStdString() + " could not be read: " +
                                               file.errorString().toStdString() + "."};
    }
    std::string text = file.readAll().toStdString();
    if (text.starts_with("\xEF\xBB\xBF")) {
        text.erase(0, 3);
    }
    return text;
}

} // namespace headcap::app::cli
