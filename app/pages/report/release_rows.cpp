// The rows of the release list, and what has been given back.
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/pages/bench/step_words.h"
#include "app/pages/report/release_panel.h"
#include "app/work/sheet_paper.h"
#include "core/report/receipt.h"

namespace headcap::app {
namespace {

constexpr int kMarkWidth = 7 * kGrid;
constexpr int kReasonWidth = 48 * kGrid;
constexpr int kButtonWidth = 26 * kGrid; // one column, whatever it says

QString said(const std::string& words) {
    return fromCore(words);
}

} // namespace

// What is asked, and below it what the record or the answer says.
QVBoxLayout* ReleasePanel::wordsOf(const core::ReleaseRow& row) const {
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    auto* asks = new Label(Face::body, Ink::ink, said(row.asks));
    asks->setWordWrap(true);
    asks->setMinimumHeight(kControl); // in line with the mark and the button
    asks->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    words->addWidget(asks);
    QString below = said(row.finds);
    if (row.answer != nullptr && row.answer->answer != core::ReleaseAnswer::open) {
        const core::Person* who = m_file->person(row.answer->who);
        below =
            dotted({said(row.answer->why), who == nullptr ? QString{} : said(who->name),
                    row.answer->at ? timeAndDay(*row.answer->at, m_session.clock()) : QString{}});
    }
    if (!below.isEmpty()) {
        auto* small = new Label(Face::small, row.isSettled() ? Ink::quiet : Ink::open, below);
        small->setWordWrap(true);
        words->addWidget(small);
    }
    return words;
}

// Where it is explained; of the leaves the number is asked, which the audit holds against those
// that came in.
QLineEdit* ReleasePanel::reasonFor(const core::ReleaseRow& row) {
    const bool isClosed = core::isListClosed(*m_file);
    const bool isCount = row.key == "leaf_tally" && !isClosed;
    auto* why = new QLineEdit;
    why->setFixedWidth(kReasonWidth);
    why->setProperty(kReleaseCount, isCount);
    why->setPlaceholderText(isCount     ? tr("how many go out")
                            : isClosed  ? tr("not done because …")
                            : row.piece ? tr("or what became of it")
                                        : tr("or explained by …"));
    why->setToolTip(isCount ? tr("The number of leaves it goes back with; Enter takes it")
                            : tr("Why it may leave all the same; Enter takes it"));
    why->setAccessibleName(tr("Explain: %1").arg(said(row.asks)));
    connect(why, &QLineEdit::returnPressed, this, [this, key = row.key, why, isCount] {
        answer(key, isCount ? core::ReleaseAnswer::done : core::ReleaseAnswer::explained,
               why->text().trimmed());
    });
    return why;
}

QPushButton* ReleasePanel::doneButton(const core::ReleaseRow& row, const QLineEdit& why) {
    auto* button = new QPushButton(row.isByRecord              ? tr("Go to it")
                                   : row.key == core::kSignOff ? tr("Sign off")
                                   : row.piece                 ? tr("Goes back")
                                                               : tr("Done"));
    button->setProperty(kReleaseKey, said(row.key));
    button->setMinimumWidth(kButtonWidth);
    button->setAccessibleName(QStringLiteral("%1: %2").arg(button->text(), said(row.asks)));
    connect(button, &QPushButton::clicked, this,
            [this, key = row.key, &why, isByRecord = row.isByRecord, page = row.page] {
                if (isByRecord) {
                    Q_EMIT pageAsked(page);
                } else {
                    answer(key, core::ReleaseAnswer::done,
                           asksCount(why) ? why.text().trimmed() : QString{});
                }
            });
    return button;
}

void ReleasePanel::addRow(const core::ReleaseRow& row) {
    auto* line = new QWidget;
    auto* across = new QHBoxLayout(line);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kGap);
    const bool isSettled = row.isSettled();
    const bool isClosed = core::isListClosed(*m_file);
    auto* mark = new Label(Face::strong, isSettled ? Ink::settled : Ink::open,
                           isSettled ? QStringLiteral("●") : QStringLiteral("○"));
    mark->setAccessibleName(isSettled ? tr("settled") : tr("open"));
    mark->setFixedWidth(kMarkWidth);
    mark->setMinimumHeight(kControl);
    mark->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    across->addWidget(mark, 0, Qt::AlignTop);
    across->addLayout(wordsOf(row), 1);
    if (!isSettled) {
        QLineEdit* why = reasonFor(row);
        QPushButton* button = doneButton(row, *why);
        across->addWidget(button, 0, Qt::AlignTop);
        button->setVisible(!isClosed);
        across->addWidget(why, 0, Qt::AlignTop);
    } else if ((row.answer != nullptr || row.piece) && !isClosed) {
        auto* again = quietButton(tr("Open again"));
        again->setAccessibleName(tr("Open again: %1").arg(said(row.asks)));
        connect(again, &QPushButton::clicked, this,
                [this, key = row.key] { answer(key, core::ReleaseAnswer::open, {}); });
        across->addWidget(again, 0, Qt::AlignTop);
    }
    m_list->addWidget(line);
}

// What has been given back already.
void ReleasePanel::addReturned() {
    for (const core::HandBack& back : m_file->handBacks) {
        QStringList words{tr("Given back on %1 to %2").arg(fullDay(back.onDay), said(back.givenTo)),
                          said(back.condition), said(back.wentWith), said(back.receipt)};
        if (back.objectBy) {
            words << tr("to object by %1").arg(fullDay(*back.objectBy));
        }
        if (back.nextLookOn) {
            words << tr("next look %1").arg(fullDay(*back.nextLookOn));
        }
        auto* label = new Label(Face::body, Ink::settled, dotted(words));
        label->setRunning();
        auto* print = quietButton(tr("Print its receipt …"));
        connect(print, &QPushButton::clicked, this, [this, back] { printReceipt(back); });
        auto* save = quietButton(tr("Save it as PDF …"));
        connect(save, &QPushButton::clicked, this, [this, back] { saveReceipt(back); });
        auto* ways = new QHBoxLayout;
        ways->addWidget(print);
        ways->addWidget(save);
        ways->addStretch();
        m_list->addSpacing(kGap);
        m_list->addWidget(label);
        m_list->addLayout(ways);
    }
}

// As the form says it, where none is given.
core::Document ReleasePanel::receipt(const std::optional<core::HandBack>& back) {
    QStringList labels;
    return core::receiptOf(*m_file, back ? *back : m_form->taken(labels), m_session.clock());
}

void ReleasePanel::printReceipt(const std::optional<core::HandBack>& back) {
    printSheet(m_session, receipt(back), this);
}

void ReleasePanel::saveReceipt(const std::optional<core::HandBack>& back) {
    saveSheet(m_session, *m_desk, receipt(back), tr("%1 receipt").arg(said(m_file->job.number)));
}

} // namespace headcap::app
