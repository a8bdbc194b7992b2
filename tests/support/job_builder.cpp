#include "tests/support/job_builder.h"

#include <algorithm>

#include "core/treatment/step_checks.h"
#include "core/treatment/techniques.h"
#include "core/values/contract.h"

namespace headcap::core::tests {
namespace {

JobFile receivedJob(IdSource& ids) {
    const Owner owner{.id = ids.next<Owner>(),
                      .kind = OwnerKind::institution,
                      .name = "Library of St Vedast, Oxmoor",
                      .contact = "Mrs Pell",
                      .authority = "the librarian, for the chapter"};
    const Item item{.id = ids.next<Item>(),
                    .owner = owner.id,
                    .partOf = std::nullopt,
                    .author = "Ambrose Quill",
                    .title = "The Shepherd of Wenlow",
                    .imprint = "Oxmoor: for T. Sallow",
                    .date = BookDate{"1702"},
                    .format = "8°",
                    .language = "English",
                    .height = Length::millimetres(186),
                    .width = Length::millimetres(118),
                    .thickness = Length::millimetres(27),
                    .binding = "Panelled calf over boards, five raised cords"};
    const Job job{.id = ids.next<Job>(),
                  .number = "2031-004",
                  .item = item.id,
                  .owner = owner.id,
                  .receivedOn = day(2031, 3, 5),
                  .request = "Make it fit to be read",
                  .purpose = "use in the reading room",
                  .receivedAs = "in a paper wrapper",
                  .keptAt = "shelf 3",
                  .earlierRecords = EarlierRecords::noneExist,
                  .value = Money{40000, "EUR"}};
    JobFile file{job, item, owner};
    file.workshop = Workshop{.id = ids.next<Workshop>(),
                             .name = "Bindery at Three Elms",
                             .address = "2 Tanner's Row\nOxmoor"};
    file.people.push_back(
        {.id = ids.next<Person>(), .name = "Ana Keller", .initials = "AK", .role = "bookbinder"});
    return file;
}

} // namespace

JobBuilder::JobBuilder(std::uint64_t seed) : ids(clock, seed), file(receivedJob(ids)) {}

Person& JobBuilder::person(const std::string& name, const std::string& initials) {
    return file.people.emplace_back(
        Person{.id = ids.next<Person>(), .name = name, .initials = initials, .role = "binder"});
}

Material& JobBuilder::material(const std::string& name, MaterialClass kind, Unit unit) {
    return file.materials.emplace_back(Material{.id = ids.next<Material>(),
                                                .name = name,
                                                .kind = kind,
                                                .unit = unit,
                                                .removal = "comes off with a little moisture",
                                                .reversibility = Reversibility::yes});
}

Lot& JobBuilder::lot(const std::string& number, const std::string& materialName, Amount received) {
    auto kind = std::ranges::find(file.materials, materialName, &Material::name);
    const Id<Material> id =
        kind != file.materials.end()
            ? kind->id
            : material(materialName, MaterialClass::adhesivePrepared, received.unit).id;
    file.lots.push_back(Lot{.id = ids.next<Lot>(),
                            .number = number,
                            .material = id,
                            .supplier = "Marrow & Daughters",
                            .receivedOn = day(2031, 1, 10),
                            .savedIn = std::nullopt,
                            .mixedBy = std::nullopt,
                            .parent = std::nullopt});
    file.ledger.push_back(LedgerEntry{.id = ids.next<LedgerEntry>(),
                                      .lot = file.lots.back().id,
                                      .at = at(day(2031, 1, 10)),
                                      .who = anyone(),
                                      .kind = LedgerKind::received,
                                      .amount = received,
                                      .use = std::nullopt,
                                      .contraryOf = std::nullopt});
    return file.lots.back();
}

Step& JobBuilder::step(const std::string& technique, const std::string& place, Day on) {
    Step step{.id = ids.next<Step>(),
              .job = file.job.id,
              .part = std::nullopt,
              .at = at(on),
              .who = anyone(),
              .technique = technique,
              .place = place,
              .minutes = Minutes{30},
              .line = std::nullopt,
              .corrects = std::nullopt,
              .struckBy = std::nullopt};
    if (const Technique* known = file.techniques.named(technique)) {
        step.kind = known->kind;
        step.reversibility = known->reversibility;
        step.undoing = known->undoing;
    }
    return file.steps.emplace_back(step);
}

MaterialUse& JobBuilder::use(const Step& step, const std::string& lotNumber, Amount amount) {
    const Lot& lot = lotNumbered(lotNumber);
    const MaterialUse use{.id = ids.next<MaterialUse>(),
                          .job = file.job.id,
                          .step = step.id,
                          .lot = lot.id,
                          .amount = amount,
                          .role = "adhesive",
                          .place = step.place,
                          .removal = "comes off with a little moisture"};
    file.ledger.push_back(LedgerEntry{.id = ids.next<LedgerEntry>(),
                                      .lot = lot.id,
                                      .at = step.at,
                                      .who = step.who,
                                      .kind = LedgerKind::used,
                                      .amount = amount.negated(),
                                      .use = use.id,
                                      .contraryOf = std::nullopt});
    return file.uses.emplace_back(use);
}

Facsimile& JobBuilder::facsimile(const std::string& place) {
    return file.facsimiles.emplace_back(Facsimile{
        .id = ids.next<Facsimile>(),
        .job = file.job.id,
        .part = std::nullopt,
        .place = place,
        .institution = "Municipal Library of Wenlow",
        .shelfmark = "Old.III.12",
        .edition = "first edition",
        .sourceDate = BookDate{"1702"},
        .consultedOn = day(2031, 3, 8),
        .permission = "by letter of 9 March 2031",
        .verification = "catchwords, signature positions and a broken rule compared on K4 to K6",
        .verdict = Verdict::sameSetting,
        .printing = "pigment inks",
        .printedOn = std::nullopt,
        .attachedWith = std::nullopt,
        .attachment = "tipped to a guard, 3 mm strip",
        .marking = "FACSIMILE 2031 in the lower margin, pigment ink",
        .removal = "moisten the guard and draw the leaf out",
        .step = std::nullopt});
}

CollationFinding& JobBuilder::lacking(const std::string& place) {
    return file.collationFindings.emplace_back(CollationFinding{.id = ids.next<CollationFinding>(),
                                                                .job = file.job.id,
                                                                .part = std::nullopt,
                                                                .kind = CollationKind::lacking,
                                                                .place = place,
                                                                .who = anyone()});
}

Finding& JobBuilder::finding(const std::string& component, const std::string& term,
                             const std::string& place) {
    return file.findings.emplace_back(Finding{.id = ids.next<Finding>(),
                                              .job = file.job.id,
                                              .part = std::nullopt,
                                              .component = component,
                                              .term = term,
                                              .place = place,
                                              .severity = 2});
}

Photograph& JobBuilder::photograph(PhotoRole role) {
    const auto n = static_cast<std::int64_t>(file.photographs.size());
    return file.photographs.emplace_back(
        Photograph{.id = ids.next<Photograph>(),
                   .job = file.job.id,
                   .part = std::nullopt,
                   .role = role,
                   .position = n,
                   .caption = "View " + std::to_string(n + 1),
                   .finding = std::nullopt,
                   .step = std::nullopt,
                   .facsimile = std::nullopt,
                   .digest = sha256(std::string_view{"photograph " + std::to_string(n)}),
                   .mediaType = "image/jpeg",
                   .fileName = "view.jpg",
                   .widthPx = 6000,
                   .heightPx = 4000,
                   .addedAt = at(day(2031, 3, 6))});
}

Notice& JobBuilder::notice(NoticeSubject subject, Day on) {
    return file.notices.emplace_back(Notice{.id = ids.next<Notice>(),
                                            .job = file.job.id,
                                            .subject = subject,
                                            .onDay = on,
                                            .who = anyone(),
                                            .toldTo = "Mrs Pell",
                                            .text = "What was found was described to her"});
}

Proposal& JobBuilder::proposal() {
    return file.proposals.emplace_back(
        Proposal{.id = ids.next<Proposal>(),
                 .job = file.job.id,
                 .version = static_cast<std::int64_t>(file.proposals.size()) + 1,
                 .madeOn = day(2031, 3, 10),
                 .who = anyone(),
                 .aim = "Make the book fit for careful use",
                 .sentOn = day(2031, 3, 11)});
}

ProposalOption& JobBuilder::option(const Proposal& proposal, const std::string& name) {
    return file.options.emplace_back(
        ProposalOption{.id = ids.next<ProposalOption>(),
                       .job = file.job.id,
                       .proposal = proposal.id,
                       .position = static_cast<std::int64_t>(file.options.size()) + 1,
                       .name = name});
}

ProposalLine& JobBuilder::line(const ProposalOption& option, const std::string& technique) {
    return file.lines.emplace_back(
        ProposalLine{.id = ids.next<ProposalLine>(),
                     .job = file.job.id,
                     .option = option.id,
                     .position = static_cast<std::int64_t>(file.lines.size()) + 1,
                     .technique = technique,
                     .minutes = Minutes{60},
                     .price = Money{5000, "EUR"}});
}

Decision& JobBuilder::decision(const Proposal& proposal, DecisionKind kind) {
    return file.decisions.emplace_back(Decision{.id = ids.next<Decision>(),
                                                .job = file.job.id,
                                                .proposal = proposal.id,
                                                .option = std::nullopt,
                                                .kind = kind,
                                                .byName = "Mrs Pell",
                                                .authority = "the librarian",
                                                .onDay = day(2031, 3, 12),
                                                .means = DecisionMeans::letter});
}

const Lot& JobBuilder::lotNumbered(const std::string& number) const {
    const auto found = std::ranges::find(file.lots, number, &Lot::number);
    HEADCAP_CONTRACT(found != file.lots.end());
    return *found;
}

FinishedJob::FinishedJob() {
    JobBuilder& b = *this;
    b.material("permanent paper", MaterialClass::paper, Unit::sheet);
    b.material("linen thread", MaterialClass::thread, Unit::metre);
    b.lot("31-002", "wheat starch paste", Amount::of(Mass::grams(200))).mixedOn = day(2031, 3, 14);
    b.lot("31-003", "permanent paper", Amount::sheets(20));
    b.lot("31-004", "linen thread", Amount::of(Length::millimetres(50'000)));

    b.file.examinations.push_back(Examination{.id = b.ids.next<Examination>(),
                                              .job = b.file.job.id,
                                              .part = std::nullopt,
                                              .onDay = day(2031, 3, 6),
                                              .who = b.anyone(),
                                              .method = "daylight and raking light, 8× loupe",
                                              .notExamined = "under the pastedowns"});
    b.finding("sewing", "broken", "gatherings A to C").observed = "threads parted at both kettles";
    b.finding("leaves", "torn", "B2, C5").observed = "tears at the fore edge, without loss";
    b.file.collations.push_back(Collation{.id = b.ids.next<Collation>(),
                                          .job = b.file.job.id,
                                          .part = std::nullopt,
                                          .formula = "8°: A4 B–O8",
                                          .statement = "This copy lacks K5.",
                                          .method = "leaf by leaf against the published formula",
                                          .leavesCalledFor = 108,
                                          .leavesPresent = 107,
                                          .finishedOn = day(2031, 3, 7),
                                          .who = b.anyone()});
    b.lacking("K5").decision = CollationDecision::madeGood;
    b.notice(NoticeSubject::collation, day(2031, 3, 8)).answeredOn = day(2031, 3, 9);

    const Proposal& proposal = b.proposal();
    const ProposalOption option = b.option(proposal, "A: resew");
    b.option(proposal, "Do nothing");
    for (const char* technique : {"disbinding", "adhesive_removing", "tear_mending", "resewing",
                                  "printing_facsimile", "tipping_in"}) {
        b.line(option, technique);
    }
    b.decision(proposal, DecisionKind::approved).option = option.id;

    b.step("disbinding", "text block", day(2031, 3, 15)).removed = "old sewing thread";
    b.file.steps.back().removedFate = "kept in envelope 1 with the book";
    b.step("adhesive_removing", "spine", day(2031, 3, 16)).removed = "animal glue, paper linings";
    b.file.steps.back().removedFate = "a sample kept in envelope 1, the rest discarded";
    b.use(b.step("tear_mending", "B2, C5", day(2031, 3, 17)), "31-002", Amount::of(Mass::grams(3)));
    b.use(b.step("resewing", "text block", day(2031, 3, 18)), "31-004",
          Amount::of(Length::millimetres(7'500)))
        .role = "thread";
    b.use(b.step("printing_facsimile", "K5", day(2031, 3, 19)), "31-003", Amount::sheets(1)).role =
        "paper";
    const Step tipped = b.step("tipping_in", "K5", day(2031, 3, 20));
    b.use(tipped, "31-002", Amount::of(Mass::milligrams(400)));
    Facsimile& leaf = b.facsimile("K5");
    leaf.printedOn = b.lotNumbered("31-003").id;
    leaf.attachedWith = b.lotNumbered("31-002").id;
    leaf.step = tipped.id;

    b.photograph(PhotoRole::before).caption = "Spine and upper board before treatment";
    b.photograph(PhotoRole::during).step = b.file.steps.front().id;
    b.photograph(PhotoRole::after).facsimile = leaf.id;
    b.file.followUps.push_back(FollowUp{.id = b.ids.next<FollowUp>(),
                                        .job = b.file.job.id,
                                        .what = "Ask whether K5 has turned up",
                                        .dueOn = day(2032, 3, 1),
                                        .who = b.anyone()});
    for (const Step& step : b.file.steps) {
        for (const std::string& what : openChecks(b.file, step)) {
            b.file.stepChecks.push_back(StepCheck{.id = b.ids.next<StepCheck>(),
                                                  .job = b.file.job.id,
                                                  .step = step.id,
                                                  .what = what,
                                                  .done = true});
        }
    }
    b.file.job.state = JobState::passed;
}

} // namespace headcap::core::tests
