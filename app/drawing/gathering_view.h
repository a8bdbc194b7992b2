// The gatherings of a book in one row, and the chosen one drawn large below it. Left and Right walk
// the gatherings; the row wraps, so that a book of many gatherings is seen whole.
#pragma once

#include <vector>

#include <QWidget>

#include "core/collation/gathering_picture.h"

namespace headcap::app {

class GatheringView : public QWidget {
    Q_OBJECT
public:
    explicit GatheringView(QWidget* parent = nullptr);

    // Stays at the gathering that was looked at, where it is still there; else at the first that
    // is not whole. Until the copy has been gone through nothing is said to be whole.
    void setPictures(std::vector<core::PicturedGathering> pictures, bool isGoneThrough);
    [[nodiscard]] bool isEmpty() const { return m_pictures.empty(); }
    [[nodiscard]] std::size_t current() const { return m_current; }
    void setCurrent(std::size_t index);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] int perRow(int width) const;
    [[nodiscard]] int rowHeight() const;
    [[nodiscard]] QRect stationOf(std::size_t index) const;
    void paintStation(QPainter& painter, std::size_t index) const;

    std::vector<core::PicturedGathering> m_pictures;
    std::size_t m_current = 0;
    bool m_isGoneThrough = false;
};

} // namespace headcap::app
