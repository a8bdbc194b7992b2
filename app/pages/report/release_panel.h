// Letting a book go: the release list as the job's record makes it, each row answered or seen to,
// the sign-off last; and the return itself, with its receipt, its condition and what went with it.
#pragma once

#include <optional>
#include <vector>

#include <QWidget>

#include "app/form/record_form.h"
#include "core/custody/release_list.h"
#include "core/report/document.h"

class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace headcap::app {

class Label;
class PaperDesk;

// On the button that answers a row: the row's key.
inline constexpr const char* kReleaseKey = "releaseKey";
// On the field of a row that asks for a number.
inline constexpr const char* kReleaseCount = "releaseCount";
[[nodiscard]] inline bool asksCount(const QWidget& field) {
    return field.property(kReleaseCount).toBool();
}

class ReleasePanel : public QWidget {
    Q_OBJECT
public:
    explicit ReleasePanel(Session& session, QWidget* parent = nullptr);
    void show(const core::JobFile& file);
    using QWidget::show;
    [[nodiscard]] const std::vector<core::ReleaseRow>& rows() const { return m_rows; }
    [[nodiscard]] RecordForm<core::HandBack>& form() { return *m_form; }
    [[nodiscard]] QPushButton& giveBack() { return *m_giveBack; }
    // The button that answers a row, for keys and tests.
    [[nodiscard]] QPushButton* buttonOf(const std::string& key) const;
    void focusFirst();

Q_SIGNALS:
    void pageAsked(headcap::core::Page page);

private:
    void buildForm();
    [[nodiscard]] std::optional<std::size_t> heldRow() const;
    void focusFrom(std::size_t row);
    [[nodiscard]] static QString standingOf(int open, bool isGone);
    void addRow(const core::ReleaseRow& row);
    QVBoxLayout* wordsOf(const core::ReleaseRow& row) const;
    QLineEdit* reasonFor(const core::ReleaseRow& row);
    QPushButton* doneButton(const core::ReleaseRow& row, const QLineEdit& why);
    void addReturned();
    void answer(const std::string& key, core::ReleaseAnswer given, const QString& why);
    void keep(tl::expected<core::Change, core::ReleaseProblem> change);
    void returnIt();
    core::Document receipt(const std::optional<core::HandBack>& back);
    void printReceipt(const std::optional<core::HandBack>& back);
    void saveReceipt(const std::optional<core::HandBack>& back);

    Session& m_session;
    PaperDesk* m_desk;
    std::optional<core::JobFile> m_file;
    std::vector<core::ReleaseRow> m_rows;
    Label* m_standing;
    QWidget* m_sheet = nullptr;
    QVBoxLayout* m_down;
    QVBoxLayout* m_list = nullptr;
    QWidget* m_return;
    RecordForm<core::HandBack>* m_form;
    QPushButton* m_giveBack;
};

[[nodiscard]] QString sentence(core::ReleaseProblem problem);

} // namespace headcap::app
