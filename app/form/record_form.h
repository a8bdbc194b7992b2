// A form of one record, built field by field from pointers to its members:
//
//     auto* form = new RecordForm<core::Item>(session, tr("Book"));
//     form->text(tr("Author"), &core::Item::author);
//     form->value(tr("Height"), &core::Item::height);
//     edits.watch(form);                            // saved when a field is left
//     form->show(file.item, file.revisionOf(core::refOf(file.item.id)));
//
// show() may come at any time, after somebody else's change too: what has been edited stays, and a
// field that both changed asks which is to be kept.
#pragma once

#include <algorithm>
#include <functional>
#include <optional>
#include <type_traits>
#include <utility>
#include <vector>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include "app/form/field_binding.h"
#include "app/form/form_base.h"
#include "app/form/growing_text.h"
#include "app/session/session.h"

namespace headcap::app {

template <class Record>
class RecordForm : public FormBase {
public:
    using Binding = FieldBinding<Record>;

    RecordForm(Session& session, const QString& subject, QWidget* parent = nullptr)
        : FormBase(subject, parent), m_session(session) {}

    FieldRow& text(const QString& label, std::string Record::*member) {
        return bind(label, new QLineEdit, false, textBinding(member));
    }
    // Completed from what other records of the kind lately said there.
    FieldRow& usedText(const QString& label, std::string Record::*member) {
        return text(label, member).completed([this, member] { return lately(member); });
    }
    FieldRow& lines(const QString& label, std::string Record::*member) {
        return bind(label, new GrowingText, true, textBinding(member));
    }

    template <class Enum>
    requires std::is_enum_v<Enum> FieldRow& choice(const QString& label, Enum Record::*member) {
        return bind(label, combo(allWords<Enum>()), false, indexBinding(member));
    }
    // A small number with a word for each: severity.
    FieldRow& choice(const QString& label, std::int64_t Record::*member, const QStringList& words) {
        return bind(label, combo(words), false, indexBinding(member));
    }
    FieldRow& check(const QString& label, const QString& words, bool Record::*member) {
        return bind(label, new QCheckBox(words), false, indexBinding(member));
    }

    // Length, amount, money, strength, day, book date, minutes, number: typed as people write
    // them. An optional one may be empty.
    template <class T>
    requires requires { Reader<T>::kReading; }
    FieldRow& value(const QString& label, T Record::*member) { return valueRow<T>(label, member); }
    template <class T>
    requires requires { Reader<T>::kReading; }
    FieldRow& value(const QString& label, std::optional<T> Record::*member) {
        return valueRow<T>(label, member);
    }

    // A word of a vocabulary, or one of the workshop's own.
    FieldRow& term(const QString& label, std::string Record::*member, const Choices& vocabulary) {
        return bind(label, new QLineEdit, false, termBinding(member, vocabulary))
            .completed([vocabulary] { return wordsOf(vocabulary()); });
    }

    // Another record: a person, an owner, a lot. The choices' keys are their ids.
    template <class Other>
    FieldRow& pick(const QString& label, std::optional<core::Id<Other>> Record::*member,
                   const Choices& choices) {
        return bind(label, new QLineEdit, false, pickBinding(member, choices)).completed([choices] {
            return wordsOf(choices());
        });
    }
    // A draft that names none of them is not kept until it does.
    template <class Other>
    FieldRow& pick(const QString& label, core::Id<Other> Record::*member, const Choices& choices) {
        FieldRow& row = bind(label, new QLineEdit, false,
                             pickBinding(member, choices, [this] { return m_isDraft; }))
                            .completed([choices] { return wordsOf(choices()); });
        m_needed.push_back(&row);
        return row;
    }

    // Any other row.
    FieldRow& bind(const QString& label, QWidget* control, bool isWide, Binding binding) {
        m_bindings.push_back(std::move(binding));
        return addRow(label, control, isWide);
    }
    FieldRow& bind(const QString& label, QWidget* control, bool isWide,
                   decltype(Binding::print) print, decltype(Binding::take) take) {
        return bind(label, control, isWide, Binding{std::move(print), std::move(take)});
    }

    // The row stands only for such records, or where it holds something.
    void onlyWhen(FieldRow& row, std::function<bool(const Record&)> isSuch) {
        if (m_conditions.empty()) {
            connect(this, &FormBase::edited, this, [this] { showFitting(); });
        }
        m_conditions.push_back({&row, std::move(isSuch)});
    }

    void show(const Record& record, core::Revision revision) {
        const bool isSame = m_base && m_base->id == record.id;
        m_isDraft = false;
        m_revision = revision;
        for (std::size_t i = 0; i < rows().size(); ++i) {
            FieldRow& row = *rows()[i];
            const QString fresh = m_bindings[i].print(record);
            if (!isSame || !row.isEdited() || fresh == row.text()) {
                row.accept(fresh);
            } else if (fresh != m_bindings[i].print(*m_base)) {
                row.setConflict(fresh, fresh);
            }
        }
        m_base = record;
        showFitting();
    }
    // A record that is kept once something has been written into it.
    void showDraft(const Record& record) {
        m_base = record;
        m_isDraft = true;
        for (std::size_t i = 0; i < rows().size(); ++i) {
            rows()[i]->accept(m_bindings[i].print(record));
        }
        showFitting();
    }
    void clear() {
        m_base.reset();
        m_isDraft = false;
    }
    [[nodiscard]] const std::optional<Record>& record() const { return m_base; }
    [[nodiscard]] bool isDraft() const { return m_isDraft; }

    // What the journal says of a record, after the subject: "2 loose plates".
    void setDescription(std::function<QString(const Record&)> describe) {
        m_describe = std::move(describe);
    }
    // Changes that belong to the saving of a record: another write in the same entry.
    void
    setAlso(std::function<void(const Record& before, const Record& after, core::Change&)> also) {
        m_also = std::move(also);
    }

    // The record with all edits that can be read; rows that can't say why.
    Record taken(QStringList& labels) {
        Record edited = *m_base;
        for (std::size_t i = 0; i < rows().size(); ++i) {
            FieldRow& row = *rows()[i];
            if (!row.isEdited() || row.isConflicted()) {
                continue;
            }
            const QString error = m_bindings[i].take(edited, row.text());
            if (!error.isEmpty()) {
                row.setError(error);
                continue;
            }
            row.rewrite(m_bindings[i].print(edited));
            labels << row.label().toLower();
        }
        return edited;
    }

    [[nodiscard]] FieldRow* owed() const override {
        const auto at = std::ranges::find_if(m_needed, [](const FieldRow* row) {
            return row->hasError() || row->text().trimmed().isEmpty();
        });
        return m_isDraft && isTouched() && at != m_needed.end() ? *at : nullptr;
    }

    QString gather(core::Change& change) override {
        if (!m_base) {
            return {};
        }
        QStringList labels;
        const Record edited = taken(labels);
        if ((edited == *m_base && !(m_isDraft && isTouched())) || owed() != nullptr) {
            return {};
        }
        if (m_isDraft) {
            change.add(edited);
        } else {
            change.update(edited, m_revision);
        }
        if (m_also) {
            m_also(*m_base, edited, change);
        }
        const QString what = m_describe ? m_describe(edited) : QString{};
        if (m_isDraft) {
            return what.isEmpty() ? tr("%1 added").arg(subject())
                                  : tr("%1 added: %2").arg(subject(), what);
        }
        return what.isEmpty()
                   ? tr("%1: %2 changed").arg(subject(), labels.join(QStringLiteral(", ")))
                   : tr("%1 changed: %2 (%3)")
                         .arg(subject(), what, labels.join(QStringLiteral(", ")));
    }

private:
    [[nodiscard]] bool isTouched() const {
        return std::ranges::any_of(rows(), [](const FieldRow* row) { return row->isTouched(); });
    }

    struct Condition {
        FieldRow* row;
        std::function<bool(const Record&)> isSuch;
    };

    // By the choices as they stand in the form.
    void showFitting() {
        if (!m_base || m_conditions.empty()) {
            return;
        }
        Record chosen = *m_base;
        for (std::size_t i = 0; i < rows().size(); ++i) {
            if (qobject_cast<QComboBox*>(rows()[i]->control()) != nullptr) {
                m_bindings[i].take(chosen, rows()[i]->text());
            }
        }
        for (const Condition& one : m_conditions) {
            one.row->setVisible(one.isSuch(chosen) || holdsWords(*one.row) ||
                                one.row->control()->hasFocus());
        }
    }

    static QComboBox* combo(const QStringList& words) {
        auto* box = new QComboBox;
        box->addItems(words);
        return box;
    }

    ReadingContext context() const {
        ReadingContext made{.today = m_session.clock().today()};
        m_session.guarded([&] {
            for (const auto& workshop : core::all<core::Workshop>(m_session.records())) {
                made.currency = workshop.record.currency;
            }
        });
        return made;
    }

    template <class T, class Member>
    FieldRow& valueRow(const QString& label, Member member) {
        return bind(label, new QLineEdit, false, valueBinding(member, [this] { return context(); }))
            .understood([this](const QString& text) {
                const auto value = Reader<T>::read(toCore(text.trimmed()), context());
                return value ? printed(*value) : QString{};
            })
            .tip(example(Reader<T>::kReading));
    }

    // What the newest records say there: of old ones nobody thinks any more.
    QStringList lately(std::string Record::*member) const {
        QStringList words;
        m_session.guarded([&] {
            for (const std::string& one : m_session.records().lately(
                     core::kindOf<Record>(), core::fieldName(member), kLatelyLookedAt)) {
                words << fromCore(one);
            }
        });
        return words;
    }

    static constexpr std::size_t kLatelyLookedAt = 2'000;

    Session& m_session;
    std::vector<Binding> m_bindings;
    std::vector<Condition> m_conditions;
    std::vector<FieldRow*> m_needed; // of a record that is not optional
    std::optional<Record> m_base;
    core::Revision m_revision{};
    bool m_isDraft = false;
    std::function<QString(const Record&)> m_describe;
    std::function<void(const Record&, const Record&, core::Change&)> m_also;
};

} // namespace headcap::app
