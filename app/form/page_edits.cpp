#include "app/form/page_edits.h"

#include "app/form/form_base.h"
#include "app/session/words.h"

namespace headcap::app {

PageEdits::PageEdits(Session& session, QObject* parent) : QObject(parent), m_session(session) {}

void PageEdits::watch(FormBase* form) {
    m_forms.push_back(form);
    form->setTakesBack();
    connect(form, &FormBase::left, this, &PageEdits::save);
    connect(form, &QObject::destroyed, this, [this, form] { std::erase(m_forms, form); });
}

void PageEdits::alignLabels() {
    int widest = 0;
    for (const FormBase* form : m_forms) {
        widest = std::max(widest, form->widestLabel());
    }
    for (FormBase* form : m_forms) {
        form->alignLabels(widest);
    }
}

bool PageEdits::save() {
    if (m_isSaving) {
        return true;
    }
    m_isSaving = true;
    auto applied = Session::Applied::done;
    // A second time, where somebody else's change came between: then the forms have taken it in.
    for (int round = 0; round < 2; ++round) {
        core::Change change;
        QStringList said;
        for (FormBase* form : m_forms) {
            const QString sentence = form->gather(change);
            if (!sentence.isEmpty()) {
                said << sentence;
            }
        }
        change.sentence = toCore(said.join(QStringLiteral("; ")));
        if (change.writes.empty()) {
            break;
        }
        applied = m_session.submit(std::move(change));
        if (applied != Session::Applied::changedSince) {
            break;
        }
        Q_EMIT m_session.changed();
    }
    m_isSaving = false;
    if (applied == Session::Applied::done) {
        Q_EMIT saved();
    }
    return applied == Session::Applied::done;
}

bool PageEdits::leave() {
    const bool isSaved = save();
    for (FormBase* form : m_forms) {
        if (FieldRow* row = form->owed(); row != nullptr && !row->hasError()) {
            row->setError(tr("Which one? Nothing of this is kept until it is said."));
        }
        if (FieldRow* row = form->troubled()) {
            row->control()->setFocus(Qt::OtherFocusReason);
            m_session.say({Notice::Kind::refused,
                           tr("“%1” is not saved yet: look at the field, or press Esc in it to "
                              "take it back.")
                               .arg(row->label())});
            return false;
        }
    }
    return isSaved;
}

} // namespace headcap::app
