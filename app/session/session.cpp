#include "app/session/session.h"

#include <QTimer>

#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/record/acts_in_job.h"
#include "core/record/contrary.h"
#include "core/record/reversal_words.h"

namespace headcap::app {
namespace {

constexpr int kPollMs = 250;

// " (2026-005)", where the act is of one job and does not name it: what is undone may be of
// another book than the one that lies open.
QString ofWhichJob(const core::JournalEntry& act, const core::RecordStore& records) {
    const auto job = core::onlyJobOf(act);
    const auto found = job ? core::find(records, *job) : std::nullopt;
    if (!found || act.sentence.find(found->record.number) != std::string::npos) {
        return {};
    }
    return QStringLiteral(" (%1)").arg(fromCore(found->record.number));
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
        auto& journal = m_means.stores.journal;
        const auto entry = isUndo ? journal.undo(m_person) : journal.redo(m_person);
        if (!entry) {
            say({Notice::Kind::refused, sentence(entry.error())});
            return;
        }
        noteVersion();
        Q_EMIT changed();
        say({Notice::Kind::done, fromCore(isUndo ? core::kUndoneWord : core::kDoneAgainWord) +
                                     fromCore(core::actIn(entry->sentence)) +
                                     ofWhichJob(*entry, m_means.stores.records)});
    });
}

} // namespace headcap::app
