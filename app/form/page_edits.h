// The edits of one page, over all its forms: saved together, as one entry of the journal, when a
// field or the page is left. Nothing is lost where a save is refused: the texts stay in the fields.
#pragma once

#include <vector>

#include <QObject>

#include "app/session/session.h"

namespace headcap::app {

class FormBase;
class FieldRow;

class PageEdits : public QObject {
    Q_OBJECT
public:
    explicit PageEdits(Session& session, QObject* parent = nullptr);
    void watch(FormBase* form);
    // Puts the labels of all its forms on one column, when the forms are made.
    void alignLabels();

    // Saves what can be saved. False: something could not be, and it was said why.
    bool save();
    // save(), and true where nothing is left in the fields that is not kept; else the first such
    // field has the focus and a notice says so.
    bool leave();

Q_SIGNALS:
    void saved();

private:
    Session& m_session;
    std::vector<FormBase*> m_forms;
    bool m_isSaving = false;
};

} // namespace headcap::app
