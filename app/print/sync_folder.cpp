#include "app/print/sync_folder.h"

#include <fcntl.h>
#include <unistd.h>

#include <QFile>

namespace headcap::app::print {

void syncFolder(const QString& path) {
    const int folder = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_DIRECTORY);
    if (folder >= 0) {
        ::fsync(folder); // some file systems can't; the file itself is synced all the same
        ::close(folder);
    }
}

} // namespace headcap::app::print
