// Below the bench line: a question that must be answered before the line is taken, and the reason.
// Seen only while it is asked.
#pragma once

#include <QWidget>

class QLineEdit;

namespace headcap::app {

class Label;

class ReasonAsker : public QWidget {
    Q_OBJECT
public:
    explicit ReasonAsker(QWidget* parent = nullptr);
    void ask(const QString& question);
    [[nodiscard]] QString question() const;
    // What was typed so far stays, should it be asked again.
    void stop() { hide(); }
    void clear();
    [[nodiscard]] QLineEdit& reason() { return *m_reason; }

Q_SIGNALS:
    void answered(const QString& reason);
    void leftBack();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    Label* m_question;
    QLineEdit* m_reason;
};

} // namespace headcap::app
