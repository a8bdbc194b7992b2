// The checks of a technique, one a row: ticked when it was made, or noted as not made with the
// reason. What is left alone stays open.
#pragma once

#include <vector>

#include <QWidget>

class QCheckBox;
class QLineEdit;
class QPushButton;

namespace headcap::app {

class CheckRow : public QWidget {
    Q_OBJECT
public:
    explicit CheckRow(const QString& what, QWidget* parent = nullptr);
    [[nodiscard]] const QString& what() const { return m_what; }
    void show(bool isMade, const QString& whyNot);
    using QWidget::show;
    [[nodiscard]] bool isMade() const;
    [[nodiscard]] bool isRefused() const; // noted as not made
    [[nodiscard]] QString whyNot() const;
    [[nodiscard]] QCheckBox& tick() { return *m_tick; }
    [[nodiscard]] QPushButton& notMade() { return *m_notMade; }
    [[nodiscard]] QLineEdit& reason() { return *m_reason; }

Q_SIGNALS:
    void made();
    void refused(const QString& whyNot); // Enter in the reason
    void edited();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QString m_what;
    QCheckBox* m_tick;
    QPushButton* m_notMade;
    QLineEdit* m_reason;
};

class CheckRows : public QWidget {
    Q_OBJECT
public:
    explicit CheckRows(QWidget* parent = nullptr);
    // Rows that stand stay as they are answered.
    void show(const std::vector<QString>& checks);
    using QWidget::show;
    void clear() { show({}); }
    [[nodiscard]] const std::vector<CheckRow*>& rows() const { return m_rows; }
    // The first noted as not made without a reason.
    [[nodiscard]] CheckRow* troubled() const;

Q_SIGNALS:
    void made(const QString& what);
    void refused(const QString& what, const QString& whyNot);

private:
    std::vector<CheckRow*> m_rows;
    QWidget* m_heading;
};

} // namespace headcap::app
