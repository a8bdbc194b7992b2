// The attachments of a job, or of one record: any file, kept like a photograph by its SHA-256.
// Files come in by the file dialog or by being dropped here; each says which record it belongs to,
// and opens with the system's own program.
#pragma once

#include "app/form/record_list.h"
#include "app/papers/file_intake.h"
#include "app/papers/subjects.h"

namespace headcap::app::papers {

class AttachmentList : public RecordList<core::Attachment> {
    Q_OBJECT
public:
    AttachmentList(Session& session, PageEdits& edits, const Words& words,
                   QWidget* parent = nullptr);

    // New files belong to this record until they are given to another of those offered.
    void setSubject(const Subject& subject, std::vector<Choice> subjects);
    // Takes these files in.
    void attach(const QStringList& paths);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void buildForm();
    void ask();
    void openCurrent();
    void record(const IntakeResult& result, const Subject& subject);
    [[nodiscard]] RowWords rowOf(const core::Attachment& attachment) const;

    Session& m_session;
    FileIntake m_intake;
    QPushButton* m_stop;
    std::optional<Subject> m_subject;
    std::vector<Choice> m_subjects;
};

} // namespace headcap::app::papers
