// One open workshop and the person at it: what every window and page is given. Changes go through
// apply(), which is the one place where a refusal or a failed disk becomes a sentence; undo and
// redo too. Tells when anything has changed, here or in another window of the workshop.
#pragma once

#include <functional>
#include <optional>

#include <QObject>
#include <QString>

#include "app/session/prompts.h"
#include "app/session/settings.h"
#include "core/record/stores.h"

class QTimer;

namespace headcap::app {

// A sentence shown in the window's notice bar, not in the way.
struct Notice {
    enum class Kind { done, refused, failed };
    Kind kind = Kind::done;
    QString sentence;
    bool offersUndo = false;
};

class Session : public QObject {
    Q_OBJECT
public:
    struct Means {
        core::Stores stores;
        const core::Clock& clock;
        core::IdSource& ids;
        Prompts& prompts;
        Settings& settings;
    };
    explicit Session(const Means& means, QObject* parent = nullptr);

    [[nodiscard]] const core::Stores& stores() const { return m_means.stores; }
    [[nodiscard]] core::RecordStore& records() const { return m_means.stores.records; }
    [[nodiscard]] const core::Clock& clock() const { return m_means.clock; }
    [[nodiscard]] core::IdSource& ids() const { return m_means.ids; }
    [[nodiscard]] Prompts& prompts() const { return m_means.prompts; }
    [[nodiscard]] Settings& settings() const { return m_means.settings; }

    [[nodiscard]] std::optional<core::Id<core::Person>> person() const { return m_person; }
    void setPerson(std::optional<core::Id<core::Person>> person);
    // Who is working, for what can't be kept without; where nobody was chosen, a notice says so
    // and the choice is offered.
    [[nodiscard]] std::optional<core::Id<core::Person>> worker();

    // False: nothing was changed, and a notice has said why.
    bool apply(core::Change change);
    // The same, but a record changed by somebody else is left to the caller to show.
    enum class Applied { done, changedSince, refused };
    [[nodiscard]] Applied submit(core::Change change);

    // The sentence of what would be undone or brought back; empty: nothing, or what can't be.
    [[nodiscard]] QString undoable() const;
    [[nodiscard]] QString redoable() const;
    void undo();
    void redo();

    // Reads or does something that may find the storage failing; false where it did, and a
    // notice has said so.
    bool guarded(const std::function<void()>& work);
    void say(const Notice& notice);
    // Looks whether somebody else has changed the workshop; done by itself four times a second.
    void poll();

Q_SIGNALS:
    void changed();
    void personChanged();
    void personAsked();
    void said(const headcap::app::Notice& notice);

private:
    void reverse(bool isUndo);
    void noteVersion();

    Means m_means;
    std::optional<core::Id<core::Person>> m_person;
    std::optional<std::int64_t> m_version;
    QTimer* m_poll;
};

} // namespace headcap::app
