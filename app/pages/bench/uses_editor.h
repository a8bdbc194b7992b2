// The materials of a step that is being written, one below the other.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "core/materials/fitness.h"
#include "core/materials/shelf.h"
#include "core/treatment/step.h"

class QPushButton;
class QVBoxLayout;

namespace headcap::app {

class FieldRow;
class UseRow;

class UsesEditor : public QWidget {
    Q_OBJECT
public:
    explicit UsesEditor(Session& session, QWidget* parent = nullptr);

    // Blank rows are made for this step.
    void show(const core::Step& step, const std::vector<core::MaterialUse>& uses,
              const core::JobFile& file);
    using QWidget::show;
    // Another technique is being written: what it asks of the materials.
    void follow(const std::string& technique);
    // Lots and balances as they are now.
    void refresh();
    // With what can be read; rows that name nothing are left out.
    [[nodiscard]] std::vector<core::MaterialUse> taken();
    [[nodiscard]] FieldRow* troubled() const;
    [[nodiscard]] const std::vector<UseRow*>& rows() const { return m_rows; }
    [[nodiscard]] const core::Shelf& shelf() const { return m_shelf; }
    // A row to write in, and the cursor there; one that is still blank is taken.
    void addBlank();
    // The same, but the cursor stays where it is.
    void offerBlank();
    void clear();
    void alignLabels(int width) { m_labels = width; }

Q_SIGNALS:
    void rowsChanged();

private:
    void add(const core::MaterialUse& use);
    [[nodiscard]] core::FitnessPurpose purposeOf(const core::MaterialUse& use) const;

    Session& m_session;
    core::Shelf m_shelf;
    std::optional<core::Step> m_step;
    std::optional<core::JobFile> m_file;
    std::vector<UseRow*> m_rows;
    QVBoxLayout* m_down;
    QPushButton* m_add;
    int m_labels = 0; // as wide as those of the step
};

} // namespace headcap::app
