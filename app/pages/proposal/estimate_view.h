// What an option will probably take, learned from the workshop's own finished steps: in a sentence,
// and line by line as a box (the middle half of such work), with what the proposal says and, once
// it is done, what it took.
#pragma once

#include <vector>

#include <QWidget>

#include "core/treatment/estimate.h"
#include "core/treatment/past_work.h"

namespace headcap::app {

class Label;

// The lines to scale, one below the other.
class EstimateRows : public QWidget {
    Q_OBJECT
public:
    struct Row {
        QString title;
        core::LineEstimate estimate;
        core::Minutes said{0};
        core::Minutes actual{0};
        bool isDone = false;
    };
    explicit EstimateRows(QWidget* parent = nullptr);
    void show(std::vector<Row> rows);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintRow(QPainter& painter, const Row& row, int top, int left, double scale) const;
    [[nodiscard]] int rowHeight() const;

    std::vector<Row> m_rows;
};

class EstimateView : public QWidget {
    Q_OBJECT
public:
    explicit EstimateView(QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::Id<core::ProposalOption>& option,
              const std::vector<core::PastWork>& past);
    using QWidget::show;
    // Until finished work has been read.
    void wait();
    [[nodiscard]] bool isWaiting() const { return m_isWaiting; }
    [[nodiscard]] const core::OptionEstimate& estimate() const { return m_estimate; }
    [[nodiscard]] QString sentence() const;

private:
    core::OptionEstimate m_estimate;
    QStringList m_tooShort; // lines that say less than such work took
    core::Minutes m_said{0};
    bool m_isWaiting = false;
    Label* m_words;
    EstimateRows* m_rows;
    Label* m_legend;
};

} // namespace headcap::app
