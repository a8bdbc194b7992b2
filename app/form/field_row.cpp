#include "app/form/field_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include "app/form/growing_text.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/style.h"

namespace headcap::app {
FieldRow::FieldRow(const QString& label, QWidget* control, QWidget* parent)
    : QWidget(parent), m_label(new Label(Face::small, Ink::quiet, label, this)), m_control(control),
      m_hint(new Label(Face::small, Ink::quiet, {}, this)) {
    m_control->setParent(this);
    m_control->setAccessibleName(label);
    m_control->installEventFilter(this);
    m_label->setBuddy(m_control);
    m_label->setWordWrap(true);
    m_label->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_label->setMinimumHeight(controlHeight(fontMetrics()));
    m_hint->setWordWrap(true);
    m_hint->hide();

    auto* right = new QVBoxLayout;
    right->setSpacing(2);
    right->addWidget(m_control);
    right->addWidget(m_hint);
    right->addStretch();
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kSpace);
    across->addWidget(m_label, 0, Qt::AlignTop);
    across->addLayout(right, 1);

    if (auto* line = qobject_cast<QLineEdit*>(m_control)) {
        connect(line, &QLineEdit::textChanged, this, &FieldRow::onEdited);
        connect(line, &QLineEdit::returnPressed, this, &FieldRow::left);
    } else if (auto* lines = qobject_cast<QPlainTextEdit*>(m_control)) {
        connect(lines, &QPlainTextEdit::textChanged, this, &FieldRow::onEdited);
    } else if (auto* combo = qobject_cast<QComboBox*>(m_control)) {
        combo->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        connect(combo, &QComboBox::activated, this, [this] {
            onEdited();
            Q_EMIT left();
        });
    } else if (auto* check = qobject_cast<QCheckBox*>(m_control)) {
        connect(check, &QCheckBox::clicked, this, [this] {
            onEdited();
            Q_EMIT left();
        });
    }
}

QString FieldRow::label() const {
    return m_label->text();
}

QString FieldRow::text() const {
    if (const auto* line = qobject_cast<const QLineEdit*>(m_control)) {
        return line->text();
    }
    if (const auto* lines = qobject_cast<const QPlainTextEdit*>(m_control)) {
        return lines->toPlainText();
    }
    if (const auto* combo = qobject_cast<const QComboBox*>(m_control)) {
        return QString::number(combo->currentIndex());
    }
    return QString::number(qobject_cast<const QCheckBox*>(m_control)->isChecked() ? 1 : 0);
}

void FieldRow::setText(const QString& text) {
    if (text == this->text()) {
        return; // keeps the cursor where it is
    }
    m_isSetting = true;
    if (auto* line = qobject_cast<QLineEdit*>(m_control)) {
        line->setText(text);
        if (!line->hasFocus()) {
            line->setCursorPosition(0); // a long text is seen from its beginning
        }
    } else if (auto* lines = qobject_cast<QPlainTextEdit*>(m_control)) {
        lines->setPlainText(text);
    } else if (auto* combo = qobject_cast<QComboBox*>(m_control)) {
        combo->setCurrentIndex(text.toInt());
    } else {
        qobject_cast<QCheckBox*>(m_control)->setChecked(text == QLatin1String("1"));
    }
    m_isSetting = false;
}

void FieldRow::accept(const QString& text) {
    m_isTouched = false;
    setText(text);
    m_shown = text;
    m_isConflicted = false;
    showConflictButtons(false);
    setError({});
}

void FieldRow::rewrite(const QString& text) {
    setText(text);
    setError({});
}

void FieldRow::takeBack() {
    accept(m_shown);
}

void FieldRow::setConflict(const QString& theirs, const QString& theirWords) {
    m_shown = theirs;
    m_isConflicted = true;
    showHint(tr("Meanwhile somebody wrote “%1”.").arg(theirWords), true);
    showConflictButtons(true);
}

void FieldRow::showConflictButtons(bool isShown) {
    if (isShown && m_conflict == nullptr) {
        m_conflict = new QWidget(this);
        auto* mine = quietButton(tr("Keep mine"));
        auto* theirs = quietButton(tr("Take theirs"));
        auto* across = new QHBoxLayout(m_conflict);
        across->setContentsMargins(0, 0, 0, 0);
        across->addWidget(mine);
        across->addWidget(theirs);
        across->addStretch();
        qobject_cast<QVBoxLayout*>(layout()->itemAt(1)->layout())->insertWidget(2, m_conflict);
        connect(mine, &QPushButton::clicked, this, [this] {
            m_isConflicted = false;
            showConflictButtons(false);
            showHint({}, false);
            Q_EMIT left();
        });
        connect(theirs, &QPushButton::clicked, this, &FieldRow::takeBack);
    }
    if (m_conflict != nullptr) {
        m_conflict->setVisible(isShown);
    }
}

void FieldRow::setError(const QString& sentence) {
    m_hasError = !sentence.isEmpty();
    showHint(sentence, m_hasError);
    if (m_control->property(kWrong).toBool() != m_hasError) {
        m_control->setProperty(kWrong, m_hasError);
        m_control->update();
    }
    m_control->setAccessibleDescription(sentence);
}

void FieldRow::showHint(const QString& words, bool isError) {
    m_hint->setInk(isError ? Ink::must : Ink::quiet);
    m_hint->setText(words);
    m_hint->setVisible(!words.isEmpty());
}

void FieldRow::onEdited() {
    if (m_isSetting) {
        return;
    }
    m_isTouched = true;
    if (!m_isConflicted) {
        setError({});
        if (m_understood) {
            const QString words = m_understood(text());
            showHint(words == text() ? QString{} : words, false);
        }
    }
    if (m_matches && m_control->hasFocus()) {
        complete();
    }
    Q_EMIT edited();
}

void FieldRow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // No line of text longer than the eye can follow; what is over stays free at the right.
    const int widest = lineWidth(m_control->fontMetrics()) + 6 * kGrid;
    const int room = width() - m_label->width() - kSpace;
    layout()->setContentsMargins(0, 0, std::max(0, room - widest), 0);
}

FieldRow& FieldRow::understood(std::function<QString(const QString&)> words) {
    m_understood = std::move(words);
    return *this;
}

FieldRow& FieldRow::placeholder(const QString& text) {
    if (auto* line = qobject_cast<QLineEdit*>(m_control)) {
        line->setPlaceholderText(text);
    } else if (auto* lines = qobject_cast<QPlainTextEdit*>(m_control)) {
        lines->setPlaceholderText(text);
    }
    return *this;
}

FieldRow& FieldRow::tip(const QString& text) {
    m_control->setToolTip(text);
    return *this;
}

FieldRow& FieldRow::readOnly() {
    m_control->setEnabled(false);
    return *this;
}

int FieldRow::labelWidth() const {
    return m_label->fontMetrics().horizontalAdvance(m_label->text()) + 1;
}

void FieldRow::setLeastHeight(int height) {
    m_label->setMinimumHeight(height);
    if (auto* lines = qobject_cast<GrowingText*>(m_control)) {
        lines->setLeastHeight(height);
    } else {
        m_control->setMinimumHeight(height);
    }
}

void FieldRow::setLabelWidth(int width) {
    m_label->setFixedWidth(width);
}

} // namespace headcap::app
