// A version of the proposal on the workshop's letterhead: printed, or written as a PDF/A file.
#pragma once

#include "app/report/paper_desk.h"
#include "app/session/session.h"
#include "core/record/job_file.h"

class QWidget;

namespace headcap::app {

void printProposal(Session& session, const core::JobFile& file, const core::Proposal& proposal,
                   QWidget* above);
void saveProposal(Session& session, PaperDesk& desk, const core::JobFile& file,
                  const core::Proposal& proposal);

} // namespace headcap::app
