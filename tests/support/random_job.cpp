#include "tests/support/random_job.h"

#include "core/treatment/techniques.h"

namespace headcap::core::tests {

RandomJob::RandomJob(std::uint64_t seed) : JobBuilder(seed), m_chance(seed) {
    person("Jan Roe", "JR");
    person("Mara Lund", "ML");
    if (maybe(3)) {
        file.parts.push_back(Item{.id = ids.next<Item>(),
                                  .owner = file.owner.id,
                                  .partOf = file.item.id,
                                  .position = 1,
                                  .volumeLabel = "vol. 1",
                                  .title = words("volume")});
    }
    addLots();
    addProposals();
    addSteps();
    addLeaves();
    addSurvey();
    addRest();
    addCollating();
}

bool RandomJob::maybe(unsigned oneIn) {
    return m_chance() % oneIn == 0;
}

std::string RandomJob::words(std::string_view about) {
    return maybe(4) ? std::string{} : std::string{about} + " q" + std::to_string(++m_words) + "z";
}

std::size_t RandomJob::upTo(std::size_t n) {
    return static_cast<std::size_t>(m_chance() % (n + 1));
}

template <class Enum>
Enum RandomJob::any() {
    return static_cast<Enum>(m_chance() % EnumNames<Enum>::kNames.size());
}

template <class Record>
std::optional<Id<Record>> RandomJob::oneOf(const std::vector<Record>& records) {
    if (records.empty() || maybe(4)) {
        return std::nullopt;
    }
    return records[m_chance() % records.size()].id;
}

void RandomJob::addLots() {
    for (std::size_t i = 0, n = upTo(4); i < n; ++i) {
        Lot& made = lot("31-0" + std::to_string(10 + i), "material " + std::to_string(i % 3),
                        Amount::of(Mass::grams(50)));
        made.origin = any<LotOrigin>();
        made.supplier = words("supplier");
        made.savedFrom = words("saved from");
        made.recipe = words("recipe");
        if (made.origin == LotOrigin::mixed && i > 0) {
            file.lotParts.push_back(LotPart{.id = ids.next<LotPart>(),
                                            .lot = made.id,
                                            .source = file.lots.front().id,
                                            .amount = Amount::of(Mass::grams(1))});
        }
    }
    for (Material& kind : file.materials) {
        kind.reversibility = any<Reversibility>();
        kind.removal = words("comes off");
    }
}

void RandomJob::addProposals() {
    for (std::size_t i = 0, n = upTo(2); i < n; ++i) {
        const Proposal made = proposal();
        file.proposals.back().aim = words("aim");
        for (std::size_t k = 0, m = upTo(3); k < m; ++k) {
            const ProposalOption choice = option(made, words("option"));
            file.options.back().irreversible = words("not undone");
            for (std::size_t l = 0, o = upTo(3); l < o; ++l) {
                line(choice, techniques()[m_chance() % techniques().size()].key).description =
                    words("line");
            }
        }
        if (maybe()) {
            decision(made, any<DecisionKind>()).option = oneOf(file.options);
        }
    }
}

void RandomJob::addSteps() {
    for (std::size_t i = 0, n = upTo(8); i < n; ++i) {
        const bool known = !maybe(4);
        Step& made = step(known ? techniques()[m_chance() % techniques().size()].key
                                : words("own technique"),
                          words("place"), day(2031, 3, static_cast<unsigned>(10 + i)));
        made.who = file.people[m_chance() % file.people.size()].id;
        made.part = oneOf(file.parts);
        made.kind = any<StepKind>();
        made.description = words("did");
        made.reversibility = any<Reversibility>();
        made.undoing = words("undo");
        made.removed = maybe(3) ? words("took out") : "";
        made.removedFate = words("kept");
        made.line = maybe(3) ? oneOf(file.lines) : std::nullopt;
        if (maybe(5)) {
            made.struckAt = at(day(2031, 3, 25));
            made.struckBy = anyone();
            made.struckWhy = words("struck");
        }
        for (std::size_t k = 0, m = upTo(3); k < m; ++k) {
            if (file.lots.empty() || maybe(5)) {
                file.uses.push_back(MaterialUse{.id = ids.next<MaterialUse>(),
                                                .job = file.job.id,
                                                .step = made.id,
                                                .lot = std::nullopt,
                                                .material = words("some material"),
                                                .stays = maybe()});
                continue;
            }
            MaterialUse& used = use(made, file.lots[m_chance() % file.lots.size()].number,
                                    Amount::of(Mass::milligrams(100 + ++m_words)));
            used.stays = !maybe(3);
            used.place = words("spot");
            used.removal = words("off");
            used.overrideReason = maybe(4) ? words("because") : "";
        }
    }
}

void RandomJob::addLeaves() {
    for (std::size_t i = 0, n = upTo(3); i < n; ++i) {
        Facsimile& leaf = facsimile(words("leaf"));
        leaf.kind = any<SuppliedKind>();
        leaf.part = oneOf(file.parts);
        leaf.institution = words("keeper");
        leaf.shelfmark = words("mark");
        leaf.edition = words("edition");
        leaf.address = words("address");
        leaf.permission = words("permission");
        leaf.provenance = words("provenance");
        leaf.verification = words("compared");
        leaf.verdict = any<Verdict>();
        leaf.printing = words("printing");
        leaf.printedOn = oneOf(file.lots);
        leaf.attachedWith = oneOf(file.lots);
        leaf.attachment = words("attached");
        leaf.marking = words("marked");
        leaf.removal = words("out");
        leaf.step = oneOf(file.steps);
    }
    for (std::size_t i = 0, n = upTo(3); i < n; ++i) {
        CollationFinding& found = lacking(words("lacking leaf"));
        found.kind = any<CollationKind>();
        found.decision = any<CollationDecision>();
        found.note = words("note");
        found.decisionNote = words("decided");
    }
    if (maybe()) {
        file.collations.push_back(Collation{.id = ids.next<Collation>(),
                                            .job = file.job.id,
                                            .part = std::nullopt,
                                            .formula = words("formula"),
                                            .extent = words("extent"),
                                            .statement = words("statement"),
                                            .method = words("method"),
                                            .notExamined = words("not seen"),
                                            .leavesPresent = maybe() ? 100 : 0,
                                            .who = oneOf(file.people)});
    }
}

void RandomJob::addCollating() {
    for (std::size_t i = 0, n = upTo(2); i < n; ++i) {
        const Walk walk{.id = ids.next<Walk>(),
                        .job = file.job.id,
                        .part = std::nullopt,
                        .who = oneOf(file.people),
                        .kind = any<WalkKind>(),
                        .startedAt = clock.now(),
                        .formula = maybe() ? words("formula") : "8°: A-C⁸",
                        .note = words("by what light")};
        for (std::size_t leaf = 0, leaves = upTo(6); leaf < leaves; ++leaf) {
            file.walkEntries.push_back(WalkEntry{.id = ids.next<WalkEntry>(),
                                                 .job = file.job.id,
                                                 .walk = walk.id,
                                                 .position = static_cast<std::int64_t>(upTo(30)),
                                                 .scope = any<WalkScope>(),
                                                 .at = clock.now(),
                                                 .asExpected = maybe(),
                                                 .rectoNumber = words("number"),
                                                 .finding = oneOf(file.collationFindings)});
        }
        file.walks.push_back(walk);
    }
    for (std::size_t i = 0, n = upTo(3); i < n; ++i) {
        file.plates.push_back(CalledPlate{.id = ids.next<CalledPlate>(),
                                          .job = file.job.id,
                                          .part = std::nullopt,
                                          .name = words("plate"),
                                          .belongsAt = words("facing"),
                                          .source = words("list"),
                                          .presence = any<PlatePresence>(),
                                          .foundAt = words("found at"),
                                          .note = words("note")});
    }
    for (CollationFinding& found : file.collationFindings) {
        found.found = words("as it is");
        found.expected = words("should be");
    }
}

void RandomJob::addSurvey() {
    for (std::size_t i = 0, n = upTo(4); i < n; ++i) {
        Finding& found = finding("boards", "detached", words("board"));
        found.observed = words("seen");
        found.inferred = words("thought");
        found.handling = any<Handling>();
    }
    if (maybe()) {
        file.examinations.push_back(Examination{.id = ids.next<Examination>(),
                                                .job = file.job.id,
                                                .part = std::nullopt,
                                                .onDay = day(2031, 3, 6),
                                                .who = oneOf(file.people),
                                                .method = words("light")});
    }
    if (maybe()) {
        file.tests.push_back(Test{.id = ids.next<Test>(),
                                  .job = file.job.id,
                                  .part = std::nullopt,
                                  .onDay = day(2031, 3, 7),
                                  .who = oneOf(file.people),
                                  .purpose = words("purpose"),
                                  .result = words("result"),
                                  .sampleTaken = maybe(),
                                  .consent = words("consent"),
                                  .kept = words("kept")});
    }
    if (maybe()) {
        file.hazards.push_back(Hazard{.id = ids.next<Hazard>(),
                                      .item = file.item.id,
                                      .term = maybe() ? "mould" : "own hazard",
                                      .state = any<HazardState>(),
                                      .place = words("there"),
                                      .who = oneOf(file.people)});
    }
}

void RandomJob::addRest() {
    for (std::size_t i = 0, n = upTo(3); i < n; ++i) {
        photograph(any<PhotoRole>()).inReport = !maybe(4);
    }
    if (maybe()) {
        notice(any<NoticeSubject>(), day(2031, 3, 9)).answer = words("answer");
    }
    if (maybe()) {
        file.pieces.push_back(Piece{
            .id = ids.next<Piece>(), .job = file.job.id, .count = 2, .what = words("wrapper")});
    }
    if (maybe()) {
        file.works.push_back(
            Work{.id = ids.next<Work>(), .item = file.item.id, .title = words("work")});
    }
    if (maybe()) {
        file.followUps.push_back(FollowUp{.id = ids.next<FollowUp>(),
                                          .job = file.job.id,
                                          .what = words("look again"),
                                          .why = words("for"),
                                          .who = oneOf(file.people)});
    }
    file.job.state = any<JobState>();
}

} // namespace headcap::core::tests
