// A ListSection of one kind of record:
//
//     auto* pieces = new RecordList<core::Piece>(session, edits, words, tr("Piece"));
//     pieces->form().value(tr("How many"), &core::Piece::count);
//     pieces->describe = [](const core::Piece& p) { return RowWords{…}; };
//     pieces->make = [this] { return core::Piece{session.ids().next<core::Piece>(), jobId}; };
//     pieces->show(file.pieces, file);
//
// A new record is a draft until something has been written into it.
#pragma once

#include "app/form/list_section.h"
#include "app/form/page_edits.h"
#include "app/form/record_form.h"
#include "core/record/job_file.h"

namespace headcap::app {

template <class Record>
class RecordList : public ListSection {
public:
    RecordList(Session& session, PageEdits& edits, const Words& words, const QString& subject,
               QWidget* parent = nullptr)
        : RecordList(session, edits, words, new RecordForm<Record>(session, subject), parent) {}

    [[nodiscard]] RecordForm<Record>& form() { return *m_form; }

    std::function<RowWords(const Record&)> describe;
    // A blank record; nothing where none can be made now (a notice has said why).
    std::function<std::optional<Record>()> make;
    // Writes that must go with a removal: records that name it.
    std::function<void(const Record&, core::Change&)> alsoRemove;

    void show(const std::vector<Record>& records, const core::JobFile& file) {
        show(records, [&file](const Record& r) { return file.revisionOf(core::refOf(r.id)); });
    }
    void show(const std::vector<Record>& records,
              const std::function<core::Revision(const Record&)>& revisionOf) {
        m_records.clear();
        std::vector<RuledModel::Row> rows;
        for (const Record& record : records) {
            m_records.push_back({record, revisionOf(record)});
            rows.push_back({record.id.uuid(), describe(record)});
        }
        const auto& shown = m_form->record();
        const std::optional<core::Uuid> open =
            shown ? std::optional{shown->id.uuid()} : std::nullopt;
        m_isShowing = true;
        showRows(std::move(rows));
        if (open && stored(*open) != nullptr) {
            list().select(open);
        }
        m_isShowing = false;
        if (!m_form->isDraft() || (open && stored(*open) != nullptr)) {
            showCurrent();
        }
    }
    using QWidget::show;

    // Chooses a record and goes into its form; false where it is not in the list.
    bool goTo(const core::Uuid& id) {
        if (stored(id) == nullptr) {
            return false;
        }
        list().select(id);
        openForm(true);
        return true;
    }

    void startNew() {
        const bool mayGo = m_form->owed() != nullptr ? m_edits.leave() : m_edits.save();
        if (!mayGo || !make) {
            return;
        }
        if (auto record = make()) {
            m_isShowing = true;
            list().select(std::nullopt);
            m_isShowing = false;
            m_form->showDraft(*record);
            openForm(true);
        }
    }

private:
    [[nodiscard]] bool isOwed() const override { return m_form->owed() != nullptr; }
    void dropOwed() override {
        m_form->clear();
        showCurrent();
    }
    RecordList(Session& session, PageEdits& edits, const Words& words, RecordForm<Record>* form,
               QWidget* parent)
        : ListSection(words, form, parent), m_session(session), m_edits(edits), m_form(form) {
        edits.watch(form);
        form->setDescription([this](const Record& r) { return describe(r).title; });
        connect(this, &ListSection::addAsked, this, [this] { startNew(); });
        connect(this, &ListSection::removeAsked, this, [this] { removeCurrent(); });
        connect(this, &ListSection::currentMoved, this, [this] {
            if (m_isShowing) {
                return;
            }
            if (m_form->owed() != nullptr && !m_edits.leave()) {
                m_isShowing = true;
                list().select(std::nullopt); // it stays with the new one
                m_isShowing = false;
                return;
            }
            m_edits.save();
            showCurrent();
        });
    }

    const core::Stored<Record>* stored(const core::Uuid& id) const {
        for (const auto& one : m_records) {
            if (one.record.id.uuid() == id) {
                return &one;
            }
        }
        return nullptr;
    }

    void showCurrent() {
        const auto id = list().current();
        const auto* chosen = id ? stored(*id) : nullptr;
        if (chosen == nullptr) {
            m_form->clear();
            closeForm();
            return;
        }
        m_form->show(chosen->record, chosen->revision);
        m_form->setEnabled(core::Description<Record>::kPermanence == core::Permanence::editable);
        openForm(false);
    }

    void removeCurrent() {
        const auto id = list().current();
        const auto* chosen = id ? stored(*id) : nullptr;
        if (chosen == nullptr) {
            return;
        }
        const QString what = describe(chosen->record).title;
        core::Change change{.sentence = toCore(tr("%1 removed: %2").arg(m_form->subject(), what))};
        if (alsoRemove) {
            alsoRemove(chosen->record, change);
        }
        change.remove(chosen->record, chosen->revision);
        m_form->clear(); // what is removed is not saved as it goes
        if (m_session.apply(std::move(change))) {
            m_session.say({Notice::Kind::done, tr("Removed: %1").arg(what), true});
        } else {
            showCurrent();
        }
    }

    Session& m_session;
    PageEdits& m_edits;
    RecordForm<Record>* m_form;
    std::vector<core::Stored<Record>> m_records;
    bool m_isShowing = false;
};

} // namespace headcap::app
