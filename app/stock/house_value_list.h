// The house values of cutting and sewing: every figure with where it comes from; a workshop puts
// its own in the place of one that ships, with its reason.
#pragma once

#include <map>

#include "app/form/list_section.h"
#include "app/session/session.h"
#include "core/cutting/house_figures.h"
#include "core/materials/recipe_record.h"

namespace headcap::app {

class FieldRow;
class PlainForm;

class HouseValueList : public ListSection {
    Q_OBJECT
public:
    explicit HouseValueList(Session& session, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] const core::CuttingHouse& house() const { return m_house; }
    [[nodiscard]] PlainForm& form() { return *m_form; }

private:
    HouseValueList(Session& session, PlainForm* form, QWidget* parent);
    void showCurrent();
    void keep();
    [[nodiscard]] const core::HouseFigure* current() const;

    Session& m_session;
    PlainForm* m_form;
    FieldRow* m_value;
    FieldRow* m_source;
    core::CuttingHouse m_house;
    std::map<core::Uuid, const core::HouseFigure*> m_figures;
    std::map<std::string, core::Stored<core::HouseValue>, std::less<>> m_own;
};

} // namespace headcap::app
