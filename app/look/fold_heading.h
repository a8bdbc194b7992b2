// The heading of rows that are folded away: a chevron, the name, and beside it what the folded rows
// say, so that nothing that was written is out of sight. Space and Enter open and fold.
#pragma once

#include <QPushButton>

namespace headcap::app {

class FoldHeading : public QPushButton {
    Q_OBJECT
public:
    explicit FoldHeading(const QString& name, QWidget* parent = nullptr);

    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& summary() const { return m_summary; }
    void setSummary(const QString& words);
    // Where the summary begins: on the edge of the form's controls.
    void setNameWidth(int width);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_name;
    QString m_summary;
    int m_nameWidth = 0;
};

} // namespace headcap::app
