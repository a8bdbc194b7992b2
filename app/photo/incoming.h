// A photograph on its way in: a file, or pixels that were pasted or dropped from another program.
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>
#include <QStringList>

class QMimeData;

namespace headcap::app::photo {

struct Incoming {
    QString path;     // empty: there is no file, only
    QByteArray bytes; // of a PNG
    QString name;
};

[[nodiscard]] std::vector<Incoming> incomingFrom(const QStringList& paths);
// The files it names, else its picture; empty where it holds neither.
[[nodiscard]] std::vector<Incoming> incomingFrom(const QMimeData& data);
[[nodiscard]] bool holdsPhotographs(const QMimeData& data);

} // namespace headcap::app::photo
