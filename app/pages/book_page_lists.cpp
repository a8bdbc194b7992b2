// The lists of the book page.
#include "app/form/record_choices.h"
#include "app/pages/book_measures.h"
#include "app/pages/book_page.h"
#include "app/session/words.h"
#include "core/custody/follow_ups.h"
#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/custody/kept_at.h"

namespace headcap::app {

void BookPage::buildWorks() {
    m_works = new RecordList<core::Work>(
        session(), edits(),
        {tr("Works in this binding"), tr("Add a work"),
         tr("Where several works are bound together, each has its line here.")},
        tr("Work"));
    auto& form = m_works->form();
    form.value(tr("Place in it"), &core::Work::position);
    form.text(tr("Leaves"), &core::Work::leaves).placeholder(tr("where it stands: A1–K8"));
    form.text(tr("Author"), &core::Work::author);
    form.value(tr("Date"), &core::Work::date);
    form.lines(tr("Title"), &core::Work::title);
    form.text(tr("Imprint"), &core::Work::imprint);
    form.lines(tr("Note"), &core::Work::note);
    m_works->describe = [](const core::Work& work) {
        return RowWords{.mark = QString::number(work.position),
                        .title = fromCore(work.title),
                        .detail = dotted({fromCore(work.author), fromCore(work.imprint)}),
                        .right = fromCore(work.leaves),
                        .isBookTitle = true};
    };
    m_works->make = [this]() -> std::optional<core::Work> {
        return core::Work{.id = session().ids().next<core::Work>(),
                          .item = m_file->item.id,
                          .position = static_cast<std::int64_t>(m_file->works.size()) + 1};
    };
    addSection(m_works);
}

void BookPage::buildVolumes() {
    m_volumes = new RecordList<core::Item>(
        session(), edits(),
        {tr("Volumes and pieces of the set"), tr("Add a volume"),
         tr("Each volume of a set, or each small thing of a batch, has its line here.")},
        tr("Volume"));
    auto& form = m_volumes->form();
    form.value(tr("Place in it"), &core::Item::position);
    form.text(tr("Called"), &core::Item::volumeLabel).placeholder(tr("vol. 2"));
    form.lines(tr("Title"), &core::Item::title);
    form.value(tr("Date"), &core::Item::date);
    addFormat(form);
    addSide(form, tr("Height"), &core::Item::height);
    addSide(form, tr("Width"), &core::Item::width);
    addSide(form, tr("Thickness"), &core::Item::thickness);
    form.lines(tr("Binding"), &core::Item::binding);
    form.lines(tr("Note"), &core::Item::note);
    m_volumes->describe = [](const core::Item& item) {
        return RowWords{.mark = QString::number(item.position),
                        .title = dotted({fromCore(item.volumeLabel), fromCore(item.title)}),
                        .detail = fromCore(item.binding),
                        .right = item.date ? fromCore(core::toText(*item.date)) : QString{},
                        .isBookTitle = true};
    };
    m_volumes->make = [this]() -> std::optional<core::Item> {
        return core::Item{.id = session().ids().next<core::Item>(),
                          .owner = m_file->item.owner,
                          .partOf = m_file->item.id,
                          .position = static_cast<std::int64_t>(m_file->parts.size()) + 1};
    };
    addSection(m_volumes);
}

void BookPage::buildPieces() {
    m_pieces = new RecordList<core::Piece>(
        session(), edits(),
        {tr("What came with it"), tr("Add a piece"),
         tr("Boxes, wrappers, fragments and loose pieces, counted when they come in, so that every "
            "one can be handed back.")},
        tr("Piece"));
    auto& form = m_pieces->form();
    form.value(tr("How many"), &core::Piece::count);
    form.usedText(tr("Kept at"), &core::Piece::keptAt).placeholder(tr("envelope 2"));
    form.lines(tr("What"), &core::Piece::what).placeholder(tr("loose plates, a label, a box"));
    form.text(tr("At return"), &core::Piece::returned).placeholder(tr("what became of it"));
    m_pieces->describe = [](const core::Piece& piece) {
        return RowWords{.mark = QString::number(piece.count),
                        .title = fromCore(piece.what),
                        .detail = fromCore(piece.returned),
                        .right = fromCore(piece.keptAt)};
    };
    m_pieces->make = [this]() -> std::optional<core::Piece> {
        return core::Piece{session().ids().next<core::Piece>(), m_file->job.id};
    };
    addSection(m_pieces);
}

void BookPage::buildMoves() {
    m_moves = new RecordList<core::CustodyMove>(
        session(), edits(),
        {tr("Moves"), tr("Add a move"),
         tr("Every move of the book, with who moved it. Change “Kept at” above, or add one here.")},
        tr("Move"));
    auto& form = m_moves->form();
    form.usedText(tr("From"), &core::CustodyMove::fromPlace);
    form.usedText(tr("To"), &core::CustodyMove::toPlace);
    form.pick(tr("Moved by"), &core::CustodyMove::who, peopleOf(session()));
    form.text(tr("Why"), &core::CustodyMove::why);
    form.setAlso(
        [this](const core::CustodyMove&, const core::CustodyMove& move, core::Change& change) {
            if (const auto job = core::jobAfterMove(*m_file, move)) {
                change.update(*job, m_file->revisionOf(core::refOf(job->id)));
            }
        });
    m_moves->describe = [this](const core::CustodyMove& move) {
        const core::Person* who = m_file->person(move.who);
        const core::Clock& clock = session().clock();
        return RowWords{
            .mark = shortDay(clock.dayOf(move.at), clock.today()),
            .title = move.fromPlace.empty()
                         ? tr("to %1").arg(fromCore(move.toPlace))
                         : tr("%1 to %2").arg(fromCore(move.fromPlace), fromCore(move.toPlace)),
            .detail =
                dotted({who != nullptr ? fromCore(who->name) : QString{}, fromCore(move.why)}),
            .right = clockTime(move.at)};
    };
    m_moves->make = [this]() -> std::optional<core::CustodyMove> {
        return core::CustodyMove{.id = session().ids().next<core::CustodyMove>(),
                                 .job = m_file->job.id,
                                 .at = session().clock().now(),
                                 .who = session().person(),
                                 .fromPlace = m_file->job.keptAt};
    };
    addSection(m_moves);
}

void BookPage::buildHazards() {
    m_hazards = new RecordList<core::Hazard>(
        session(), edits(),
        {tr("Hazards"), tr("Add a hazard"),
         tr("What could harm whoever handles it: pigments, old insecticides, mould. A look that "
            "found nothing is not a clearance.")},
        tr("Hazard"));
    auto& form = m_hazards->form();
    form.term(tr("Hazard"), &core::Hazard::term, hazardTerms());
    form.choice(tr("State"), &core::Hazard::state);
    form.text(tr("Where"), &core::Hazard::place).placeholder(tr("cover paper, edges, label"));
    form.text(tr("How tested"), &core::Hazard::method);
    form.value(tr("On"), &core::Hazard::onDay);
    form.pick(tr("By"), &core::Hazard::who, peopleOf(session()));
    form.lines(tr("Note"), &core::Hazard::note);
    m_hazards->describe = [](const core::Hazard& hazard) {
        const bool isOpen = core::stillWarns(hazard);
        return RowWords{.title = fromCore(core::hazardName(hazard.term)),
                        .detail = dotted({fromCore(hazard.place), fromCore(hazard.method)}),
                        .right = fromCore(core::standingOf(hazard)),
                        .rightInk = isOpen ? Ink::open : Ink::settled};
    };
    m_hazards->make = [this]() -> std::optional<core::Hazard> {
        return core::Hazard{.id = session().ids().next<core::Hazard>(),
                            .item = m_file->item.id,
                            .who = session().person()};
    };
    m_hazards->list().setMarkWidth(0);
    addSection(m_hazards);
}

void BookPage::buildNotices() {
    m_notices = new RecordList<core::Notice>(
        session(), edits(),
        {tr("What the owner was told"), tr("Add a notice"),
         tr("Each thing the owner was told, how, and what they answered. Tell them of anything "
            "lacking before the book is taken down.")},
        tr("Notice"));
    auto& form = m_notices->form();
    form.choice(tr("About"), &core::Notice::subject);
    form.choice(tr("How"), &core::Notice::means);
    form.value(tr("On"), &core::Notice::onDay);
    form.text(tr("Told to"), &core::Notice::toldTo);
    form.lines(tr("Told"), &core::Notice::text);
    form.lines(tr("Answer"), &core::Notice::answer);
    form.value(tr("Answered on"), &core::Notice::answeredOn);
    form.pick(tr("By"), &core::Notice::who, peopleOf(session()));
    m_notices->describe = [this](const core::Notice& notice) {
        const core::Day today = session().clock().today();
        return RowWords{
            .mark = shortDay(notice.onDay, today),
            .title = fromCore(notice.text),
            .detail = dotted({words(notice.subject), words(notice.means), fromCore(notice.toldTo)}),
            .right =
                notice.answer.empty() && !notice.answeredOn ? tr("no answer yet") : tr("answered"),
            .rightInk = notice.answer.empty() && !notice.answeredOn ? Ink::open : Ink::settled};
    };
    m_notices->make = [this]() -> std::optional<core::Notice> {
        return core::Notice{.id = session().ids().next<core::Notice>(),
                            .job = m_file->job.id,
                            .onDay = session().clock().today(),
                            .who = session().person(),
                            .toldTo = m_file->owner.contact};
    };
    m_notices->list().setMarkWidth(96);
    addSection(m_notices);
}

void BookPage::buildFollowUps() {
    using R = core::FollowUp;
    m_followUps = new RecordList<R>(
        session(), edits(),
        {tr("To follow up"), tr("Add a follow-up"),
         tr("What is to be looked at again, and when: a lost leaf still sought, a look after a "
            "year. It comes back to the worklist on its day, long after the book has gone home.")},
        tr("Follow-up"));
    auto& form = m_followUps->form();
    form.lines(tr("What"), &R::what).placeholder(tr("ask again for the lost leaf"));
    form.value(tr("Due"), &R::dueOn);
    form.pick(tr("Who"), &R::who, peopleOf(session()));
    form.lines(tr("Why"), &R::why);
    form.value(tr("Done on"), &R::doneOn);
    form.text(tr("Outcome"), &R::outcome);
    m_followUps->describe = [this](const R& followUp) {
        const core::Day today = session().clock().today();
        const bool isOverdue = core::isOverdue(followUp, today);
        return RowWords{.mark = followUp.dueOn ? shortDay(*followUp.dueOn, today) : QString{},
                        .title = fromCore(followUp.what),
                        .detail = dotted({fromCore(followUp.why), fromCore(followUp.outcome)}),
                        .right = followUp.doneOn ? tr("done")
                                 : isOverdue     ? tr("overdue")
                                                 : tr("open"),
                        .rightInk = followUp.doneOn ? Ink::settled
                                    : isOverdue     ? Ink::must
                                                    : Ink::open};
    };
    m_followUps->make = [this]() -> std::optional<R> {
        return R{.id = session().ids().next<R>(), .job = m_file->job.id, .who = session().person()};
    };
    m_followUps->list().setMarkWidth(96);
    addSection(m_followUps);
}

void BookPage::buildAttachments() {
    m_attachments = new papers::AttachmentList(
        session(), edits(),
        {tr("Papers kept with it"), tr("Attach files …"),
         tr("Letters, invoices, older reports, analyses: any file. Choose it, or drop it here; it "
            "is kept unaltered.")});
    addSection(m_attachments);
}

} // namespace headcap::app
