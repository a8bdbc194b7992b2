#include "app/shell/bench_line.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"

namespace headcap::app {

ChipRow::ChipRow(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ChipRow::show(std::vector<LineChip> chips) {
    m_chips = std::move(chips);
    QStringList said;
    for (const LineChip& chip : m_chips) {
        said << QStringLiteral("%1 %2").arg(chip.label, chip.text);
    }
    setAccessibleName(said.join(QStringLiteral(", ")));
    update();
}

QSize ChipRow::sizeHint() const {
    return {320, QFontMetrics{faceFont(Face::smallStrong)}.height() + kGap};
}

void ChipRow::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    const QFontMetrics quiet{faceFont(Face::small)};
    const QFontMetrics strong{faceFont(Face::smallStrong)};
    int x = 0;
    for (const LineChip& chip : m_chips) {
        const int labelWidth = quiet.horizontalAdvance(chip.label);
        const int room = width() - x - labelWidth - 6 * kGrid;
        if (room < 8 * kGrid) {
            break;
        }
        const QString text = strong.elidedText(chip.text, Qt::ElideRight, room);
        const int wide = labelWidth + strong.horizontalAdvance(text) + 6 * kGrid;
        const QRectF box{x + 0.5, 0.5, wide - 1.0, height() - 1.0};
        painter.setPen(QPen(chip.isDoubtful ? c.open : c.rule, 1,
                            chip.isDoubtful ? Qt::DashLine : Qt::SolidLine));
        painter.setBrush(c.paper);
        painter.drawRoundedRect(box, 3, 3);
        const int baseline = (height() + strong.ascent() - strong.descent()) / 2;
        painter.setFont(faceFont(Face::small));
        painter.setPen(c.quiet);
        painter.drawText(x + kGap, baseline, chip.label);
        painter.setFont(faceFont(Face::smallStrong));
        painter.setPen(chip.isDoubtful ? c.open : c.ink);
        painter.drawText(x + kGap + labelWidth + 2 * kGrid, baseline, text);
        x += wide + kGap;
    }
}

BenchLine::BenchLine(QWidget* parent)
    : QWidget(parent), m_chips(new ChipRow(this)), m_line(new QLineEdit(this)),
      m_hint(new Label(Face::small, Ink::quiet, tr("Enter takes it"), this)) {
    m_line->setProperty(kBare, true);
    m_line->setFont(faceFont(Face::bench));
    m_line->setMinimumHeight(kBenchControl);
    m_line->setAccessibleName(tr("Bench line"));
    m_line->setPlaceholderText(tr("Type or scan what was done …"));
    m_line->setToolTip(tr("As one says it: guarded K7 with paste 31-006 0.6 g 18 min (Ctrl+L)"));
    m_line->installEventFilter(this);
    m_hint->hide();
    connect(m_line, &QLineEdit::textChanged, this, &BenchLine::readAgain);
    connect(m_line, &QLineEdit::returnPressed, this, &BenchLine::take);

    auto* across = new QHBoxLayout;
    across->addWidget(m_line, 1);
    across->addWidget(m_hint);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(kPageMargin, kGap, kPageMargin, kGap);
    down->setSpacing(0);
    down->addWidget(m_chips);
    down->addLayout(across);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void BenchLine::setReader(Reader reader) {
    m_read = std::move(reader);
    readAgain();
}

void BenchLine::readAgain() {
    const bool isEmpty = m_line->text().trimmed().isEmpty();
    m_chips->show(isEmpty || !m_read ? std::vector<LineChip>{} : m_read(m_line->text()));
    m_hint->setVisible(!isEmpty);
    m_chips->setVisible(!isEmpty);
}

void BenchLine::take() {
    if (!m_line->text().trimmed().isEmpty() && m_take && m_take(m_line->text())) {
        m_line->clear();
    }
}

bool BenchLine::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) {
        update();
    }
    // Esc empties the line first; the words can be had back with the field's own undo.
    const bool isEsc =
        (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
    if (isEsc && !m_line->text().isEmpty()) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            m_line->selectAll();
            m_line->del();
        }
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BenchLine::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.raised);
    const bool hasFocus = m_line->hasFocus();
    painter.fillRect(QRect(0, 0, width(), hasFocus ? 2 : 1), hasFocus ? c.accent : c.rule);
}

} // namespace headcap::app
