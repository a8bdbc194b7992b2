// The folder where the camera puts its pictures: what has come into it since it is watched, and is
// there whole. Looked at every few seconds, as a folder on another machine tells nobody.
#pragma once

#include <map>
#include <set>

#include <QDateTime>
#include <QObject>
#include <QString>
#include <QStringList>

namespace headcap::app::photo {

class CameraFolder : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    // What lies in it now was there before; empty: none is watched.
    void watch(const QString& folder);
    [[nodiscard]] const QString& folder() const { return m_folder; }
    // The pictures that came, by their names.
    [[nodiscard]] QStringList waiting() const;
    // They are taken in, or not wanted.
    void forget(const QStringList& paths);
    // Every few seconds: a picture waits once it has stopped growing.
    void look();

Q_SIGNALS:
    void waitingChanged();

private:
    struct Seen {
        qint64 bytes = 0;
        QDateTime changed;
        friend bool operator==(const Seen&, const Seen&) = default;
    };
    [[nodiscard]] std::map<QString, Seen> there() const;

    QString m_folder;
    std::map<QString, Seen> m_growing;
    std::set<QString> m_known;
    std::set<QString> m_waiting;
};

} // namespace headcap::app::photo
