#include "core/record/any_record.h"

namespace headcap::core {

AnyRecord::AnyRecord(const AnyRecord& other) = default;
AnyRecord::AnyRecord(AnyRecord&& other) noexcept = default;
AnyRecord& AnyRecord::operator=(const AnyRecord& other) = default;
AnyRecord& AnyRecord::operator=(AnyRecord&& other) noexcept = default;
AnyRecord::~AnyRecord() = default;

template <RecordType Record>
AnyRecord::AnyRecord(Record record)
    : RecordOfSomeKind{std::in_place_type<Record>, std::move(record)} {}

// One line a kind.
template AnyRecord::AnyRecord(Workshop);
template AnyRecord::AnyRecord(Person);
template AnyRecord::AnyRecord(Owner);
template AnyRecord::AnyRecord(Item);
template AnyRecord::AnyRecord(Work);
template AnyRecord::AnyRecord(Job);
template AnyRecord::AnyRecord(StateChange);
template AnyRecord::AnyRecord(Piece);
template AnyRecord::AnyRecord(CustodyMove);
template AnyRecord::AnyRecord(Hazard);
template AnyRecord::AnyRecord(Notice);
template AnyRecord::AnyRecord(FollowUp);
template AnyRecord::AnyRecord(Attachment);
template AnyRecord::AnyRecord(Examination);
template AnyRecord::AnyRecord(Finding);
template AnyRecord::AnyRecord(Test);
template AnyRecord::AnyRecord(Collation);
template AnyRecord::AnyRecord(CollationFinding);
template AnyRecord::AnyRecord(Facsimile);
template AnyRecord::AnyRecord(Proposal);
template AnyRecord::AnyRecord(ProposalOption);
template AnyRecord::AnyRecord(ProposalLine);
template AnyRecord::AnyRecord(Decision);
template AnyRecord::AnyRecord(Step);
template AnyRecord::AnyRecord(MaterialUse);
template AnyRecord::AnyRecord(Material);
template AnyRecord::AnyRecord(Lot);
template AnyRecord::AnyRecord(LotPart);
template AnyRecord::AnyRecord(LedgerEntry);
template AnyRecord::AnyRecord(Photograph);
template AnyRecord::AnyRecord(IssuedReport);
template AnyRecord::AnyRecord(Walk);
template AnyRecord::AnyRecord(WalkEntry);
template AnyRecord::AnyRecord(CalledPlate);
template AnyRecord::AnyRecord(LeafTask);
template AnyRecord::AnyRecord(Cutting);
template AnyRecord::AnyRecord(CutPart);
template AnyRecord::AnyRecord(Recipe);
template AnyRecord::AnyRecord(RecipePart);
template AnyRecord::AnyRecord(HouseValue);
template AnyRecord::AnyRecord(HouseTechnique);
template AnyRecord::AnyRecord(BenchClock);
template AnyRecord::AnyRecord(Setting);
template AnyRecord::AnyRecord(StepCheck);
template AnyRecord::AnyRecord(ReleaseCheck);
template AnyRecord::AnyRecord(Explanation);
template AnyRecord::AnyRecord(HandBack);

} // namespace headcap::core
