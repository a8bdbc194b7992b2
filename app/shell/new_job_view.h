// Takes in a book: the least that must be said of it, of its owner and of the job; the rest is said
// on the job's first page.
#pragma once

#include "app/form/record_form.h"
#include "app/shell/view.h"

class QVBoxLayout;

namespace headcap::app {

class NewJobView : public View {
    Q_OBJECT
public:
    explicit NewJobView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    [[nodiscard]] QString title() const override { return tr("New job"); }
    // Makes the job and goes to it; false where something is missing or was refused.
    bool takeIn();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildForms(QVBoxLayout& down);
    void startAnew();
    [[nodiscard]] std::optional<core::Id<core::Owner>> ownerFor(core::Change& change);
    [[nodiscard]] std::optional<core::Stored<core::Item>> bookBefore() const;

    Session& m_session;
    RecordForm<core::Owner>* m_owner;
    RecordForm<core::Item>* m_book;
    RecordForm<core::Job>* m_job;
    FieldRow* m_before;              // the book, where it has been here before
    std::vector<Choice> m_offered{}; // books
    std::vector<Choice> m_owners{};  // all that were offered
};

} // namespace headcap::app
