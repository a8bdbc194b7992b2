#include "app/pages/collation/walk_keys.h"

#include <algorithm>
#include <array>

#include <QCoreApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QKeySequence>
#include <QPushButton>
#include <QStyleOptionButton>
#include <QStylePainter>

#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/look/style.h"
#include "core/record/describe.h"

namespace headcap::app {
namespace {

constexpr int kColumn = 184;

#define HEADCAP_WORDS(text) QT_TRANSLATE_NOOP("walk", text)

constexpr std::array kTable{
    WalkKey{WalkAction::leaf, HEADCAP_WORDS("As expected"), "Space",
            HEADCAP_WORDS("This leaf is as it should be")},
    WalkKey{WalkAction::gathering, HEADCAP_WORDS("Rest of the gathering"), "E",
            HEADCAP_WORDS("All to the end of the gathering is as it should be, passed whole")},
    WalkKey{WalkAction::back, HEADCAP_WORDS("One leaf back"), "Backspace",
            HEADCAP_WORDS("Looks at the leaf before again; nothing is taken back")},
    WalkKey{WalkAction::read, HEADCAP_WORDS("As read"), "A",
            HEADCAP_WORDS("Number, mark or catchword as they stand, where they differ")},
    WalkKey{WalkAction::runsOn, HEADCAP_WORDS("Text runs on"), "+",
            HEADCAP_WORDS("The text runs on from the page before")},
    WalkKey{WalkAction::breaks, HEADCAP_WORDS("Text breaks"), "-",
            HEADCAP_WORDS("The text does not run on from the page before")},
    WalkKey{WalkAction::foundLacking, HEADCAP_WORDS("Lacking"), "L",
            HEADCAP_WORDS("The leaf is not there")},
    WalkKey{WalkAction::foundLoose, HEADCAP_WORDS("Loose"), "O",
            HEADCAP_WORDS("In the book, but its fold does not hold")},
    WalkKey{WalkAction::foundDetached, HEADCAP_WORDS("Detached"), "D",
            HEADCAP_WORDS("Out of the book, and with it")},
    WalkKey{WalkAction::foundMisbound, HEADCAP_WORDS("Misbound"), "M",
            HEADCAP_WORDS("Bound where it does not belong")},
    WalkKey{WalkAction::foundDuplicated, HEADCAP_WORDS("Duplicated"), "U",
            HEADCAP_WORDS("Bound in twice")},
    WalkKey{WalkAction::foundCancel, HEADCAP_WORDS("Cancel"), "C",
            HEADCAP_WORDS("Taken out or replaced by the printer")},
    WalkKey{WalkAction::foundInserted, HEADCAP_WORDS("Inserted"), "I",
            HEADCAP_WORDS("Put in, no part of the make-up")},
    WalkKey{WalkAction::foundSupplied, HEADCAP_WORDS("Supplied"), "S",
            HEADCAP_WORDS("From another copy")},
    WalkKey{WalkAction::foundFacsimile, HEADCAP_WORDS("Facsimile"), "F",
            HEADCAP_WORDS("A copy made later")},
    WalkKey{WalkAction::foundMisnumbered, HEADCAP_WORDS("Misnumbered"), "N",
            HEADCAP_WORDS("Its number is not the right one")},
    WalkKey{WalkAction::foundMissigned, HEADCAP_WORDS("Missigned"), "G",
            HEADCAP_WORDS("Its mark is not the right one")},
    WalkKey{WalkAction::foundTornWithLoss, HEADCAP_WORDS("Torn with loss"), "X",
            HEADCAP_WORDS("Torn, and a piece is gone")},
    WalkKey{WalkAction::foundTorn, HEADCAP_WORDS("Torn"), "T", HEADCAP_WORDS("Torn, nothing gone")},
    WalkKey{WalkAction::foundTrimmed, HEADCAP_WORDS("Trimmed into text"), "K",
            HEADCAP_WORDS("The text is cut into")},
    WalkKey{WalkAction::foundBlankLacking, HEADCAP_WORDS("Blank lacking"), "B",
            HEADCAP_WORDS("A blank that belongs to the book is not there")},
    WalkKey{WalkAction::foundFoldedPlate, HEADCAP_WORDS("Folded plate"), "P",
            HEADCAP_WORDS("A plate or table that folds")},
    WalkKey{WalkAction::foundOther, HEADCAP_WORDS("Something else"), "Q",
            HEADCAP_WORDS("Anything else that is not as it should be")},
};

#undef HEADCAP_WORDS

QString translated(const char* text) {
    return QCoreApplication::translate("walk", text);
}

} // namespace

std::span<const WalkKey> walkKeys() {
    return kTable;
}

QString wordsOf(const WalkKey& key) {
    return translated(key.words);
}

QString keyText(const WalkKey& key) {
    return QKeySequence{QLatin1String(key.key)}.toString(QKeySequence::NativeText);
}

WalkAction actionOf(core::CollationKind kind) {
    return static_cast<WalkAction>(static_cast<int>(WalkAction::foundLacking) +
                                   static_cast<int>(kind));
}

std::optional<core::CollationKind> kindOf(WalkAction action) {
    const int kind = static_cast<int>(action) - static_cast<int>(WalkAction::foundLacking);
    const auto kinds = static_cast<int>(core::EnumNames<core::CollationKind>::kNames.size());
    return kind >= 0 && kind < kinds ? std::optional{static_cast<core::CollationKind>(kind)}
                                     : std::nullopt;
}

std::optional<WalkAction> walkAction(const QKeyEvent& event) {
    if ((event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) != Qt::NoModifier) {
        return std::nullopt;
    }
    const auto found = std::ranges::find_if(kTable, [&](const WalkKey& key) {
        return QKeySequence{QLatin1String(key.key)} == QKeySequence{event.key()};
    });
    return found == kTable.end() ? std::nullopt : std::optional{found->action};
}

// The key in one column and the word in another, so that both can be run down with the eye.
class KeyButton : public QPushButton {
public:
    KeyButton(const QString& key, const QString& words) : QPushButton(words), m_key(key) {}

    [[nodiscard]] int keyAdvance() const { return fontMetrics().horizontalAdvance(m_key); }
    // Of the column it stands in.
    void setKeyWidth(int width) {
        m_keyWidth = width;
        updateGeometry();
    }
    [[nodiscard]] QSize sizeHint() const override {
        return {m_keyWidth + fontMetrics().horizontalAdvance(text()) + 3 * kGap,
                QPushButton::sizeHint().height()};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent*) override {
        QStylePainter painter{this};
        QStyleOptionButton option;
        initStyleOption(&option);
        option.text.clear();
        painter.drawControl(QStyle::CE_PushButton, option);
        const Colours& colours = coloursFor(palette());
        const QRect inside = rect().adjusted(kGap, 0, -kGap, 0);
        painter.setPen(colours.accent);
        painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter, m_key);
        painter.setPen(colours.ink);
        painter.drawText(inside.adjusted(m_keyWidth, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         text());
    }

private:
    QString m_key;
    int m_keyWidth = 0;
};

WalkKeys::WalkKeys(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(kGap);
    m_grid->setVerticalSpacing(kGrid);
    for (const WalkKey& key : kTable) {
        auto* button = new KeyButton(keyText(key), wordsOf(key));
        button->setToolTip(QStringLiteral("%1 (%2)").arg(translated(key.tip), keyText(key)));
        button->setFocusPolicy(Qt::NoFocus); // the hand stays where the walk is
        button->setProperty(kQuietButton, key.action >= WalkAction::read);
        connect(button, &QPushButton::clicked, this,
                [this, action = key.action] { Q_EMIT pressed(action); });
        m_buttons.push_back(button);
    }
    layOut(4);
}

void WalkKeys::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layOut(std::clamp(width() / kColumn, 2, 6));
}

void WalkKeys::layOut(int columns) {
    if (columns == m_columns) {
        return;
    }
    m_columns = columns;
    const auto count = static_cast<int>(m_buttons.size());
    for (int i = 0; i < count; ++i) {
        m_grid->addWidget(m_buttons[static_cast<std::size_t>(i)], i / columns, i % columns);
    }
    for (int column = 0; column < columns; ++column) {
        int widest = 0;
        for (int i = column; i < count; i += columns) {
            widest = std::max(widest, m_buttons[static_cast<std::size_t>(i)]->keyAdvance());
        }
        for (int i = column; i < count; i += columns) {
            m_buttons[static_cast<std::size_t>(i)]->setKeyWidth(widest + kSpace);
        }
    }
    for (int column = 0; column < 6; ++column) {
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
    }
}

} // namespace headcap::app
