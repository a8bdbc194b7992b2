// A cell of the options table: passages of text one below the other, each in its face. It knows
// how high it is at any width before it is laid out, so that no row is lower than its words.
#pragma once

#include <vector>

#include <QWidget>

#include "app/look/fonts.h"
#include "app/look/palette.h"

namespace headcap::app {

class OptionCell : public QWidget {
public:
    struct Passage {
        Face face = Face::body;
        Ink ink = Ink::ink;
        QString words{};
        int above = 0; // room before it
    };
    explicit OptionCell(std::vector<Passage> passages, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<Passage> m_passages;
};

} // namespace headcap::app
