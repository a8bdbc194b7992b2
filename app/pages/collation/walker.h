// A walk through one volume as it is being made: where it stands, and what each key comes to. Every
// key is kept at once, as one entry of the journal, so that a walk can be broken off anywhere.
#pragma once

#include <QObject>

#include "app/session/session.h"
#include "core/collation/copy_statement.h"
#include "core/collation/walk_entries.h"
#include "core/collation/walk_evidence.h"
#include "core/record/job_file.h"

namespace headcap::app {

class Walker : public QObject {
    Q_OBJECT
public:
    explicit Walker(Session& session, QObject* parent = nullptr);

    // Again after every change. A walk under way stays where it is; where its last entry was taken
    // back, it is at that leaf again.
    void show(const core::JobFile& file, const std::optional<core::Id<core::Item>>& part,
              const core::Collation& collation);

    [[nodiscard]] const std::vector<core::Walk>& walks() const { return m_copy.walks; }
    [[nodiscard]] const core::CopyRecords& copy() const { return m_copy; }
    // This person's own that is not finished, the latest.
    [[nodiscard]] const core::Walk* open() const;
    [[nodiscard]] bool canBegin() const { return !m_walked.book.leaves.empty(); }
    // By a walk, or by other means.
    [[nodiscard]] bool isCollated() const { return m_collation && m_collation->finishedOn; }

    void begin();
    void takeUp();
    void leave();
    [[nodiscard]] bool isWalking() const { return m_walk.has_value(); }

    [[nodiscard]] const core::WalkedBook& walked() const { return m_walked; }
    [[nodiscard]] core::WalkState state() const { return stateOf(m_walked.book, m_entries); }
    // None: the book is gone through.
    [[nodiscard]] std::optional<std::size_t> here() const { return m_here; }
    [[nodiscard]] core::LeafExpectation expectation() const;
    [[nodiscard]] std::string catchwordDue() const;
    [[nodiscard]] core::LeafReading reading() const;
    [[nodiscard]] std::vector<core::BreakExplanation> explanations() const;
    [[nodiscard]] std::vector<core::CollationFinding> findingsHere() const;
    // What to look at because of a leaf lost or loose, here; what puts a misbound one right.
    [[nodiscard]] QStringList hints() const;

    void asExpected();
    void restAsExpected();
    void back();
    // True: it differs from what should be there, and the walk stays at the leaf.
    bool read(const core::LeafReading& reading);
    // Keeps what was read and stays, whether it differs or not.
    void keepReading(const core::LeafReading& reading);
    [[nodiscard]] std::optional<core::Id<core::CollationFinding>> find(core::CollationKind kind);
    void note(const core::Id<core::CollationFinding>& finding, const std::string& note);
    // The walk is over, and the collation says what came of it; a statement that somebody typed
    // is not written over.
    void finish();
    [[nodiscard]] bool keepsTypedStatement() const;

Q_SIGNALS:
    void moved();

private:
    [[nodiscard]] core::WalkPen pen();
    void goTo(std::optional<std::size_t> leaf);
    void goOn();
    bool keepRead(const core::LeafReading& reading, bool differs);
    bool keep(core::WalkEntry entry, const QString& sentence);
    [[nodiscard]] core::Collation concluded() const;

    Session& m_session;
    std::optional<core::Id<core::Job>> m_job;
    std::optional<core::Id<core::Item>> m_part;
    std::optional<core::Collation> m_collation;
    std::optional<core::JobFile> m_file;
    core::CopyRecords m_copy;
    core::WalkedBook m_walked;
    std::optional<core::Id<core::Walk>> m_walk;
    std::vector<core::WalkEntry> m_entries; // of the walk
    std::optional<std::size_t> m_here;
};

} // namespace headcap::app
