// A slip of the worklist: number, the book in the text face, owner, one sentence of the next thing
// to do, and when it is due.
#pragma once

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
    [[nodiscard]] int wordsX() const;
    [[nodiscard]] QRect nextRect(int left, int top, int width) const;

    SlipWords m_words;
    std::string m_folded;
    mutable QSize m_measured{-1, -1}; // the height of the width last asked
};

} // namespace headcap::app
