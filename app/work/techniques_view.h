// The techniques of the workshop: every one that ships and every one of its own, each with what it
// asks for. A value changed here makes the technique the workshop's own, and every page goes by it;
// taken back, it is as it ships again.
#pragma once

#include "app/form/page_edits.h"
#include "app/form/ruled_table.h"
#include "app/shell/view.h"
#include "app/work/house_techniques.h"
#include "app/work/technique_form.h"

class QLineEdit;
class QPushButton;
class QScrollArea;

namespace headcap::app {

class Label;

class TechniquesView : public View {
    Q_OBJECT
public:
    explicit TechniquesView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    [[nodiscard]] bool leave() override { return m_edits.leave(); }
    void refresh() override;
    bool back() override;
    [[nodiscard]] QString title() const override { return tr("Techniques"); }

    [[nodiscard]] RuledTable& list() { return *m_list; }
    [[nodiscard]] TechniqueForm& form() { return *m_form; }
    [[nodiscard]] QLineEdit& filter() { return *m_filter; }

private:
    using Own = core::HouseTechnique;
    void layOut();
    void connectAll();
    void showRows();
    void showCurrent();
    void showHead();
    void startNew();
    void takeBack();

    Session& m_session;
    PageEdits m_edits;
    HouseTechniques m_techniques;
    QLineEdit* m_filter;
    QPushButton* m_add;
    RuledTable* m_list;
    Label* m_name;
    Label* m_standing;
    QPushButton* m_back;
    QScrollArea* m_scroll;
    TechniqueForm* m_form;
};

} // namespace headcap::app
