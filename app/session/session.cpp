#include "app/session/session.h"

#include <QTimer>

#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/record/contrary.h"
#include "core/record/reversal_words.h"

namespace headcap::app {
namespace {

constexpr int kPollMs = 250;

// " (2026-005)", where the act is of one job and does not name it: what is undone may be of
// another book than the one that lies open.
QString ofWhichJob(const core::JournalEntry& entry, const core::RecordStore& records,
                   const QString& said) {
    std::optional<core::Id<core::Job>> job;
    for (const core::JournalRecord& record : entry.records) {
        const auto& one = record.after ? record.after : record.before;
        const auto its = one ? core::jobOf(*one) : std::nullopt;
        if (its && job && *its != *job) {
            return {};
        }
        job = its ? its : job;
    }
    const auto found = job ? core::find(records, *job) : std::nullopt;
    const QString number = found ? fromCore(found->record.number) : QString{};
    return number.isEmpty() || said.contains(number) ? QString{}
                                                     : QStringLiteral(" (%1)").arg(number);
}

} // namespace

Session::Session(const Means& means, QObject* parent)
    : QObject(parent), m_means(means), m_poll(new QTimer(this)) {
    const auto kept = core::Uuid::fromText(toCore(settings().value(Setting::person).toString()));
    guarded([&] {
        if (kept && records().find({core::RecordKind::person, *kept})) {
            m_person = core::Id<core::Person>{*kept};
        }
    });
    noteVersion();
    connect(m_poll, &QTimer::timeout, this, &Session::poll);
    m_poll->start(kPollMs);
}

void Session::setPerson(std::optional<core::Id<core::Person>> person) {
    m_person = person;
    settings().set(Setting::person, person ? fromCore(person->text()) : QString{});
    Q_EMIT personChanged();
}

bool Session::guarded(const std::function<void()>& work) {
    try {
        work();
        return true;
    } catch (const core::StoreError& error) {
        say({Notice::Kind::failed, sentence(error)});
        return false;
    }
}

void Session::say(const Notice& notice) {
    Q_EMIT said(notice);
}

std::optional<core::Id<core::Person>> Session::worker() {
    if (!m_person) {
        say({Notice::Kind::refused, tr("Not done yet: who is working? Choose, and take it again; "
                                       "what was typed stays.")});
        Q_EMIT personAsked();
    }
    return m_person;
}

void Session::noteVersion() {
    guarded([this] { m_version = records().dataVersion(); });
}

void Session::poll() {
    std::int64_t version = 0;
    try {
        version = records().dataVersion();
    } catch (const core::StoreError&) {
        return; // said when something is next read or saved
    }
    if (m_version != version) {
        m_version = version;
        Q_EMIT changed();
    }
}

Session::Applied Session::submit(core::Change change) {
    if (change.writes.empty()) {
        return Applied::done;
    }
    if (!change.who) {
        change.who = m_person;
    }
    std::optional<core::Refusal> refusal;
    const bool isSound = guarded([&] {
        const auto applied = records().apply(change);
        if (!applied) {
            refusal = applied.error();
        }
    });
    if (!isSound) {
        return Applied::refused;
    }
    if (!refusal) {
        noteVersion();
        Q_EMIT changed();
        return Applied::done;
    }
    if (refusal->code == core::Refusal::Code::changedSince) {
        return Applied::changedSince;
    }
    say({Notice::Kind::refused, sentence(*refusal)});
    return Applied::refused;
}

bool Session::apply(core::Change change) {
    const Applied applied = submit(std::move(change));
    if (applied == Applied::changedSince) {
        say({Notice::Kind::refused,
             sentence(core::Refusal{core::Refusal::Code::changedSince, {}, {}})});
        Q_EMIT changed();
    }
    return applied == Applied::done;
}

QString Session::undoable() const {
    const auto entry = m_means.stores.journal.undoable(m_person);
    return entry && !core::whyNotTakenBack(*entry) ? fromCore(core::actIn(entry->sentence))
                                                   : QString{};
}

QString Session::redoable() const {
    const auto entry = m_means.stores.journal.redoable(m_person);
    return entry ? fromCore(core::actIn(entry->sentence)) : QString{};
}

void Session::undo() {
    reverse(true);
}

void Session::redo() {
    reverse(false);
}

void Session::reverse(bool isUndo) {
    guarded([&] {
        // The sentence of what is taken back, not of the taking back.
        const QString what = isUndo ? undoable() : redoable();
        auto& journal = m_means.stores.journal;
        const auto entry = isUndo ? journal.undo(m_person) : journal.redo(m_person);
        if (!entry) {
            say({Notice::Kind::refused, sentence(entry.error())});
            return;
        }
        noteVersion();
        Q_EMIT changed();
        say({Notice::Kind::done,
             (isUndo ? tr("Undone: %1") : tr("Brought back: %1"))
                 .arg(what + ofWhichJob(*entry, m_means.stores.records, what))});
    });
}

} // namespace headcap::app
