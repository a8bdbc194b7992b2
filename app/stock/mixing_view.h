// Mixing: the recipes, the workshop's own before those that ship; the chosen one as a mix to be
// booked; and beside it the arithmetic of strengths and of alkali reserve.
#pragma once

#include <map>

#include "app/shell/view.h"
#include "core/materials/recipes.h"

namespace headcap::app {

class MixEditor;
class RuledList;
class Session;

class MixingView : public View {
    Q_OBJECT
public:
    explicit MixingView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    [[nodiscard]] QString title() const override { return tr("Mixing"); }
    [[nodiscard]] RuledList& list() { return *m_list; }
    [[nodiscard]] MixEditor& editor() { return *m_editor; }

private:
    void showChosen();
    void goToLabel(const QString& number);

    Session& m_session;
    RuledList* m_list;
    MixEditor* m_editor;
    core::Shelf m_shelf;
    std::map<core::Uuid, core::RecipeCard> m_recipes;
    std::map<std::string, core::Uuid> m_keys; // of shipped recipes, for the list
    std::optional<core::Uuid> m_shown;
};

} // namespace headcap::app
