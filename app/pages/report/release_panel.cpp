#include "app/pages/report/release_panel.h"

#include <algorithm>
#include <utility>

#include <QApplication>
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
#include "app/pages/job_page.h"
#include "app/report/paper_desk.h"

namespace headcap::app {
ReleasePanel::ReleasePanel(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_desk(new PaperDesk(session, this)),
      m_standing(new Label(Face::strong)), m_return(new QWidget),
      m_form(new RecordForm<core::HandBack>(session, tr("Return"))),
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
    m_form->value(tr("To object by"), &R::objectBy)
        .placeholder(tr("until when it may be objected to: in 4 weeks"));
    m_form->value(tr("Next look"), &R::nextLookOn)
        .placeholder(tr("when it should be looked at again: in 52 weeks"));
    m_form->lines(tr("Note"), &R::note);
    m_giveBack->setToolTip(tr("Notes the return; the job is then returned"));
    connect(m_giveBack, &QPushButton::clicked, this, &ReleasePanel::returnIt);
    auto* print = new QPushButton(tr("Print the receipt …"));
    print->setToolTip(tr("On the workshop's letterhead, to be signed when it goes"));
    connect(print, &QPushButton::clicked, this, [this] { printReceipt(std::nullopt); });
    auto* save = quietButton(tr("Save it as PDF …"));
    connect(save, &QPushButton::clicked, this, [this] { saveReceipt(std::nullopt); });
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    for (QPushButton* one : {m_giveBack, print, save}) {
        ways->addWidget(one);
    }
    ways->addStretch();
    auto* down = new QVBoxLayout(m_return);
    down->setContentsMargins(0, kSpace, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(new Label(Face::heading, Ink::ink, tr("The return")));
    down->addWidget(new HairRule);
    down->addWidget(m_form);
    down->addLayout(ways);
}

void ReleasePanel::show(const core::JobFile& file) {
    const bool isOther = !m_file || m_file->job.id != file.job.id;
    m_file = file;
    const auto held = heldRow();
    m_rows = core::releaseList(*m_file, m_session.clock());
    QWidget* before = std::exchange(m_sheet, new QWidget);
    m_list = new QVBoxLayout(m_sheet);
    m_list->setContentsMargins(0, 0, 0, 0);
    m_list->setSpacing(kGap);
    for (const core::ReleaseRow& row : m_rows) {
        addRow(row);
    }
    addReturned();
    m_down->insertWidget(1, m_sheet);
    m_sheet->setVisible(true); // at once, so that it can take the focus
    if (held) {
        focusFrom(*held);
    }
    if (before != nullptr) {
        before->hide();
        before->deleteLater(); // a button of it may be the one that was pressed
    }
    const auto open =
        std::ranges::count_if(m_rows, [](const core::ReleaseRow& row) { return !row.isSettled(); });
    m_standing->setInk(open == 0 ? Ink::settled : Ink::open);
    const bool isGone = core::isListClosed(*m_file);
    m_standing->setText(standingOf(static_cast<int>(open), isGone));
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

QString ReleasePanel::standingOf(int open, bool isGone) {
    if (isGone) {
        return open == 0 ? tr("The book has gone back, and all of this list was settled.")
                         : counted(open,
                                   tr("The book has gone back, and %1 point of this list was not "
                                      "done."),
                                   tr("The book has gone back, and %1 points of this list were not "
                                      "done."));
    }
    return open == 0 ? tr("Everything is settled: it may leave.")
                     : counted(open, tr("%1 point of this list is still open."),
                               tr("%1 points of this list are still open."));
}

QPushButton* ReleasePanel::buttonOf(const std::string& key) const {
    for (QPushButton* button : m_sheet->findChildren<QPushButton*>()) {
        if (button->property(kReleaseKey).toString() == fromCore(key)) {
            return button;
        }
    }
    return nullptr;
}

void ReleasePanel::focusFirst() {
    focusFrom(0);
}

// The row that is being answered.
std::optional<std::size_t> ReleasePanel::heldRow() const {
    const QWidget* at = m_sheet == nullptr ? nullptr : QApplication::focusWidget();
    if (at == nullptr || !m_sheet->isAncestorOf(at)) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const QPushButton* button = buttonOf(m_rows[i].key);
        if (button != nullptr && button->parentWidget()->isAncestorOf(at)) {
            return i;
        }
    }
    return 0;
}

// Goes on to the next row that is open, from this one on and round; then to the return.
void ReleasePanel::focusFrom(std::size_t row) {
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        QPushButton* button = buttonOf(m_rows[(row + i) % m_rows.size()].key);
        auto* why = button == nullptr ? nullptr : button->parentWidget()->findChild<QLineEdit*>();
        if (why != nullptr) {
            const bool isField = asksCount(*why) || button->isHidden();
            (isField ? static_cast<QWidget*>(why) : button)->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
    m_form->focusFirst();
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
