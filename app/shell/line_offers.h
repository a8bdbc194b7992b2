// What the words in the bench line may become, in a list that floats above it: large rows to touch,
// or Down and Up to move, Tab to take one.
#pragma once

#include <vector>

#include <QWidget>

namespace headcap::app {

struct LineOffer {
    QString text; // "tipped in"
    QString says; // "Tipping in"
    QString line; // the line up to the cursor, as it reads once this is taken
};

class LineOffers : public QWidget {
    Q_OBJECT
public:
    explicit LineOffers(QWidget* parent);
    // Stands above `foot`, its words in line with those of the field; hides where there is nothing
    // to offer. `typed` is the line up to the cursor.
    void show(std::vector<LineOffer> offers, const QString& typed, const QWidget& field,
              const QWidget& foot);
    using QWidget::show;
    void move(int by);
    [[nodiscard]] const LineOffer* current() const;
    // Moved to by the person, not just the first.
    [[nodiscard]] bool isChosen() const { return m_isChosen; }
    // A word that stands whole as it was typed, "paste", is not replaced until an offer was moved
    // to.
    [[nodiscard]] bool isTakenByTab() const;
    [[nodiscard]] const std::vector<LineOffer>& offers() const { return m_offers; }

Q_SIGNALS:
    void taken(const headcap::app::LineOffer& offer);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    std::vector<LineOffer> m_offers;
    QString m_typed;
    std::size_t m_current = 0;
    bool m_isChosen = false;
};

} // namespace headcap::app
