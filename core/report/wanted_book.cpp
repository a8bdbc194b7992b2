#include "core/report/wanted.h"

#include <algorithm>
#include <set>

#include "core/custody/hazard_evidence.h"
#include "core/report/labels.h"
#include "core/report/worked_on.h"
#include "core/report/writing.h"

namespace headcap::core::report {
namespace {

void wantItem(Wanted& wanted, const JobFile& file) {
    for (const Item& part : file.parts) {
        wanted.say("book", part, {part.title, part.binding});
    }
    for (const Work& work : file.works) {
        wanted.say("book", work, {work.author, work.title, work.leaves});
    }
    for (const Piece& piece : file.pieces) {
        wanted.say("book", piece, {piece.what, piece.returned});
    }
}

void wantCondition(Wanted& wanted, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        wanted.say("condition", hazard, {hazard.place, hazard.note});
        if (stillWarns(hazard)) {
            wanted.say("advice", hazard);
        }
    }
    for (const Examination& examination : file.examinations) {
        wanted.say("condition", examination, {examination.method, examination.notExamined});
    }
    for (const Finding& finding : file.findings) {
        wanted.say("condition", finding,
                   {finding.place, finding.observed, finding.inferred, finding.extent});
        if (finding.handling != Handling::yes && !isWorkedOn(file, finding)) {
            wanted.say("advice", finding, {finding.place});
        }
    }
    for (const Test& test : file.tests) {
        wanted.say("condition", test, {test.purpose, test.result, test.consent, test.kept});
    }
}

void wantCollation(Wanted& wanted, const JobFile& file) {
    if (file.collations.empty()) {
        wanted.say("disclosures_f", file.item);
    }
    for (const Collation& collation : file.collations) {
        wanted.always("collation", collation, labels::kThisCopy);
        wanted.fact("collation", collation, labels::kThisCopy, collation.statement);
        wanted.fact("collation", collation, labels::kFormula, formulaText(collation.formula));
        wanted.fact("collation", collation, labels::kExtent, collation.extent);
        wanted.fact("collation", collation, labels::kAgainst, collation.authority);
        wanted.fact("collation", collation, labels::kEstablished, collation.method);
        wanted.fact("collation", collation, labels::kNotLookedAt, collation.notExamined);
        wanted.always("collation", collation, labels::kFinished);
        if (collation.leavesCalledFor != 0 || collation.leavesPresent != 0 ||
            collation.platesCalledFor != 0 || collation.platesPresent != 0) {
            wanted.always("collation", collation, labels::kTally);
        }
    }
    for (const CollationFinding& finding : file.collationFindings) {
        wanted.say(
            "collation", finding,
            {finding.place, finding.found, finding.expected, finding.note, finding.decisionNote});
        const bool gap = finding.kind == CollationKind::lacking ||
                         finding.kind == CollationKind::blankLacking ||
                         finding.kind == CollationKind::tornWithLoss;
        if (gap && finding.decision != CollationDecision::madeGood &&
            finding.decision != CollationDecision::notNeeded) {
            wanted.say("disclosures_f", finding, {finding.place});
        }
    }
}

void wantWalks(Wanted& wanted, const JobFile& file) {
    for (const Walk& walk : file.walks) {
        const Person* person = file.person(walk.who);
        wanted.say("collation", walk, {person ? person->name : "", walk.note});
    }
    for (const CalledPlate& plate : file.plates) {
        wanted.say("collation", plate,
                   {plate.name, plate.belongsAt, plate.source, plate.foundAt, plate.note});
    }
}

} // namespace

void wantBook(Wanted& wanted, const JobFile& file) {
    wantItem(wanted, file);
    wantCondition(wanted, file);
    wantCollation(wanted, file);
    wantWalks(wanted, file);
}

} // namespace headcap::core::report
