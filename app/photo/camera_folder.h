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

    // A picture there, as far as it has been written.
    struct Seen {
        qint64 bytes = 0;
        QDateTime changed;
        friend bool operator==(const Seen&, const Seen&) = default;
    };
    using Files = std::map<QString, Seen>; // by path
    // Takes as long as the folder's disk or network does: not for the GUI thread.
    [[nodiscard]] static Files filesIn(const QString& folder);

    // What is seen first was there before; empty: none is watched.
    void watch(const QString& folder);
    [[nodiscard]] const QString& folder() const { return m_folder; }
    // The pictures that came, by their names.
    [[nodiscard]] QStringList waiting() const;
    // They are taken in, or not wanted.
    void forget(const QStringList& paths);
    // They could not be taken in, and wait again.
    void offerAgain(const QStringList& paths);
    // What is in the folder now: a picture waits once it has stopped growing.
    void see(const Files& files);

Q_SIGNALS:
    void waitingChanged();

private:
    QString m_folder;
    bool m_isFirst = true;
    Files m_growing;
    std::set<QString> m_known;
    std::set<QString> m_waiting;
};

} // namespace headcap::app::photo
