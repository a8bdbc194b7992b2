// The papers kept with a kind of material: its safety data sheet, a maker's certificate. Opened
// where the kind or a lot of it stands.
#pragma once

#include <vector>

#include <QPushButton>

#include "app/session/session.h"

namespace headcap::app::papers {

[[nodiscard]] std::vector<core::Stored<core::Attachment>>
sheetsOf(Session& session, const core::Id<core::Material>& kind);

// With the program the system has for it.
void openSheet(Session& session, const core::Attachment& sheet);

// Opens the newest sheet of a kind; seen only where it has one.
class DataSheetButton : public QPushButton {
    Q_OBJECT
public:
    explicit DataSheetButton(Session& session, QWidget* parent = nullptr);
    void setKind(const std::optional<core::Id<core::Material>>& kind);

private:
    Session& m_session;
    std::optional<core::Attachment> m_sheet;
};

} // namespace headcap::app::papers
