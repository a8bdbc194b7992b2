#include "app/shell/new_job_view.h"

#include <algorithm>

#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/scrolled_page.h"
#include "app/session/words.h"
#include "core/custody/job_states.h"
#include "core/record/job_file.h"

namespace headcap::app {

NewJobView::NewJobView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_owner(new RecordForm<core::Owner>(session, tr("Owner"))),
      m_book(new RecordForm<core::Item>(session, tr("Book"))),
      m_job(new RecordForm<core::Job>(session, tr("Job"))) {
    auto* down = scrolledPage(this, title(),
                              tr("Only what is known now. Everything can be said later."), 1000);
    buildForms(*down);
    auto* take = new QPushButton(tr("Take it in"));
    take->setDefault(true);
    take->setToolTip(tr("Makes the job and opens it (Enter)"));
    connect(take, &QPushButton::clicked, this, &NewJobView::takeIn);
    down->addSpacing(kSection);
    down->addWidget(take, 0, Qt::AlignLeft);
    down->addStretch(1);
    startAnew();
}

void NewJobView::buildForms(QVBoxLayout& down) {
    m_before = &m_book
                    ->bind(
                        tr("Seen before"), new QLineEdit, true,
                        [](const core::Item&) { return QString{}; },
                        [](core::Item&, const QString&) { return QString{}; })
                    .placeholder(tr("a book that has been here: its title, or leave this empty"))
                    .searched([this](const QString& typed) {
                        m_offered = booksLike(m_session, typed);
                        return wordsOf(m_offered);
                    });
    m_book->text(tr("Title"), &core::Item::title);
    m_book->text(tr("Author"), &core::Item::author);
    m_book->value(tr("Date"), &core::Item::date);
    m_book->choice(tr("It is"), &core::Item::nature);
    m_owner->text(tr("Name"), &core::Owner::name)
        .placeholder(tr("one who is known, or a new one"))
        .searched([this](const QString& typed) {
            const auto found = ownersLike(m_session, typed);
            m_owners.insert(m_owners.end(), found.begin(), found.end());
            return wordsOf(found);
        });
    m_owner->choice(tr("Kind"), &core::Owner::kind).tip(tr("Of a new owner"));
    m_job->value(tr("Received"), &core::Job::receivedOn);
    m_job->value(tr("Due"), &core::Job::dueOn);
    m_job->lines(tr("Asked for"), &core::Job::request).placeholder(tr("in the owner's words"));
    m_job->usedText(tr("It came in"), &core::Job::receivedAs)
        .placeholder(tr("box, wrapper, loose pieces in an envelope"));
    m_job->usedText(tr("Kept at"), &core::Job::keptAt);

    const std::pair<QString, FormBase*> sections[] = {
        {tr("The book"), m_book}, {tr("The owner"), m_owner}, {tr("This stay"), m_job}};
    int widest = 0;
    for (const auto& [heading, form] : sections) {
        widest = std::max(widest, form->widestLabel());
    }
    for (const auto& [heading, form] : sections) {
        form->alignLabels(widest);
        down.addSpacing(kSection);
        down.addWidget(new Label(Face::heading, Ink::ink, heading));
        down.addWidget(new HairRule);
        down.addSpacing(kGap);
        down.addWidget(form);
    }
}

void NewJobView::startAnew() {
    auto& ids = m_session.ids();
    const auto owner = ids.next<core::Owner>();
    const auto item = ids.next<core::Item>();
    m_owner->showDraft({.id = owner});
    m_book->showDraft({.id = item, .owner = owner});
    m_job->showDraft({.id = ids.next<core::Job>(),
                      .item = item,
                      .owner = owner,
                      .receivedOn = m_session.clock().today()});
}

// Enter in a field of one line takes the book in.
void NewJobView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        takeIn();
        return;
    }
    View::keyPressEvent(event);
}

bool NewJobView::enter(const Destination&) {
    // The first book of a workshop can't have been here before.
    const bool isAnyKnown = !booksLike(m_session, {}).empty();
    m_before->setVisible(isAnyKnown);
    const FieldRow* first = isAnyKnown ? m_before : m_book->rowLabelled(tr("Title"));
    first->control()->setFocus(Qt::TabFocusReason);
    return true;
}

// One who is known: as offered, or the only one of that name.
std::optional<core::Id<core::Owner>> NewJobView::ownerFor(core::Change& change) {
    QStringList labels;
    const core::Owner typed = m_owner->taken(labels);
    FieldRow& row = *m_owner->rows().front();
    const auto refuse = [&row](const QString& why) {
        row.setError(why);
        row.control()->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    };
    if (typed.name.empty()) {
        return refuse(tr("Whose is it? A book is only taken in for somebody."));
    }
    const auto offered = std::ranges::find(m_owners, fromCore(typed.name), &Choice::words);
    if (offered != m_owners.end()) {
        if (const auto id = core::Uuid::fromText(offered->key)) {
            return core::Id<core::Owner>{*id};
        }
    }
    const auto known = m_session.records().allWith(core::RecordKind::owner, "name", typed.name);
    if (known.size() > 1) {
        return refuse(
            tr("%1 owners have this name: choose one of those offered (Down).").arg(known.size()));
    }
    if (!known.empty()) {
        return std::get<core::Owner>(known.front().record).id;
    }
    change.add(typed);
    return typed.id;
}

std::optional<core::Stored<core::Item>> NewJobView::bookBefore() const {
    if (m_before->text().trimmed().isEmpty()) {
        return std::nullopt;
    }
    // Of what was offered; or of what is found by what was typed past the offers.
    auto key = keyOf(m_offered, m_before->text());
    if (!key) {
        key = keyOf(booksLike(m_session, m_before->text()), m_before->text());
    }
    const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
    return id ? core::find(m_session.records(), core::Id<core::Item>{*id}) : std::nullopt;
}

bool NewJobView::takeIn() {
    QStringList labels;
    core::Change change;
    const QString seenBefore = m_before->text();
    core::Item item = m_book->taken(labels);
    m_before->rewrite(seenBefore);
    core::Job job = m_job->taken(labels);
    for (FormBase* form : {static_cast<FormBase*>(m_book), static_cast<FormBase*>(m_job)}) {
        if (FieldRow* row = form->troubled()) {
            row->control()->setFocus(Qt::OtherFocusReason);
            return false;
        }
    }
    bool isMade = false;
    m_session.guarded([&] {
        const auto before = bookBefore();
        if (before) {
            item = before->record;
            job.item = item.id;
            job.owner = item.owner;
        } else if (!seenBefore.trimmed().isEmpty()) {
            m_before->setError(notAmongThem());
            return;
        } else if (const auto owner = ownerFor(change)) {
            item.owner = *owner;
            job.owner = *owner;
            change.add(item);
        } else {
            return;
        }
        const auto year = m_session.clock().today().year();
        const auto number =
            core::nextJobNumber(m_session.records().greatest(core::RecordKind::job, "number",
                                                             core::jobNumberPrefix(year)),
                                year);
        if (!number) {
            m_session.say({Notice::Kind::refused, tr("This year's job numbers are used up.")});
            return;
        }
        job.number = *number;
        change.add(job);
        change.sentence = toCore(
            tr("Taken in: %1, %2").arg(fromCore(job.number), fromCore(core::headingOf(item))));
        isMade = m_session.apply(std::move(change));
    });
    if (isMade) {
        startAnew();
        Q_EMIT goAsked({.view = ViewId::job, .job = job.id, .page = core::Page::book});
    }
    return isMade;
}

} // namespace headcap::app
