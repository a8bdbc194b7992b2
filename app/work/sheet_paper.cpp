#include "app/work/sheet_paper.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrinter>

#include "app/print/print_report.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("sheet_paper", text);
}

} // namespace

void printSheet(Session& session, const core::Document& document, QWidget* above) {
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(fromCore(document.title + ", " + document.subtitle));
    QPrintDialog dialog{&printer, above};
    if (dialog.exec() == QDialog::Accepted) {
        session.guarded([&] { (void)print::printReport(document, {}, printer); });
    }
}

void saveSheet(Session& session, PaperDesk& desk, const core::Document& document,
               const QString& name) {
    const auto path = session.prompts().fileToSave(tr("Save as PDF"), name + QStringLiteral(".pdf"),
                                                   tr("PDF (*.pdf)"));
    if (path) {
        desk.save(document, {}, *path, tr("It lies at %1"));
    }
}

} // namespace headcap::app
