// The pieces that are wanted, each with its size, its grain and what is left on it to be trimmed;
// typed, or proposed from the book.
#pragma once

#include "app/form/list_section.h"
#include "app/session/session.h"
#include "app/stock/work_words.h"
#include "core/cutting/cut_plan.h"

namespace headcap::app {

class FieldRow;
class PlainForm;

class PieceList : public ListSection {
    Q_OBJECT
public:
    explicit PieceList(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] std::vector<core::WantedPiece> pieces() const;
    void add(const core::WantedPiece& piece);
    // In the place of what was proposed for the same, and not changed by hand since.
    void propose(Work work, const std::vector<core::WantedPiece>& pieces);
    void clear();
    [[nodiscard]] PlainForm& form() { return *m_form; }

Q_SIGNALS:
    void changed();

private:
    struct Kept {
        core::Uuid key;
        core::WantedPiece piece;
        std::optional<Work> proposedFor{}; // nothing: by hand
    };

    PieceList(Session& session, PlainForm* form, QWidget* parent);
    void startNew();
    void removeCurrent();
    void showCurrent();
    void take();
    void showAll();
    [[nodiscard]] Kept* current();

    Session& m_session;
    PlainForm* m_form;
    FieldRow* m_name;
    FieldRow* m_count;
    FieldRow* m_width;
    FieldRow* m_height;
    FieldRow* m_grain;
    FieldRow* m_pasted;
    FieldRow* m_overlap;
    std::vector<Kept> m_pieces;
    bool m_isShowing = false;
};

} // namespace headcap::app
