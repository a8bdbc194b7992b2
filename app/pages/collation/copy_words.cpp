#include "app/pages/collation/copy_words.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

const core::Notice* latestTold(const core::JobFile& file) {
    const core::Notice* found = nullptr;
    for (const core::Notice& notice : file.notices) {
        if (notice.subject == core::NoticeSubject::collation &&
            (found == nullptr || found->onDay <= notice.onDay)) {
            found = &notice;
        }
    }
    return found;
}

} // namespace

core::Collation withStatement(core::Collation collation, const core::CopyRecords& copy,
                              const core::Clock& clock) {
    const core::CopyTally tally = tallyOf(copy);
    collation.statement = statementOf(copy);
    if (!copy.walks.empty()) {
        collation.method = methodOf(copy, clock);
        collation.notExamined = notExamined(copy);
    }
    collation.leavesCalledFor = tally.leavesCalledFor.value_or(collation.leavesCalledFor);
    collation.leavesPresent = tally.leavesPresent().value_or(collation.leavesPresent);
    if (!copy.plates.empty()) {
        collation.platesCalledFor = tally.platesCalledFor;
        collation.platesPresent = tally.platesPresent;
    }
    return collation;
}

CopyWords::CopyWords(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_statement(new Label(Face::formula)),
      m_take(new QPushButton(tr("Take it as the statement"))), m_word(new Label(Face::body)),
      m_notice(new Label(Face::small, Ink::quiet)),
      m_told(new QPushButton(tr("The owner has been told"))) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    for (Label* label : {m_statement, m_word, m_notice}) {
        label->setRunning();
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    m_statement->setAccessibleName(tr("Statement of this copy"));
    m_word->setAccessibleName(tr("What the owner must be told"));
    m_notice->setAccessibleName(tr("When the owner was told"));
    m_take->setToolTip(tr("Writes statement, tally and how it was established from the findings; "
                          "it can be rewritten, and undone"));
    m_told->setToolTip(tr("Begins the notice with these words; how and to whom is said there"));
    down->addWidget(m_statement);
    down->addWidget(m_take, 0, Qt::AlignLeft);
    down->addSpacing(kGap);
    down->addWidget(m_word);
    down->addWidget(m_notice);
    down->addWidget(m_told, 0, Qt::AlignLeft);
    connect(m_take, &QPushButton::clicked, this, &CopyWords::take);
    connect(m_told, &QPushButton::clicked, this, &CopyWords::tell);
}

void CopyWords::show(const core::JobFile& file, const core::CopyRecords& copy,
                     const core::Collation& collation) {
    m_file = file;
    m_copy = copy;
    m_collation = collation;
    const bool isKept = std::ranges::any_of(
        file.collations, [&](const core::Collation& one) { return one.id == collation.id; });
    m_statement->setText(fromCore(statementOf(copy)));
    m_take->setVisible(isKept && lookedAt(copy) != core::LookedAt::notAtAll &&
                       withStatement(collation, copy, m_session.clock()) != collation);
    showOwner();
}

void CopyWords::showOwner() {
    const std::string word = wordToOwner(m_copy);
    const core::Notice* told = latestTold(*m_file);
    m_word->setVisible(!word.empty());
    m_word->setText(tr("For the owner: %1").arg(fromCore(word)));
    m_told->setVisible(!word.empty() && told == nullptr);
    m_notice->setVisible(!word.empty());
    m_notice->setText(told == nullptr
                          ? tr("The owner has not been told.")
                          : dotted({tr("Told %1, %2")
                                        .arg(shortDay(told->onDay, m_session.clock().today()),
                                             words(told->means)),
                                    fromCore(told->toldTo), fromCore(told->answer)}));
}

void CopyWords::take() {
    core::Change change{.sentence = toCore(tr("Statement of this copy written from its findings"))};
    change.update(withStatement(*m_collation, m_copy, m_session.clock()),
                  m_file->revisionOf(core::refOf(m_collation->id)));
    m_session.apply(std::move(change));
}

void CopyWords::tell() {
    const core::Notice notice{.id = m_session.ids().next<core::Notice>(),
                              .job = m_file->job.id,
                              .subject = core::NoticeSubject::collation,
                              .onDay = m_session.clock().today(),
                              .who = m_session.person(),
                              .toldTo = m_file->owner.name,
                              .text = wordToOwner(m_copy)};
    core::Change change{.sentence = toCore(tr("The owner told what the collation shows"))};
    change.add(notice);
    if (m_session.apply(std::move(change))) {
        Q_EMIT noticeMade(core::refOf(notice.id));
    }
}

} // namespace headcap::app
