#include "app/pages/report/release_panel.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/scrolled_page.h"
#include "app/look/style.h"
#include "app/pages/bench/step_words.h"
#include "app/pages/job_page.h"

namespace headcap::app {
namespace {

constexpr const char* kKey = "releaseKey";
constexpr int kMarkWidth = 7 * kGrid;
constexpr int kReasonWidth = 48 * kGrid;
constexpr int kButtonWidth = 20 * kGrid; // one column, whatever it says

QString said(const std::string& words) {
    return fromCore(words);
}

} // namespace

ReleasePanel::ReleasePanel(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_standing(new Label(Face::strong)),
      m_return(new QWidget), m_form(new RecordForm<core::HandBack>(session, tr("Return"))),
      m_giveBack(new QPushButton(tr("Give it back"))) {
    buildForm();
    auto* sheet = new QWidget;
    m_down = new QVBoxLayout(sheet);
    m_down->setContentsMargins(0, 0, kSpace, kSection);
    m_down->setSpacing(kGap);
    m_standing->setRunning();
    m_down->addWidget(m_standing);
    m_down->addWidget(m_return);
    m_down->addStretch();
    scrollIn(this, sheet);
}

void ReleasePanel::buildForm() {
    using R = core::HandBack;
    m_form->text(tr("Given to"), &R::givenTo);
    m_form->usedText(tr("How"), &R::means).placeholder(tr("by hand, by carrier"));
    m_form->value(tr("On"), &R::onDay);
    m_form->pick(tr("By"), &R::who, peopleOf(m_session));
    m_form->lines(tr("Its condition"), &R::condition).placeholder(tr("as in the report"));
    m_form->lines(tr("With it went"), &R::wentWith)
        .placeholder(tr("report, box, what was taken out"));
    m_form->text(tr("Receipt"), &R::receipt).placeholder(tr("signed by whom, on what"));
    m_form->value(tr("To object by"), &R::objectBy);
    m_form->value(tr("Next look"), &R::nextLookOn);
    m_form->lines(tr("Note"), &R::note);
    m_giveBack->setToolTip(tr("Notes the return; the job is then returned"));
    connect(m_giveBack, &QPushButton::clicked, this, &ReleasePanel::returnIt);
    auto* down = new QVBoxLayout(m_return);
    down->setContentsMargins(0, kSpace, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(new Label(Face::heading, Ink::ink, tr("The return")));
    down->addWidget(new HairRule);
    down->addWidget(m_form);
    down->addWidget(m_giveBack, 0, Qt::AlignLeft);
}

void ReleasePanel::show(const core::JobFile& file) {
    const bool isOther = !m_file || m_file->job.id != file.job.id;
    m_file = file;
    m_rows = core::releaseList(*m_file, m_session.clock());
    if (m_sheet != nullptr) {
        m_sheet->hide();
        m_sheet->deleteLater(); // a button of it may be the one that was pressed
    }
    m_sheet = new QWidget;
    m_list = new QVBoxLayout(m_sheet);
    m_list->setContentsMargins(0, 0, 0, 0);
    m_list->setSpacing(kGap);
    for (const core::ReleaseRow& row : m_rows) {
        addRow(row);
    }
    addReturned();
    m_down->insertWidget(1, m_sheet);
    const auto open =
        std::ranges::count_if(m_rows, [](const core::ReleaseRow& row) { return !row.isSettled(); });
    m_standing->setInk(open == 0 ? Ink::settled : Ink::open);
    m_standing->setText(open == 0 ? tr("Everything is settled: it may leave.")
                                  : counted(static_cast<int>(open),
                                            tr("%1 point of this list is still open."),
                                            tr("%1 points of this list are still open.")));
    const bool isGone = m_file->job.state == core::JobState::returned;
    m_return->setVisible(!isGone);
    m_giveBack->setEnabled(core::mayLeave(m_rows));
    if (isOther || !m_form->record() || isGone) {
        m_form->showDraft({.id = m_session.ids().next<core::HandBack>(),
                           .job = m_file->job.id,
                           .onDay = m_session.clock().today(),
                           .who = m_session.person(),
                           .givenTo = m_file->owner.contact.empty() ? m_file->owner.name
                                                                    : m_file->owner.contact});
    }
}

void ReleasePanel::addRow(const core::ReleaseRow& row) {
    auto* line = new QWidget;
    auto* across = new QHBoxLayout(line);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kGap);
    const bool isSettled = row.isSettled();
    auto* mark = new Label(Face::strong, isSettled ? Ink::settled : Ink::open,
                           isSettled ? QStringLiteral("●") : QStringLiteral("○"));
    mark->setAccessibleName(isSettled ? tr("settled") : tr("open"));
    mark->setFixedWidth(kMarkWidth);
    mark->setMinimumHeight(kControl);
    mark->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    across->addWidget(mark, 0, Qt::AlignTop);
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
        auto* small = new Label(Face::small, isSettled ? Ink::quiet : Ink::open, below);
        small->setWordWrap(true);
        words->addWidget(small);
    }
    across->addLayout(words, 1);
    if (!isSettled) {
        const std::string key = row.key;
        auto* why = new QLineEdit;
        // Of the leaves the number is asked, which the audit holds against those that came in.
        const bool isCount = key == "leaf_tally";
        why->setFixedWidth(kReasonWidth);
        why->setPlaceholderText(isCount ? tr("how many go out") : tr("or explained by …"));
        why->setToolTip(isCount ? tr("The number of leaves it goes back with; Enter takes it")
                                : tr("Why it may leave all the same; Enter takes it"));
        why->setAccessibleName(tr("Explain: %1").arg(said(row.asks)));
        connect(why, &QLineEdit::returnPressed, this, [this, key, why, isCount] {
            answer(key, isCount ? core::ReleaseAnswer::done : core::ReleaseAnswer::explained,
                   why->text().trimmed());
        });
        auto* button = new QPushButton(row.isByRecord          ? tr("Go to it")
                                       : key == core::kSignOff ? tr("Sign off")
                                                               : tr("Done"));
        button->setProperty(kKey, said(key));
        button->setMinimumWidth(kButtonWidth);
        button->setAccessibleName(QStringLiteral("%1: %2").arg(button->text(), said(row.asks)));
        connect(button, &QPushButton::clicked, this,
                [this, key, isByRecord = row.isByRecord, page = row.page] {
                    if (isByRecord) {
                        Q_EMIT pageAsked(page);
                    } else {
                        answer(key, core::ReleaseAnswer::done, {});
                    }
                });
        across->addWidget(button, 0, Qt::AlignTop);
        across->addWidget(why, 0, Qt::AlignTop);
    } else if (row.answer != nullptr) {
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
        m_list->addSpacing(kGap);
        m_list->addWidget(label);
    }
}

QPushButton* ReleasePanel::buttonOf(const std::string& key) const {
    for (QPushButton* button : m_sheet->findChildren<QPushButton*>()) {
        if (button->property(kKey).toString() == said(key)) {
            return button;
        }
    }
    return nullptr;
}

void ReleasePanel::focusFirst() {
    const auto buttons = m_sheet->findChildren<QPushButton*>();
    if (!buttons.isEmpty()) {
        buttons.front()->setFocus(Qt::OtherFocusReason);
    }
}

void ReleasePanel::answer(const std::string& key, core::ReleaseAnswer given, const QString& why) {
    keep(core::answerRow(*m_file, m_session.clock(), {key, given, toCore(why), m_session.person()},
                         m_session.ids()));
}

void ReleasePanel::keep(tl::expected<core::Change, core::ReleaseProblem> change) {
    if (!change) {
        m_session.say({Notice::Kind::refused, sentence(change.error())});
        return;
    }
    const QString words = fromCore(change->sentence);
    if (m_session.apply(std::move(*change))) {
        m_session.say({Notice::Kind::done, words, true});
    }
}

void ReleasePanel::returnIt() {
    QStringList labels;
    const core::HandBack back = m_form->taken(labels);
    if (FieldRow* wrong = m_form->troubled()) {
        wrong->control()->setFocus(Qt::OtherFocusReason);
        return;
    }
    keep(core::giveBack(*m_file, back, m_session.clock(), m_session.ids()));
}

} // namespace headcap::app
