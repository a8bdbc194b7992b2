// Labels before they are printed: the sheet with those that are named in their places, and one of
// them large enough to be read.
#pragma once

#include <optional>
#include <vector>

#include <QWidget>

#include "app/print/labels.h"

namespace headcap::app {

class LabelPreview : public QWidget {
    Q_OBJECT
public:
    explicit LabelPreview(QWidget* parent = nullptr);
    void show(const print::LabelSheet& sheet, std::vector<print::LabelWords> labels, int from);
    using QWidget::show;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const print::LabelSheet* m_sheet = nullptr;
    std::vector<print::LabelWords> m_labels;
    int m_from = 0;
};

class LabelCloseUp : public QWidget {
    Q_OBJECT
public:
    explicit LabelCloseUp(QWidget* parent = nullptr);
    // Nothing: it hides.
    void show(const print::LabelSheet& sheet, const std::optional<print::LabelWords>& label);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const print::LabelSheet* m_sheet = nullptr;
    print::LabelWords m_label;
};

} // namespace headcap::app
