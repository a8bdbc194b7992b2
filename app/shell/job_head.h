// The head of a job: number, short title in the text face, owner, state in words, when it is due;
// and where there is a hazard, a hatched strip the full width with its word.
#pragma once

#include <QWidget>

#include "core/record/job_file.h"

class QPushButton;

namespace headcap::app {

class Label;

// The strip: a hatch, and the words on a patch of paper.
class HazardStrip : public QWidget {
    Q_OBJECT
public:
    explicit HazardStrip(QWidget* parent = nullptr);
    void setWords(const QString& words);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();
    [[nodiscard]] QRect wordsRect(int width) const;
    QString m_words;
};

class JobHead : public QWidget {
    Q_OBJECT
public:
    explicit JobHead(QWidget* parent = nullptr);
    void show(const core::JobFile& file, core::Day today);
    using QWidget::show;

Q_SIGNALS:
    void stateAsked();
    void backAsked();

private:
    Label* m_number;
    Label* m_title;
    Label* m_owner;
    QPushButton* m_state;
    Label* m_due;
    HazardStrip* m_hazards;
};

// "Arsenical green, cover paper: suspected. Nitrile gloves; wash hands afterwards." Empty where
// there is none.
[[nodiscard]] QString hazardWords(const core::JobFile& file);

} // namespace headcap::app
