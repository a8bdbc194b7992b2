// What is printed, as PDF files to be looked at: cutting plans, labels on every sheet, the stock
// list, the materials of a job.
#pragma once

#include <QDir>

namespace headcap::tests {

void printAll(const QDir& folder);

} // namespace headcap::tests
