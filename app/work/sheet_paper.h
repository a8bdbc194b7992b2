// A sheet of the workshop's own (a day's work, the stock) on paper, or as a PDF.
#pragma once

#include "app/report/paper_desk.h"
#include "app/session/session.h"
#include "core/report/document.h"

class QWidget;

namespace headcap::app {

// Asks for a printer.
void printSheet(Session& session, const core::Document& document, QWidget* above);
// Asks where; the name is a suggestion. Drawn by the desk.
void saveSheet(Session& session, PaperDesk& desk, const core::Document& document,
               const QString& name);

} // namespace headcap::app
