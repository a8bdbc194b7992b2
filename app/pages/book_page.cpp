#include "app/pages/book_page.h"

#include "app/form/record_choices.h"
#include "app/pages/book_measures.h"
#include "app/session/words.h"
#include "app/work/sheet_paper.h"
#include "core/custody/kept_at.h"
#include "core/report/receipt.h"

namespace headcap::app {

BookPage::BookPage(Session& session, QWidget* parent)
    : JobPage(core::Page::book, Body::scrolled, session, parent) {
    buildBook();
    buildJob();
    buildOwner();
    buildHazards();
    buildPieces();
    buildWorks();
    buildVolumes();
    buildNotices();
    buildMoves();
    buildFollowUps();
    buildAttachments();
    edits().alignLabels();
}

void BookPage::load(const core::JobFile& file) {
    m_file = file;
    const auto revision = [&](const auto& record) {
        return file.revisionOf(core::refOf(record.id));
    };
    m_book->show(file.item, revision(file.item));
    m_job->show(file.job, revision(file.job));
    m_owner->show(file.owner, revision(file.owner));
    m_works->show(file.works, file);
    m_volumes->show(file.parts, file);
    m_pieces->show(file.pieces, file);
    m_moves->show(file.moves, file);
    m_hazards->show(file.hazards, file);
    m_notices->show(file.notices, file);
    m_followUps->show(file.followUps, file);
    m_attachments->setSubject({core::refOf(file.job.id), file.job.id}, papers::subjectsOf(file));
    m_attachments->show(file.attachments, file);
    m_volumes->setVisible(file.item.nature != core::ItemNature::volume || !file.parts.empty());
}

bool BookPage::print() {
    if (m_file && edits().save()) {
        printSheet(session(), core::arrivalReceiptOf(*m_file, session().clock()), this);
    }
    return m_file.has_value();
}

bool BookPage::goTo(const core::RecordRef& ref) {
    const auto inList = [&](auto* list) {
        if (!list->goTo(ref.id)) {
            return false;
        }
        reveal(list);
        return true;
    };
    const auto inForm = [&](FormBase* form) {
        form->focusFirst();
        reveal(form);
        return true;
    };
    switch (ref.kind) {
    case core::RecordKind::item:
        return inList(m_volumes) || inForm(m_book);
    case core::RecordKind::job:
        return inForm(m_job);
    case core::RecordKind::owner:
        return inForm(m_owner);
    case core::RecordKind::work:
        return inList(m_works);
    case core::RecordKind::piece:
        return inList(m_pieces);
    case core::RecordKind::custodyMove:
        return inList(m_moves);
    case core::RecordKind::hazard:
        return inList(m_hazards);
    case core::RecordKind::notice:
        return inList(m_notices);
    case core::RecordKind::followUp:
        return inList(m_followUps);
    case core::RecordKind::attachment:
        return inList(m_attachments);
    default:
        return false;
    }
}

void BookPage::buildBook() {
    m_book = new RecordForm<core::Item>(session(), tr("Book"));
    m_book->text(tr("Author"), &core::Item::author);
    m_book->text(tr("Short title"), &core::Item::shortTitle)
        .placeholder(tr("as slips and headings name it"));
    m_book->lines(tr("Title"), &core::Item::title);
    m_book->lines(tr("Imprint"), &core::Item::imprint).placeholder(tr("place and printer"));
    m_book->value(tr("Date"), &core::Item::date);
    addFormat(*m_book);
    addSide(*m_book, tr("Height"), &core::Item::height).placeholder(tr("of the boards, 148 mm"));
    addSide(*m_book, tr("Width"), &core::Item::width);
    addSide(*m_book, tr("Thickness"), &core::Item::thickness);
    addLeafWeight(*m_book);
    m_book->usedText(tr("Language"), &core::Item::language);
    m_book->choice(tr("It is"), &core::Item::nature);
    m_book->lines(tr("Binding"), &core::Item::binding)
        .placeholder(tr("covering and structure, as it came"));
    m_book->lines(tr("Marks"), &core::Item::marks)
        .placeholder(tr("shelfmark, bookplates, inscriptions"));
    m_book->lines(tr("Note"), &core::Item::note);
    edits().watch(m_book);
    addSection(tr("The book"), m_book);
}

void BookPage::buildJob() {
    m_job = new RecordForm<core::Job>(session(), tr("Job"));
    m_job->value(tr("Received"), &core::Job::receivedOn);
    m_job->value(tr("Due"), &core::Job::dueOn);
    m_job->lines(tr("Asked for"), &core::Job::request).placeholder(tr("in the owner's words"));
    m_job->usedText(tr("For what use"), &core::Job::purpose)
        .placeholder(tr("exhibition, use, sale, keeping"));
    m_job->usedText(tr("It came in"), &core::Job::receivedAs)
        .placeholder(tr("box, wrapper, loose pieces in an envelope"));
    m_job->usedText(tr("Kept at"), &core::Job::keptAt);
    m_job->value(tr("Value"), &core::Job::value).placeholder(tr("as the owner states it"));
    m_job->choice(tr("Earlier records"), &core::Job::earlierRecords);
    m_job->lines(tr("What they say"), &core::Job::earlierRecordsNote);
    m_job->lines(tr("Note"), &core::Job::note);
    m_job->setAlso([this](const core::Job& before, const core::Job& after, core::Change& change) {
        if (const auto move = core::moveBehind(before, after, session().person(),
                                               session().clock().now(), session().ids())) {
            change.add(*move);
        }
    });
    edits().watch(m_job);
    addSection(tr("This stay in the workshop"), m_job);
}

void BookPage::buildOwner() {
    m_owner = new RecordForm<core::Owner>(session(), tr("Owner"));
    m_owner->text(tr("Name"), &core::Owner::name);
    m_owner->choice(tr("Kind"), &core::Owner::kind);
    m_owner->text(tr("To speak to"), &core::Owner::contact);
    m_owner->lines(tr("May decide"), &core::Owner::authority)
        .placeholder(tr("who, and by what right"));
    m_owner->text(tr("Telephone"), &core::Owner::telephone);
    m_owner->text(tr("Email"), &core::Owner::email);
    m_owner->lines(tr("Address"), &core::Owner::address);
    m_owner->lines(tr("Note"), &core::Owner::note);
    edits().watch(m_owner);
    addSection(tr("The owner"), m_owner);
}

} // namespace headcap::app
