// Where the chosen lot went: the lots mixed from it or cut off it, and every book it now sits in,
// with its owner, step by step. Enter goes to the step.
#pragma once

#include <map>
#include <vector>

#include <QWidget>

#include "app/session/session.h"
#include "app/shell/view.h"
#include "core/materials/trace.h"

namespace headcap::app {

class Label;
class RuledTable;
struct LotStory;
struct TableRow;

class LotWhereabouts : public QWidget {
    Q_OBJECT
public:
    explicit LotWhereabouts(Session& session, QWidget* parent = nullptr);
    // Null: no lot is chosen.
    void show(const LotStory* story);
    using QWidget::show;
    // What each use that stands was, for the ledger: "2031-014 · Guarding · K7".
    [[nodiscard]] const std::map<core::Id<core::MaterialUse>, QString>& uses() const {
        return m_uses;
    }

Q_SIGNALS:
    void goAsked(const headcap::app::Destination& destination);

private:
    void open();
    void addJob(const core::LotTrace& trace, const core::TracedJob& job,
                std::vector<TableRow>& rows);

    Session& m_session;
    Label* m_heading;
    Label* m_count;
    Label* m_made;
    Label* m_none;
    RuledTable* m_table;
    std::map<core::Uuid, Destination> m_places;
    std::map<core::Id<core::MaterialUse>, QString> m_uses;
};

} // namespace headcap::app
