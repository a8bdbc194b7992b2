// The foot of a job: one large line to type or scan into. What has been understood of it stands
// above as small labelled parts before Enter takes it; what its last words may become is offered.
// A scanned label drops into it: a scanner types faster than a hand, and its Enter takes nothing.
// Where a line asks for a reason, or for more, it is asked below it, and Enter there takes all. How
// a line is read, completed and taken is passed in.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <QStringList>
#include <QWidget>

#include "app/shell/chip_row.h"
#include "app/shell/line_offers.h"
#include "app/shell/scan_ear.h"

class QKeyEvent;
class QLineEdit;

namespace headcap::app {

class Label;
class ReasonAsker;

class BenchLine : public QWidget {
    Q_OBJECT
public:
    using Reader = std::function<std::vector<LineChip>(const QString&)>;
    // True: taken, the line is empty again.
    using Taker = std::function<bool(const QString& line, const QStringList& answers)>;
    // What must be answered next, after so many answers: why a lot that is unfit is used; empty:
    // nothing.
    using Asker = std::function<QString(const QString& line, const QStringList& answers)>;
    using Doubter = std::function<QString(const QString& line)>;
    using Completer = std::function<std::vector<LineOffer>(const QString& upToCursor)>;
    // The line with the label's lot in it, and the cursor; nothing where the word is no label.
    struct Scanned {
        QString line;
        int cursor = 0;
    };
    using Scanner = std::function<std::optional<Scanned>(const QString& before, const QString& word,
                                                         const QString& after)>;

    explicit BenchLine(QWidget* parent = nullptr);
    void setReader(Reader reader);
    void setTaker(Taker taker) { m_take = std::move(taker); }
    void setAsker(Asker asker) { m_ask = std::move(asker); }
    // What is not understood of a line, in a sentence: it is taken at the second Enter.
    void setDoubter(Doubter doubter) { m_doubt = std::move(doubter); }
    void setCompleter(Completer completer) { m_complete = std::move(completer); }
    void setScanner(Scanner scanner) { m_scan = std::move(scanner); }
    void setStopwatch(std::function<qint64()> elapsed) { m_ear.setStopwatch(std::move(elapsed)); }
    // A key pressed elsewhere, that belongs here.
    void typed(QKeyEvent& event);
    // The names of lots and people have changed: reads the line again.
    void readAgain();
    [[nodiscard]] QLineEdit& line() { return *m_line; }
    [[nodiscard]] LineOffers& offers() { return *m_offers; }
    // Seen only while it is asked for.
    [[nodiscard]] QLineEdit& reason();

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void layOut();
    void take();
    bool holdBack();
    void answer(const QString& answer);
    void stopAsking();
    void sayWhatEnterDoes();
    void offer();
    void takeOffer(const LineOffer& offer);
    bool isOffersKey(const QKeyEvent& event);
    bool isKeyOfTheLine(QKeyEvent& key, bool isPress);
    bool dropScanned();

    ChipRow* m_chips;
    QLineEdit* m_line;
    Label* m_hint;
    ReasonAsker* m_asking;
    Label* m_heldBack;              // why Enter did not take it yet
    LineOffers* m_offers = nullptr; // floats in the window, once there is one
    Reader m_read;
    Taker m_take;
    Asker m_ask;
    QStringList m_answers; // so far
    Doubter m_doubt;
    QString m_doubted; // the line that was held back
    Completer m_complete;
    Scanner m_scan;
    ScanEar m_ear;
};

} // namespace headcap::app
