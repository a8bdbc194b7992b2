// Words set in one of the faces and inks of the house; they follow the palette and the size of the
// application's font by themselves.
#pragma once

#include <QLabel>

#include "app/look/fonts.h"
#include "app/look/palette.h"

namespace headcap::app {

class Label : public QLabel {
    Q_OBJECT
public:
    explicit Label(Face face, Ink ink = Ink::ink, const QString& text = {},
                   QWidget* parent = nullptr);
    void setInk(Ink ink);
    // Running text: wraps, and is never set wider than 75 characters.
    void setRunning();
    // Of the width it may have; a layout asks it many times over.
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Measured {
        QString text;
        bool isWrapped = false;
        int width = -1;
        int height = 0;
    };
    void dress();
    Face m_face;
    Ink m_ink;
    bool m_isRunning = false;
    mutable Measured m_measured{}; // last
};

// A hair rule across.
class HairRule : public QWidget {
    Q_OBJECT
public:
    explicit HairRule(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace headcap::app
