// Where the camera puts its pictures, on this machine, and the house's values by which they are put
// to the steps they were taken in.
#pragma once

#include <array>
#include <vector>

#include <QWidget>

#include "app/session/session.h"
#include "core/photo/photo_steps.h"

class QPushButton;

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

namespace photo {

class CameraForm : public QWidget {
    Q_OBJECT
public:
    explicit CameraForm(Session& session, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] const std::array<FieldRow*, 3>& rows() const { return m_rows; }
    [[nodiscard]] QPushButton& chooseButton() { return *m_choose; }

private:
    void layOut();
    void choose();
    void watch(const QString& folder);
    void keep();
    void put(core::Change& change, std::string_view key, core::Minutes minutes);

    Session& m_session;
    Label* m_folder;
    QPushButton* m_choose;
    QPushButton* m_none;
    PlainForm* m_form;
    std::array<FieldRow*, 3> m_rows{}; // before, after, ahead
    std::vector<core::Stored<core::HouseValue>> m_own;
};

} // namespace photo
} // namespace headcap::app
