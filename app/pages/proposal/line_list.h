// The lines of one option: technique, place, materials, minutes and price. A technique that is
// known fills in its usual minutes and materials, where nothing is written there yet.
#pragma once

#include <memory>

#include "app/form/record_list.h"
#include "app/session/aside.h"
#include "core/materials/shelf.h"
#include "core/treatment/proposal.h"
#include "core/treatment/techniques.h"

namespace headcap::app {

class LineList : public RecordList<core::ProposalLine> {
public:
    LineList(Session& session, PageEdits& edits, QWidget* parent = nullptr);
    // Of no option: nothing can be added.
    void showOption(const core::JobFile& file,
                    const std::optional<core::Id<core::ProposalOption>>& option);

private:
    void showLines();
    void readShelf();
    void fillFromTechnique();
    void followCount();
    [[nodiscard]] const core::Technique* techniqueTyped() const;
    [[nodiscard]] static QString usualFor(const core::Technique& technique, const QString& count);
    // What speaks against the materials named, in words.
    [[nodiscard]] QString against(const core::ProposalLine& line) const;
    [[nodiscard]] QString againstTyped(const QString& materials);

    std::optional<core::JobFile> m_file;
    std::optional<core::Id<core::ProposalOption>> m_option;
    Session& m_session;
    Aside* m_aside;
    std::shared_ptr<const core::Shelf> m_shelf{}; // as last read; null: not yet
    FieldRow* m_technique = nullptr;
    FieldRow* m_materials = nullptr;
    FieldRow* m_count = nullptr;
    FieldRow* m_minutes = nullptr;
    QString m_usualMinutes; // as they were last filled in for the line that is open
};

} // namespace headcap::app
