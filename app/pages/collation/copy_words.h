// What comes of the findings: the statement of this copy as the record would write it, and the word
// the owner must have before the book is taken down, with the notice that told them.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "core/collation/copy_statement.h"
#include "core/record/job_file.h"

class QPushButton;

namespace headcap::app {

class Label;

class CopyWords : public QWidget {
    Q_OBJECT
public:
    explicit CopyWords(Session& session, QWidget* parent = nullptr);

    void show(const core::JobFile& file, const core::CopyRecords& copy,
              const core::Collation& collation);
    using QWidget::show;
    [[nodiscard]] QPushButton& takeStatement() { return *m_take; }
    [[nodiscard]] QPushButton& noteTold() { return *m_told; }

Q_SIGNALS:
    // The notice has been begun; how, to whom and what they answered is still to be said.
    void noticeMade(const headcap::core::RecordRef& notice);

private:
    void take();
    void tell();
    void showOwner();

    Session& m_session;
    Label* m_statement;
    QPushButton* m_take;
    Label* m_word;
    Label* m_notice;
    QPushButton* m_told;
    std::optional<core::JobFile> m_file;
    std::optional<core::Collation> m_collation;
    core::CopyRecords m_copy;
};

// The collation with all that its findings and walks say of the copy.
[[nodiscard]] core::Collation
withStatement(core::Collation collation, const core::CopyRecords& copy, const core::Clock& clock);

} // namespace headcap::app
