// What the sample workshop knows of the work on the book: proposal and approval, lots, the log.
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

core::Amount grams(std::int64_t milligrams) {
    return core::Amount::of(core::Mass::milligrams(milligrams));
}

} // namespace

void SampleWorkshop::fillProposal() {
    const auto proposal =
        store.put(core::Proposal{.id = ids.next<core::Proposal>(),
                                 .job = *grafting,
                                 .madeOn = year{2031} / 2 / 10,
                                 .who = orrin,
                                 .aim = "Safe to be read in the reading room; the old calf kept.",
                                 .notIncluded = "A box; digitising.",
                                 .risks = "The joints may crack further while it is opened.",
                                 .sentOn = year{2031} / 2 / 11});
    const auto option = [&](std::int64_t position, const char* name, const char* effect,
                            const char* risk, const char* irreversible) {
        return store.put(core::ProposalOption{.id = ids.next<core::ProposalOption>(),
                                              .job = *grafting,
                                              .proposal = proposal,
                                              .position = position,
                                              .name = name,
                                              .effect = effect,
                                              .risk = risk,
                                              .irreversible = irreversible});
    };
    option(1, "Do nothing", "It stays as it is, to be read by appointment only.",
           "The upper board will come off.", "");
    const auto repair =
        option(2, "A: reline and mend", "Opens safely; sewing and calf stay.",
               "The old spine leather may not go back whole.", "The old linings are taken out.");
    const auto resew = option(3, "B: resew", "Opens flat.", "The first binding is lost.",
                              "The old sewing is cut.");
    const auto line = [&](const auto& of, std::int64_t position, const char* technique,
                          const char* place, int minutes, std::int64_t cents) {
        return store.put(core::ProposalLine{.id = ids.next<core::ProposalLine>(),
                                            .job = *grafting,
                                            .option = of,
                                            .position = position,
                                            .technique = technique,
                                            .place = place,
                                            .minutes = core::Minutes{minutes},
                                            .price = core::Money{cents, "EUR"}});
    };
    line(repair, 1, "spine_lining", "spine", 120, 9'600);
    line(repair, 2, "guarding", "K7, K8", 40, 3'200);
    line(repair, 3, "tear_mending", "B2, C5, title leaf", 90, 7'200);
    line(repair, 4, "rebacking", "spine", 420, 33'600);
    line(resew, 1, "disbinding", "text block", 180, 14'400);
    line(resew, 2, "resewing", "text block", 480, 38'400);
    store.put(core::Decision{.id = ids.next<core::Decision>(),
                             .job = *grafting,
                             .proposal = proposal,
                             .option = repair,
                             .kind = core::DecisionKind::approvedWithLimits,
                             .limits = "ask above 600 EUR",
                             .byName = "R. Hale",
                             .authority = "keeper",
                             .onDay = year{2031} / 2 / 14,
                             .means = core::DecisionMeans::letter});
}

core::Id<core::Lot> SampleWorkshop::addLot(const core::Lot& lot, const core::Material& material,
                                           core::Amount received) {
    store.put(material);
    store.put(lot);
    store.put(core::LedgerEntry{.id = ids.next<core::LedgerEntry>(),
                                .lot = lot.id,
                                .at = at("2031-02-26T09:00:00Z"),
                                .who = orrin,
                                .kind = lot.origin == core::LotOrigin::bought
                                            ? core::LedgerKind::received
                                            : core::LedgerKind::mixedIn,
                                .amount = received});
    return lot.id;
}

void SampleWorkshop::fillLog(const core::Id<core::Lot>& paste) {
    store.put(core::LedgerEntry{.id = ids.next<core::LedgerEntry>(),
                                .lot = paste,
                                .at = at("2031-02-26T09:00:00Z"),
                                .who = orrin,
                                .kind = core::LedgerKind::mixedIn,
                                .amount = grams(60'000)});
    const core::Material cellulose{.id = ids.next<core::Material>(),
                                   .name = "methylcellulose",
                                   .kind = core::MaterialClass::adhesivePrepared,
                                   .unit = core::Unit::gram,
                                   .removal = "moisture"};
    const auto poultice = addLot({.id = ids.next<core::Lot>(),
                                  .number = "31-011",
                                  .material = cellulose.id,
                                  .origin = core::LotOrigin::mixed,
                                  .mixedOn = march(4),
                                  .recipe = "3 % w/v in deionised water"},
                                 cellulose, grams(80'000));
    const core::Material kozo{.id = ids.next<core::Material>(),
                              .name = "kozo tissue",
                              .kind = core::MaterialClass::tissue,
                              .unit = core::Unit::sheet,
                              .composition = "100 % kozo, 11 g/m²",
                              .removal = "moisture, with its paste"};
    const auto tissue = addLot({.id = ids.next<core::Lot>(),
                                .number = "29-102",
                                .material = kozo.id,
                                .supplier = "Mere Papers",
                                .batch = "K-7"},
                               kozo, core::Amount::sheets(12));
    const auto step = [&](core::Step said) {
        said.job = *grafting;
        said.who = *orrin;
        return store.put(said);
    };
    const auto blank = [&](const char* begun, const char* place, int minutes) {
        return core::Step{.id = ids.next<core::Step>(),
                          .job = *grafting,
                          .at = at(begun),
                          .who = *orrin,
                          .place = place,
                          .minutes = core::Minutes{minutes},
                          .reversibility = core::Reversibility::yes,
                          .undoing = "with moisture"};
    };
    const auto use = [&](const core::Id<core::Step>& in, const core::Id<core::Lot>& lot,
                         std::optional<core::Amount> amount, const char* role, bool stays) {
        const auto id = store.put(core::MaterialUse{.id = ids.next<core::MaterialUse>(),
                                                    .job = *grafting,
                                                    .step = in,
                                                    .lot = lot,
                                                    .amount = amount,
                                                    .role = role,
                                                    .stays = stays});
        if (amount) {
            store.put(core::LedgerEntry{.id = ids.next<core::LedgerEntry>(),
                                        .lot = lot,
                                        .at = at("2031-03-05T04:00:00Z"),
                                        .who = orrin,
                                        .kind = core::LedgerKind::used,
                                        .amount = amount->negated(),
                                        .use = id});
        }
    };
    core::Step cleaned = blank("2031-03-05T03:25:00Z", "spine", 55);
    cleaned.technique = "adhesive_removing";
    cleaned.description = "Spine cleaned, old glue softened with poultice";
    use(step(cleaned), poultice, grams(12'000), "poultice", false);
    core::Step lifted = blank("2031-03-05T04:35:00Z", "spine", 25);
    lifted.kind = core::StepKind::removal;
    lifted.description = "Linings lifted";
    lifted.removed = "two paper linings";
    lifted.removedFate = "kept in envelope 2";
    lifted.reversibility = core::Reversibility::no;
    step(lifted);
    core::Step guarded = blank("2031-03-05T05:20:00Z", "K7", 18);
    guarded.technique = "guarding";
    const auto k7 = step(guarded);
    use(k7, paste, grams(600), "adhesive", true);
    use(k7, tissue, std::nullopt, "guard", true);
    core::Step wrongly = blank("2031-03-05T05:45:00Z", "K8", 15);
    wrongly.technique = "tear_mending";
    wrongly.struckAt = at("2031-03-05T05:58:00Z");
    wrongly.struckBy = orrin;
    wrongly.struckWhy = "it was K3";
    const auto k8 = step(wrongly);
    core::Step rightly = blank("2031-03-05T05:45:00Z", "K3", 15);
    rightly.technique = "tear_mending";
    rightly.corrects = k8;
    use(step(rightly), paste, grams(200), "adhesive", true);
    store.put(core::Facsimile{.id = ids.next<core::Facsimile>(),
                              .job = *grafting,
                              .place = "K2",
                              .institution = "Mere College",
                              .printing = "pigment inks",
                              .attachedWith = paste,
                              .attachment = "tipped to a guard, 3 mm strip"});
}

} // namespace headcap::tests
