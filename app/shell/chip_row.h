// What has been understood of a line, as small labelled parts set one after the other, in as many
// rows as they need.
#pragma once

#include <vector>

#include <QWidget>

namespace headcap::app {

struct LineChip {
    QString label; // "lot"
    QString text;  // "31-006 wheat paste 0.6 g"
    bool isDoubtful = false;
};

class ChipRow : public QWidget {
    Q_OBJECT
public:
    explicit ChipRow(QWidget* parent = nullptr);
    void show(std::vector<LineChip> chips);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Placed {
        QRectF box;
        QString text; // as much of it as there is room for
    };
    [[nodiscard]] std::vector<Placed> placed() const;
    void fit();

    std::vector<LineChip> m_chips;
};

} // namespace headcap::app
