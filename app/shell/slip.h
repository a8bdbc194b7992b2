// A slip of the worklist: number, the book in the text face, owner, one sentence of the next thing
// to do, and when it is due.
#pragma once

#include <optional>

#include <QAbstractButton>

#include "app/look/palette.h"
#include "core/record/stores.h"

namespace headcap::app {

struct SlipWords {
    core::Id<core::Job> job;
    QString number;
    QString book;
    QString owner;
    QString next;
    QString due;
    bool isLate = false;
    Ink ink = Ink::must;

    friend bool operator==(const SlipWords&, const SlipWords&) = default;
};

class Slip : public QAbstractButton {
    Q_OBJECT
public:
    explicit Slip(SlipWords words, QWidget* parent = nullptr);
    [[nodiscard]] const SlipWords& words() const { return m_words; }
    [[nodiscard]] bool holds(const std::string& folded) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    // What no width changes, measured once for a font: a sheet of slips is laid out over and over.
    struct Measures {
        int wordsX = 0;      // where the words begin, beside the number
        int fixedHeight = 0; // all but the next thing to do
        QSize next{};        // that on a line of its own
    };
    [[nodiscard]] const Measures& measures() const;
    [[nodiscard]] QRect nextRect(int top, int width) const;

    SlipWords m_words;
    std::string m_folded;
    mutable std::optional<Measures> m_measures{};
    mutable QSize m_wrapped{-1, -1}; // the height of the width last asked that is too narrow for it
};

} // namespace headcap::app
