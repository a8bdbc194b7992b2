// The book, its owner, how it came and where it is kept; works in the binding, volumes of a set,
// loose pieces, moves, hazards, what the owner was told, what is to be followed up, and the papers
// kept with it.
#pragma once

#include "app/form/record_form.h"
#include "app/form/record_list.h"
#include "app/pages/job_page.h"
#include "app/papers/attachment_list.h"

namespace headcap::app {

class BookPage : public JobPage {
    Q_OBJECT
public:
    explicit BookPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    bool goTo(const core::RecordRef& ref) override;
    // The receipt for what came in.
    bool print() override;

private:
    void buildBook();
    void buildJob();
    void buildOwner();
    void buildWorks();
    void buildVolumes();
    void buildPieces();
    void buildMoves();
    void buildHazards();
    void buildNotices();
    void buildFollowUps();
    void buildAttachments();

    RecordForm<core::Item>* m_book;
    RecordForm<core::Job>* m_job;
    RecordForm<core::Owner>* m_owner;
    RecordList<core::Work>* m_works;
    RecordList<core::Item>* m_volumes;
    RecordList<core::Piece>* m_pieces;
    RecordList<core::CustodyMove>* m_moves;
    RecordList<core::Hazard>* m_hazards;
    RecordList<core::Notice>* m_notices;
    RecordList<core::FollowUp>* m_followUps;
    papers::AttachmentList* m_attachments;
    std::optional<core::JobFile> m_file;
};

} // namespace headcap::app
