// One labelled row of a form: the label, the control, and under it what was understood, or in one
// sentence why not. Every labelled control of the program is made here, so that its accessible
// name is set here. Knows its text, the text that was last shown from the record, and whether
// somebody else has changed that meanwhile.
#pragma once

#include <functional>

#include <QString>
#include <QWidget>

class QComboBox;
class QCheckBox;
class QLineEdit;
class QPlainTextEdit;

namespace headcap::app {

class Label;

class FieldRow : public QWidget {
    Q_OBJECT
public:
    // The control must be a line edit, text edit, combo box or check box.
    FieldRow(const QString& label, QWidget* control, QWidget* parent);

    [[nodiscard]] QString label() const;
    [[nodiscard]] QWidget* control() const { return m_control; }
    [[nodiscard]] QString text() const; // of a combo box its index, of a check box 0 or 1
    [[nodiscard]] bool isEdited() const { return text() != m_shown; }
    // Something was put there by hand, if only what stood there already.
    [[nodiscard]] bool isTouched() const { return m_isTouched; }
    [[nodiscard]] bool hasError() const { return m_hasError; }
    [[nodiscard]] bool isConflicted() const { return m_isConflicted; }

    // The record's own text, as it is now: the row is as kept.
    void accept(const QString& text);
    // What was typed is put as it was understood; still to be saved.
    void rewrite(const QString& text);
    // The record changed under an edit.
    void setConflict(const QString& theirs, const QString& theirWords);
    void setError(const QString& sentence);
    void takeBack();

    // A line below while it is typed; empty where the text says it itself.
    FieldRow& understood(std::function<QString(const QString&)> words);
    // Offered while typing; asked when the field is entered.
    FieldRow& completed(std::function<QStringList()> choices);
    // Offered at each change, of what is too much to be listed: asked with what is typed.
    FieldRow& searched(std::function<QStringList(const QString& typed)> matches);
    FieldRow& placeholder(const QString& text);
    FieldRow& tip(const QString& text);
    FieldRow& readOnly();

    [[nodiscard]] int labelWidth() const;
    void setLabelWidth(int width);
    // Of the control, with the label beside its middle.
    void setLeastHeight(int height);

Q_SIGNALS:
    void edited();
    void left(); // with an edit, or after a choice

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void setText(const QString& text);
    void onEdited();
    void showHint(const QString& words, bool isError);
    void showConflictButtons(bool isShown);
    void complete();
    void offer(const QStringList& words);
    void goToEnd(Qt::FocusReason reason);
    [[nodiscard]] bool isEscOfMine(const QKeyEvent& key) const;
    [[nodiscard]] bool isKeyOfMine(const QKeyEvent& key);

    Label* m_label;
    QWidget* m_control;
    Label* m_hint;
    QWidget* m_conflict = nullptr;
    QString m_shown;
    bool m_hasError = false;
    bool m_isConflicted = false;
    bool m_isSetting = false;
    bool m_isTouched = false;
    std::function<QString(const QString&)> m_understood;
    std::function<QStringList()> m_choices;
    std::function<QStringList(const QString&)> m_matches;
};

} // namespace headcap::app
