// The photographs of the job: a contact sheet by when they were taken, the form of the chosen one,
// the large view, and their taking in by file dialog, by drag and drop and by paste.
#pragma once

#include "app/form/record_form.h"
#include "app/pages/job_page.h"
#include "app/photo/photo_intake.h"

class QPushButton;

namespace headcap::app {

class Label;

namespace photo {
class CameraForm;
class ContactSheet;
class LargeView;
} // namespace photo
namespace print {
class PhotoLoader;
}

class PhotographsPage : public JobPage {
    Q_OBJECT
public:
    explicit PhotographsPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    // Not while photographs are being taken in.
    [[nodiscard]] bool leave() override;
    bool goTo(const core::RecordRef& ref) override;
    void enter() override;

    [[nodiscard]] photo::ContactSheet& sheet() { return *m_sheet; }
    [[nodiscard]] photo::CameraForm& camera() { return *m_camera; }
    [[nodiscard]] photo::LargeView& largeView() { return *m_large; }
    [[nodiscard]] RecordForm<core::Photograph>& form() { return *m_form; }

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void buildHead();
    void buildSheet();
    void connectParts();
    void askForFiles();
    void paste();
    void take(const std::vector<photo::Incoming>& incoming, core::PhotoRole role);
    void take(const std::vector<photo::Incoming>& incoming);
    void takenIn(const photo::IntakeResult& result, const photo::IntakePlace& place);
    void showChosen();
    void openLarge();
    void removeChosen();
    void moveChosen(int by);
    [[nodiscard]] const core::Photograph* chosen() const;
    [[nodiscard]] const core::Photograph* savedChosen();

    print::PhotoLoader* m_loader;
    photo::PhotoIntake* m_intake;
    RecordForm<core::Photograph>* m_form;
    Label* m_facts;
    Label* m_progress;
    QPushButton* m_stop;
    photo::ContactSheet* m_sheet = nullptr;
    photo::LargeView* m_large;
    photo::CameraForm* m_camera;
    std::optional<core::JobFile> m_file;
};

} // namespace headcap::app
