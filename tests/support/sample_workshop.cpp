#include "tests/support/sample_workshop.h"

namespace headcap::tests {
namespace {

using std::chrono::year;

core::Day march(unsigned day) {
    return year{2031} / 3 / day;
}

core::Instant at(const char* iso) {
    return *core::instantFromIso(iso);
}

} // namespace

SampleWorkshop::SampleWorkshop() {
    store.put(core::Workshop{.id = ids.next<core::Workshop>(), .name = "The Stell Bindery"});
    orrin = store.put(core::Person{.id = ids.next<core::Person>(),
                                   .name = "M. Orrin",
                                   .initials = "MO",
                                   .role = "bookbinder"});
    store.put(core::Person{
        .id = ids.next<core::Person>(), .name = "T. Vale", .initials = "TV", .role = "apprentice"});
    settings.set(app::Setting::person, QString::fromStdString(orrin->text()));

    using State = core::JobState;
    grafting = addJob({.number = "2031-014",
                       .title = "A Booke of Grafting",
                       .date = "1612",
                       .owner = "Harrow Lane Library Trust",
                       .state = State::atTheBench,
                       .due = "2031-03-14"});
    addJob({.number = "2031-009",
            .title = "Parish accounts of Nether Wold",
            .date = "1702/1741",
            .owner = "Nether Wold Parish",
            .state = State::approved,
            .due = "2031-03-20"});
    addJob({.number = "2030-061",
            .title = "Atlas of the Inland Seas",
            .date = "1831",
            .owner = "A. Marrick",
            .kind = core::OwnerKind::privateOwner,
            .state = State::passed,
            .due = "2031-03-03"});
    addJob({.number = "2031-016",
            .title = "Forty-one pamphlets",
            .date = "1831/1848",
            .owner = "Stell & Marrow, booksellers",
            .kind = core::OwnerKind::dealer,
            .state = State::proposed});
    hymnal = addJob({.number = "2031-012",
                     .title = "Hymnal, Kell Chapel",
                     .date = "1788",
                     .owner = "Kell Chapel"});
    addJob({.number = "2031-003",
            .title = "Herbal in vellum wrapper",
            .date = "1590~",
            .owner = "E. Sandrey",
            .kind = core::OwnerKind::privateOwner,
            .state = State::reported,
            .due = "2031-03-08"});
    addJob({.number = "2029-044",
            .title = "Sermons on the Tides",
            .date = "1655",
            .owner = "Mere College",
            .state = State::returned});
    fillGrafting();
    fillProposal();
}

core::Id<core::Job> SampleWorkshop::addJob(const Given& given) {
    const auto owner = store.put(
        core::Owner{.id = ids.next<core::Owner>(), .kind = given.kind, .name = given.owner});
    const auto item = store.put(core::Item{.id = ids.next<core::Item>(),
                                           .owner = owner,
                                           .title = given.title,
                                           .date = core::BookDate{given.date},
                                           .format = "8°"});
    return store.put(core::Job{.id = ids.next<core::Job>(),
                               .number = given.number,
                               .item = item,
                               .owner = owner,
                               .state = given.state,
                               .receivedOn = year{2031} / 2 / 3,
                               .dueOn = core::dayFromIso(given.due)});
}

void SampleWorkshop::fillGrafting() {
    core::JobFile book = file(*grafting);
    book.item.author = "Thomas Ashwell";
    book.item.title =
        "A Booke of the Arte and Maner, howe to Plante and Graffe all sortes of Trees, "
        "with divers other newe practises";
    book.item.shortTitle = "A Booke of Grafting";
    book.item.imprint = "Kellbridge, for Jn. Marrow at the signe of the Plough";
    book.item.language = "English";
    book.item.height = core::Length::millimetres(184);
    book.item.width = core::Length::millimetres(131);
    book.item.thickness = core::Length::millimetres(27);
    book.item.binding = "Full calf over pasteboard, blind fillets; sewn on four cords; rebacked "
                        "once, probably about 1900.";
    book.item.marks = "Bookplate of E. Sandrey; “Tho. Pell his booke” on A1r.";
    store.put(book.item);
    book.owner.contact = "R. Hale, keeper";
    book.owner.authority = "R. Hale, up to 600 EUR; above that the trustees";
    book.owner.telephone = "01632 960 114";
    book.owner.email = "books@harrowlane.example";
    book.owner.address = "3 Harrow Lane\nKellbridge";
    store.put(book.owner);
    book.job.request = "Make it safe to be read; keep the old calf. Say whether K2 can be had.";
    book.job.purpose = "reading room";
    book.job.receivedAs = "a phase box, and one envelope";
    book.job.keptAt = "strong cupboard, shelf 2";
    book.job.value = core::Money{420'000, "EUR"};
    book.job.earlierRecords = core::EarlierRecords::noneExist;
    store.put(book.job);

    store.put(core::Work{.id = ids.next<core::Work>(),
                         .item = book.item.id,
                         .position = 1,
                         .author = "Thomas Ashwell",
                         .title = "A Booke of Grafting",
                         .leaves = "π1–I8"});
    store.put(core::Work{.id = ids.next<core::Work>(),
                         .item = book.item.id,
                         .position = 2,
                         .author = "anon.",
                         .title = "The Orchard Kalender",
                         .leaves = "K1–χ1"});
    store.put(core::Piece{.id = ids.next<core::Piece>(),
                          .job = *grafting,
                          .count = 1,
                          .what = "leather label from the spine, in two parts",
                          .keptAt = "envelope 2"});
    store.put(core::Piece{.id = ids.next<core::Piece>(),
                          .job = *grafting,
                          .count = 3,
                          .what = "slips of paper, found at E4, F2 and I1",
                          .keptAt = "envelope 2"});
    store.put(core::Hazard{.id = ids.next<core::Hazard>(),
                           .item = book.item.id,
                           .term = "arsenical_green",
                           .state = core::HazardState::suspected,
                           .place = "cover paper",
                           .method = "by eye",
                           .onDay = march(3),
                           .who = orrin});
    store.put(core::Notice{.id = ids.next<core::Notice>(),
                           .job = *grafting,
                           .subject = core::NoticeSubject::receipt,
                           .means = core::NoticeMeans::email,
                           .onDay = year{2031} / 2 / 3,
                           .who = orrin,
                           .toldTo = "R. Hale",
                           .text = "Received with its box and one envelope.",
                           .answer = "Thanked for it.",
                           .answeredOn = year{2031} / 2 / 4});
    store.put(core::Notice{.id = ids.next<core::Notice>(),
                           .job = *grafting,
                           .subject = core::NoticeSubject::hazard,
                           .means = core::NoticeMeans::telephone,
                           .onDay = march(3),
                           .who = orrin,
                           .toldTo = "R. Hale",
                           .text = "The green of the cover paper may hold arsenic; to be tested."});
    store.put(core::CustodyMove{.id = ids.next<core::CustodyMove>(),
                                .job = *grafting,
                                .at = at("2031-02-03T10:20:00Z"),
                                .who = orrin,
                                .fromPlace = "",
                                .toPlace = "strong cupboard, shelf 2",
                                .why = "intake"});
    const auto paste = store.put(core::Material{.id = ids.next<core::Material>(),
                                                .name = "wheat starch paste",
                                                .kind = core::MaterialClass::adhesivePrepared,
                                                .unit = core::Unit::gram,
                                                .shelfLifeDays = 7,
                                                .removal = "moisture"});
    const auto pasteLot = store.put(core::Lot{.id = ids.next<core::Lot>(),
                                              .number = "31-006",
                                              .material = paste,
                                              .origin = core::LotOrigin::mixed,
                                              .mixedOn = year{2031} / 2 / 26,
                                              .goodUntil = year{2031} / 3 / 12});
    const auto step = store.put(core::Step{.id = ids.next<core::Step>(),
                                           .job = *grafting,
                                           .at = at("2031-03-06T06:45:00Z"),
                                           .who = *orrin,
                                           .technique = "spine_lining",
                                           .place = "spine",
                                           .description = "New linings: first kozo, then linen",
                                           .minutes = core::Minutes{40},
                                           .setsUntil = at("2031-03-06T09:55:00Z")});
    store.put(core::MaterialUse{.id = ids.next<core::MaterialUse>(),
                                .job = *grafting,
                                .step = step,
                                .lot = pasteLot,
                                .amount = core::Amount::of(core::Mass::milligrams(3'100)),
                                .role = "adhesive"});
    fillLog(pasteLot);
    store.put(core::CollationFinding{.id = ids.next<core::CollationFinding>(),
                                     .job = *grafting,
                                     .kind = core::CollationKind::lacking,
                                     .place = "K2"});
}

} // namespace headcap::tests
