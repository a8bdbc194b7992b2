#include "tests/faults/day_of_work.h"

#include <stdexcept>

namespace headcap::test {

using namespace core;

namespace {

const std::string kLotNumber = "31-001";

} // namespace

Bench setUpBench(Stores stores, IdSource& ids, const Clock& clock) {
    const Person person{.id = ids.next<Person>(), .name = "Una Thole"};
    const Owner owner{.id = ids.next<Owner>(), .name = "Kell Chapel"};
    const Item item{.id = ids.next<Item>(), .owner = owner.id, .title = "Hymnal"};
    const Job job{.id = ids.next<Job>(),
                  .number = "2031-001",
                  .item = item.id,
                  .owner = owner.id,
                  .receivedOn = clock.today()};
    const Material paste{.id = ids.next<Material>(), .name = "Paste", .unit = Unit::gram};
    const Lot lot{.id = ids.next<Lot>(), .number = kLotNumber, .material = paste.id};
    // More than any day uses.
    const LedgerEntry received{.id = ids.next<LedgerEntry>(),
                               .lot = lot.id,
                               .at = clock.now(),
                               .amount = Amount::of(Mass::grams(1'000'000))};
    Change change{.sentence = "Set up"};
    change.add(person).add(owner).add(item).add(job).add(paste).add(lot).add(received);
    if (!stores.records.apply(change)) {
        throw std::runtime_error("the bench could not be set up");
    }
    return {person.id, job.id, lot.id};
}

std::optional<Bench> benchOf(Stores stores) {
    const auto people = all<Person>(stores.records);
    const auto jobs = all<Job>(stores.records);
    // By its number: a lot mixed after the clock was set back has the lower key.
    const auto lots = typed<Lot>(stores.records.allWith(RecordKind::lot, "number", kLotNumber));
    if (people.empty() || jobs.empty() || lots.empty()) {
        return std::nullopt;
    }
    return Bench{people[0].record.id, jobs[0].record.id, lots[0].record.id};
}

std::optional<RecordRef> DayOfWork::next() {
    switch (std::uniform_int_distribution{0, 9}(m_chance)) {
    case 0:
    case 1:
    case 2:
        return logStep();
    case 3:
        return importPhotograph();
    case 4:
        return attachPaper();
    case 5:
        return mixLot();
    case 6:
        return issueReport();
    case 7:
        return undoAndRedo();
    default:
        return noteFinding();
    }
}

std::optional<RecordRef> DayOfWork::addOnly() {
    switch (std::uniform_int_distribution{0, 3}(m_chance)) {
    case 0:
        return importPhotograph();
    case 1:
        return mixLot();
    case 2:
        return noteFinding();
    default:
        return logStep();
    }
}

std::optional<RecordRef> DayOfWork::must(const Change& change, RecordRef ref) {
    Change mine = change;
    mine.who = m_bench.person;
    if (const auto made = m_stores.records.apply(mine); !made) {
        throw std::runtime_error("refused: " + change.sentence + ": " + made.error().detail);
    }
    return ref;
}

std::string DayOfWork::words(std::size_t count) {
    static constexpr const char* kWords[] = {"paste", "spine", "leaf",   "guard", "tissue",
                                             "calf",  "sewn",  "washed", "hinge", "board"};
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        text += kWords[std::uniform_int_distribution<std::size_t>{0, 9}(m_chance)];
        text += ' ';
    }
    return text;
}

Digest DayOfWork::keep(FileStore::Shelf shelf) {
    const std::string bytes = words(2'000) + m_ids.nextUuid().text();
    return m_stores.files.put(shelf, std::as_bytes(std::span{bytes}), ".jpg");
}

std::optional<RecordRef> DayOfWork::logStep() {
    const Step step{.id = m_ids.next<Step>(),
                    .job = m_bench.job,
                    .at = m_clock.now(),
                    .who = m_bench.person,
                    .description = words(30)};
    const MaterialUse use{.id = m_ids.next<MaterialUse>(),
                          .job = m_bench.job,
                          .step = step.id,
                          .lot = m_bench.lot,
                          .amount = Amount::of(Mass::milligrams(400))};
    const LedgerEntry used{.id = m_ids.next<LedgerEntry>(),
                           .lot = m_bench.lot,
                           .at = m_clock.now(),
                           .who = m_bench.person,
                           .kind = LedgerKind::used,
                           .amount = use.amount->negated(),
                           .use = use.id};
    return must(Change{.sentence = "Step logged"}.add(step).add(use).add(used), refOf(step.id));
}

std::optional<RecordRef> DayOfWork::importPhotograph() {
    const Photograph photograph{.id = m_ids.next<Photograph>(),
                                .job = m_bench.job,
                                .digest = keep(FileStore::Shelf::photograph),
                                .addedAt = m_clock.now()};
    return must(Change{.sentence = "Photograph added"}.add(photograph), refOf(photograph.id));
}

std::optional<RecordRef> DayOfWork::attachPaper() {
    const Attachment paper{.id = m_ids.next<Attachment>(),
                           .job = m_bench.job,
                           .subject = refOf(m_bench.job),
                           .fileName = "letter.jpg",
                           .mediaType = "image/jpeg",
                           .digest = keep(FileStore::Shelf::attachment)};
    return must(Change{.sentence = "Letter attached"}.add(paper), refOf(paper.id));
}

std::optional<RecordRef> DayOfWork::mixLot() {
    const auto source = find(m_stores.records, m_bench.lot);
    Lot mixed = source->record;
    mixed.id = m_ids.next<Lot>();
    mixed.number = "mix " + mixed.id.text();
    mixed.origin = LotOrigin::mixed;
    const Amount amount = Amount::of(Mass::grams(2));
    const LotPart part{
        .id = m_ids.next<LotPart>(), .lot = mixed.id, .source = m_bench.lot, .amount = amount};
    const LedgerEntry in{.id = m_ids.next<LedgerEntry>(),
                         .lot = mixed.id,
                         .at = m_clock.now(),
                         .kind = LedgerKind::mixedIn,
                         .amount = amount};
    const LedgerEntry out{.id = m_ids.next<LedgerEntry>(),
                          .lot = m_bench.lot,
                          .at = m_clock.now(),
                          .kind = LedgerKind::mixedOut,
                          .amount = amount.negated()};
    return must(Change{.sentence = "Lot mixed"}.add(mixed).add(part).add(in).add(out),
                refOf(mixed.id));
}

std::optional<RecordRef> DayOfWork::issueReport() {
    if (m_reports == 0) {
        m_reports = static_cast<std::int64_t>(
            allWith(m_stores.records, &IssuedReport::job, m_bench.job).size());
    }
    const IssuedReport report{.id = m_ids.next<IssuedReport>(),
                              .job = m_bench.job,
                              .version = ++m_reports,
                              .issuedAt = m_clock.now(),
                              .digest = keep(FileStore::Shelf::report),
                              .journalHead = m_stores.journal.head().hex()};
    return must(Change{.sentence = "Report issued"}.add(report), refOf(report.id));
}

std::optional<RecordRef> DayOfWork::noteFinding() {
    const Finding finding{.id = m_ids.next<Finding>(), .job = m_bench.job, .observed = words(400)};
    return must(Change{.sentence = "Finding added"}.add(finding), refOf(finding.id));
}

std::optional<RecordRef> DayOfWork::undoAndRedo() {
    if (m_stores.journal.undo(m_bench.person)) {
        if (!m_stores.journal.redo(m_bench.person)) {
            throw std::runtime_error("what was undone could not be done again");
        }
    }
    return std::nullopt;
}

bool isKept(Stores stores, const RecordRef& ref) {
    if (stores.records.find(ref)) {
        return true;
    }
    const auto history = stores.journal.historyOf(ref);
    return !history.empty() && history.front().kind == EntryKind::undo &&
           history.front().sequence == stores.journal.latest(1).front().sequence;
}

std::string findings(Stores stores) {
    std::string all;
    for (const VerifyFinding& finding : stores.upkeep.verify(kGoOn).findings) {
        all += "  " + finding.what + ": " + finding.sentence + "\n";
    }
    return all;
}

} // namespace headcap::test
