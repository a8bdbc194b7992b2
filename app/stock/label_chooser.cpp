#include "app/stock/label_chooser.h"

#include <algorithm>

#include <QComboBox>
#include <QHBoxLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/stock/label_preview.h"
#include "app/stock/label_words.h"
#include "app/stock/plain_form.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {
namespace {

QWidget* sheetChoice() {
    auto* box = new QComboBox;
    for (const print::LabelSheet& sheet : print::labelSheets()) {
        box->addItem(QString::fromUtf8(sheet.name));
    }
    return box;
}

} // namespace

LabelChooser::LabelChooser(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_form(new PlainForm),
      m_numbers(
          &m_form->line(tr("Labels for"), tr("lots and jobs: 26-014, 26-020, 2026-003"), true)),
      m_sheet(&m_form->control(tr("On"), sheetChoice())),
      m_from(&m_form->line(tr("From label"), tr("1, or the first that is left on the sheet"))),
      m_preview(new LabelPreview), m_closeUp(new LabelCloseUp),
      m_print(new QPushButton(tr("Print the labels"))),
      m_test(quietButton(tr("Print a test page"),
                         tr("The outlines of the labels alone, with a rule of 100 mm"))) {
    auto* measure = new Label(
        Face::small, Ink::quiet,
        tr("Sizes are as commonly sold; sheets and printers differ by a millimetre or more. Print "
           "the test page on plain paper and hold it against the sheet before the first labels."));
    measure->setRunning();
    connect(m_test, &QPushButton::clicked, this, &LabelChooser::printTest);
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kSpace);
    ways->addWidget(m_print);
    ways->addWidget(m_test);
    ways->addStretch(1);
    auto* left = new QVBoxLayout;
    left->setSpacing(kGap);
    left->addWidget(m_form);
    left->addLayout(ways);
    left->addWidget(measure);
    left->addSpacing(kGap);
    left->addWidget(m_closeUp);
    left->addStretch(1);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kSection);
    across->addLayout(left, 1);
    across->addWidget(m_preview, 0, Qt::AlignTop);
    connect(m_form, &FormBase::edited, this, &LabelChooser::compose);
    connect(m_print, &QPushButton::clicked, this, &LabelChooser::print);
    compose();
}

void LabelChooser::refresh() {
    m_session.guarded([this] { m_shelf = *core::shelfInBrief(m_session.records()); });
    compose();
}

void LabelChooser::choose(const QString& numbers) {
    m_numbers->rewrite(numbers);
    compose();
}

const print::LabelSheet& LabelChooser::sheet() const {
    return print::labelSheets()[static_cast<std::size_t>(std::max(0, m_sheet->text().toInt()))];
}

int LabelChooser::from() const {
    return std::clamp(m_from->text().trimmed().toInt(), 1, sheet().count()) - 1;
}

std::optional<print::LabelWords> LabelChooser::wordsFor(const QString& number) const {
    if (const core::Lot* lot = m_shelf.numbered(toCore(number))) {
        const auto mixer =
            lot->mixedBy ? core::find(m_session.records(), *lot->mixedBy) : std::nullopt;
        return labelOf(*lot, m_shelf.material(lot->material),
                       mixer ? fromCore(mixer->record.name) : QString{});
    }
    const auto job = m_session.stores().jobs.numbered(toCore(number));
    if (!job) {
        return std::nullopt;
    }
    print::LabelWords label{.number = fromCore(job->number),
                            .title = fromCore(job->title),
                            .lines = {fromCore(job->owner)}};
    if (const auto file = core::loadJobFile(m_session.records(), job->id)) {
        addJob(label, *file);
    }
    return label;
}

void LabelChooser::compose() {
    m_labels.clear();
    QStringList unknown;
    m_session.guarded([&] {
        QString text = m_numbers->text();
        text.replace(QLatin1Char(';'), QLatin1Char(','));
        for (const QString& part : text.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
            const QString number = part.trimmed();
            if (auto label = number.isEmpty() ? std::nullopt : wordsFor(number)) {
                m_labels.push_back(std::move(*label));
            } else if (!number.isEmpty()) {
                unknown << number;
            }
        }
    });
    m_numbers->setError(
        unknown.isEmpty()
            ? QString{}
            : tr("No lot or job has the number %1.").arg(unknown.join(QStringLiteral(", "))));
    QStringList cut;
    for (const print::LabelWords& label : m_labels) {
        if (!print::standsWhole(label, sheet())) {
            cut << label.number;
        }
    }
    m_sheet->setError(cut.isEmpty()
                          ? QString{}
                          : tr("Too small for all that must be read on %1: take larger labels.")
                                .arg(cut.join(QStringLiteral(", "))));
    m_print->setEnabled(!m_labels.empty());
    m_preview->show(sheet(), m_labels, from());
    m_closeUp->show(sheet(), m_labels.empty() ? std::nullopt : std::optional{m_labels.front()});
}

void LabelChooser::printTest() {
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(tr("Test page of labels"));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() == QDialog::Accepted) {
        print::printTestPage(printer, sheet());
    }
}

bool LabelChooser::print() {
    if (m_labels.empty()) {
        return false;
    }
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(tr("Labels"));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() == QDialog::Accepted) {
        print::printLabels(printer, sheet(), m_labels, from());
        m_session.say({Notice::Kind::done,
                       counted(static_cast<int>(m_labels.size()), tr("%1 label sent to be printed"),
                               tr("%1 labels sent to be printed"))});
    }
    return true;
}

} // namespace headcap::app
