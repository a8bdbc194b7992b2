// The workshop as its letterhead names it, and the people who work there.
#pragma once

#include "app/form/record_form.h"
#include "app/form/record_list.h"
#include "app/shell/view.h"

class QVBoxLayout;

namespace headcap::app {

class WorkshopView : public View {
    Q_OBJECT
public:
    explicit WorkshopView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    [[nodiscard]] bool leave() override { return m_edits.leave(); }
    void refresh() override;
    [[nodiscard]] QString title() const override { return tr("Workshop and people"); }

private:
    void buildForms();
    void addFolder(QVBoxLayout& down);

    Session& m_session;
    PageEdits m_edits;
    RecordForm<core::Workshop>* m_workshop;
    RecordList<core::Person>* m_people;
};

} // namespace headcap::app
