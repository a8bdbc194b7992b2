#include "app/cli/text_file.h"

#include <QFile>

#include "app/cli/command.h"
#include "core/values/utf8.h"

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
    if (const auto line = core::firstLineNotUtf8(text)) {
        throw Failure{Exit::inputUnusable, path.toStdString() + " is not UTF-8 text from line " +
                                               std::to_string(*line) + " on: save it as UTF-8."};
    }
    return text;
}

} // namespace headcap::app::cli
