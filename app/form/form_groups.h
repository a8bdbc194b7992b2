// A form's rows in groups: a heading stands above those that are seen, and what is seldom wanted is
// behind "More …". With the conditions of RecordForm::onlyWhen; what holds something is never
// hidden.
#pragma once

#include <map>
#include <vector>

#include <QObject>
#include <QTimer>

#include "app/form/record_form.h"

class QPushButton;

namespace headcap::app {

class FormGroups : public QObject {
    Q_OBJECT
public:
    explicit FormGroups(FormBase& form);
    // Rows that are added from here on stand under it.
    void begin(const QString& heading);
    // The button, under all rows; they are complete then.
    void finish();

    // Stands for such records where it is wanted; where it is not, behind "More …".
    template <class Record>
    void seldom(RecordForm<Record>& form, FieldRow& row, std::function<bool(const Record&)> isSuch,
                std::function<bool(const Record&)> isWanted) {
        form.onlyWhen(row, [this, &row, isSuch, isWanted](const Record& record) {
            const bool isBehind = isSuch(record) && !isWanted(record);
            m_isBehind[&row] = isBehind;
            m_soon.start();
            return isSuch(record) && (!isBehind || m_isMore);
        });
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Group {
        QWidget* heading;
        std::size_t first; // of its rows
    };
    void toggle();
    void look();

    FormBase& m_form;
    std::vector<Group> m_groups;
    std::map<FieldRow*, bool> m_isBehind; // "More …"
    QPushButton* m_more;
    QTimer m_soon;
    bool m_isMore = false;
};

} // namespace headcap::app
