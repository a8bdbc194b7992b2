// What is kept with one lot: a certificate of a bought one, the picture of saved paper before it
// was cut, a label that was photographed.
#pragma once

#include "app/papers/attachment_list.h"
#include "core/materials/material.h"

namespace headcap::app {

class LotPapers : public papers::AttachmentList {
    Q_OBJECT
public:
    LotPapers(Session& session, PageEdits& edits, QWidget* parent = nullptr);
    // Null: no lot is chosen.
    void showLot(const core::Lot* lot);

private:
    Session& m_session;
};

} // namespace headcap::app
