#include "app/pages/proposal/proposal_paper.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrinter>

#include "app/print/print_report.h"
#include "app/report/issuing.h"
#include "app/session/words.h"
#include "core/report/compose_proposal.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("proposal_paper", text);
}

core::Document paperOf(const Session& session, const core::JobFile& file,
                       const core::Proposal& proposal) {
    return core::composeProposal(file, proposal, session.clock().today());
}

} // namespace

void printProposal(Session& session, const core::JobFile& file, const core::Proposal& proposal,
                   QWidget* above) {
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(
        QStringLiteral("%1 proposal %2").arg(fromCore(file.job.number)).arg(proposal.version));
    QPrintDialog dialog{&printer, above};
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    session.guarded([&] {
        const auto outcome = print::printReport(paperOf(session, file, proposal),
                                                photoLookup(session.stores()), printer);
        session.say({outcome.isComplete ? Notice::Kind::done : Notice::Kind::failed,
                     outcome.isComplete ? tr("The proposal is printed.")
                                        : tr("The printer stopped before the end.")});
    });
}

void saveProposal(Session& session, PaperDesk& desk, const core::JobFile& file,
                  const core::Proposal& proposal) {
    const auto path = session.prompts().fileToSave(
        tr("Save the proposal"),
        QStringLiteral("%1 proposal %2.pdf").arg(fromCore(file.job.number)).arg(proposal.version),
        tr("PDF (*.pdf)"));
    if (path) {
        session.guarded([&] {
            desk.save(paperOf(session, file, proposal), photoLookup(session.stores()), *path,
                      tr("The proposal lies at %1"));
        });
    }
}

} // namespace headcap::app
