#include "app/stock/lot_papers.h"

#include <map>

#include "app/session/words.h"

namespace headcap::app {

LotPapers::LotPapers(Session& session, PageEdits& edits, QWidget* parent)
    : AttachmentList(session, edits,
                     {tr("Papers and pictures of the lot"), tr("Attach a file"),
                      tr("The certificate it came with; of paper saved from a binding, its picture "
                         "before it is cut, with the watermark.")},
                     parent),
      m_session(session) {}

void LotPapers::showLot(const core::Lot* lot) {
    setVisible(lot != nullptr);
    if (lot == nullptr) {
        return;
    }
    const core::RecordRef ref = core::refOf(lot->id);
    setSubject({ref, std::nullopt}, {{papers::keyOf(ref), fromCore(lot->number)}});
    m_session.guarded([&] {
        std::vector<core::Attachment> files;
        std::map<core::Id<core::Attachment>, core::Revision> revisions;
        for (const auto& one : core::typed<core::Attachment>(m_session.records().allWith(
                 core::RecordKind::attachment, "subject_id", lot->id.text()))) {
            files.push_back(one.record);
            revisions[one.record.id] = one.revision;
        }
        show(files, [&](const core::Attachment& a) { return revisions.at(a.id); });
    });
}

} // namespace headcap::app
