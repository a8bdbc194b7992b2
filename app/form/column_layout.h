// Lays the rows of a form out in one column, or in two where there is room for them, in reading
// order; a wide row has both columns to itself.
#pragma once

#include <vector>

#include <QLayout>

namespace headcap::app {

class ColumnLayout : public QLayout {
public:
    explicit ColumnLayout(QWidget* parent);
    ~ColumnLayout() override;

    void addRow(QWidget* row, bool isWide);

    void addItem(QLayoutItem* item) override;
    [[nodiscard]] int count() const override;
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;
    // What is left over stays below the form.
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }

private:
    struct Row {
        QLayoutItem* item;
        bool isWide;
    };
    int arrange(const QRect& rect, bool isReal) const;

    std::vector<Row> m_rows;
};

} // namespace headcap::app
