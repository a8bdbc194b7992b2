// Approved and done: where the two part, each explained or still open. An explanation is written
// where the matter stands.
#pragma once

#include <optional>

#include <QWidget>

#include "core/treatment/departures.h"

class QVBoxLayout;

namespace headcap::app {

class DepartureList : public QWidget {
    Q_OBJECT
public:
    explicit DepartureList(QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::Clock& clock);
    using QWidget::show;
    [[nodiscard]] const std::vector<core::Departure>& departures() const { return m_departures; }

Q_SIGNALS:
    void explained(const headcap::core::RecordRef& subject, const QString& rule,
                   const QString& text);

private:
    void addRow(const core::Departure& one);

    std::optional<core::JobFile> m_file;
    std::vector<core::Departure> m_departures;
    QWidget* m_sheet = nullptr;
    QVBoxLayout* m_rows = nullptr;
};

} // namespace headcap::app
