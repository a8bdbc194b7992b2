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

#include "app/form/form_base.h"
#include "app/form/growing_text.h"
#include "app/form/readers.h"
#include "app/session/session.h"

namespace headcap::app {

// One of a list to choose from: what is kept, and what is seen.
struct Choice {
    std::string key;
    QString words;
};
using Choices = std::function<std::vector<Choice>()>;

// The words of a key, or the key as it stands; and back, by the words or an unmistakable part.
[[nodiscard]] QString wordsOf(const std::vector<Choice>& choices, const std::string& key);
[[nodiscard]] std::optional<std::string> keyOf(const std::vector<Choice>& choices,
                                               const QString& words);
[[nodiscard]] QStringList wordsOf(const std::vector<Choice>& choices);
[[nodiscard]] bool isAmong(const std::vector<Choice>& choices, const std::string& key);
[[nodiscard]] QString notAmongThem();

template <class Record>
class RecordForm : public FormBase {
public:
    // Puts a row's text into the record; a sentence where it can't be read.
    using Take = std::function<QString(Record&, const QString&)>;
    using Print = std::function<QString(const Record&)>;

    RecordForm(Session& session, const QString& subject, QWidget* parent = nullptr)
        : FormBase(subject, parent), m_session(session) {}

    FieldRow& text(const QString& label, std::string Record::*member) {
        return bind(label, new QLineEdit, false, textPrint(member), textTake(member));
    }
    // Completed from what other records of the kind lately said there.
    FieldRow& usedText(const QString& label, std::string Record::*member) {
        return text(label, member).completed([this, member] { return lately(member); });
    }
    FieldRow& lines(const QString& label, std::string Record::*member) {
        return bind(label, new GrowingText, true, textPrint(member), textTake(member));
    }

    template <class Enum>
    requires std::is_enum_v<Enum> FieldRow& choice(const QString& label, Enum Record::*member) {
        return bind(
            label, combo(allWords<Enum>()), false,
            [member](const Record& r) { return QString::number(static_cast<int>(r.*member)); },
            [member](Record& r, const QString& text) {
                r.*member = static_cast<Enum>(text.toInt());
                return QString{};
            });
    }
    // A small number with a word for each: severity.
    FieldRow& choice(const QString& label, std::int64_t Record::*member, const QStringList& words) {
        return bind(
            label, combo(words), false,
            [member](const Record& r) { return QString::number(r.*member); },
            [member](Record& r, const QString& text) {
                r.*member = text.toLongLong();
                return QString{};
            });
    }
    FieldRow& check(const QString& label, const QString& words, bool Record::*member) {
        return bind(
            label, new QCheckBox(words), false,
            [member](const Record& r) { return QString::number(r.*member ? 1 : 0); },
            [member](Record& r, const QString& text) {
                r.*member = text == QLatin1String("1");
                return QString{};
            });
    }

    // Length, amount, money, strength, day, book date, minutes, number: typed as people write
    // them. An optional one may be empty.
    template <class T>
    requires requires { Reader<T>::kReading; }
    FieldRow& value(const QString& label, T Record::*member) {
        return valueRow<T>(
            label, [member](const Record& r) { return printed(r.*member); },
            [member](Record& r, std::optional<T> value) {
                if (value) {
                    r.*member = *value;
                }
                return value.has_value();
            });
    }
    template <class T>
    requires requires { Reader<T>::kReading; }
    FieldRow& value(const QString& label, std::optional<T> Record::*member) {
        return valueRow<T>(
            label,
            [member](const Record& r) { return r.*member ? printed(*(r.*member)) : QString{}; },
            [member](Record& r, std::optional<T> value) {
                r.*member = value;
                return true;
            });
    }

    // A word of a vocabulary, or one of the workshop's own.
    FieldRow& term(const QString& label, std::string Record::*member, const Choices& vocabulary) {
        return bind(
                   label, new QLineEdit, false,
                   [member, vocabulary](const Record& r) {
                       return app::wordsOf(vocabulary(), r.*member);
                   },
                   [member, vocabulary](Record& r, const QString& text) {
                       const auto all = vocabulary();
                       r.*member = text.trimmed().toStdString();
                       for (const Choice& one : all) {
                           if (one.words.compare(text.trimmed(), Qt::CaseInsensitive) == 0) {
                               r.*member = one.key;
                           }
                       }
                       return QString{};
                   })
            .completed([vocabulary] { return app::wordsOf(vocabulary()); });
    }

    // Another record: a person, an owner, a lot. The choices' keys are their ids.
    template <class Other>
    FieldRow& pick(const QString& label, std::optional<core::Id<Other>> Record::*member,
                   const Choices& choices) {
        return pickRow(
            label, choices,
            [member](const Record& r) { return r.*member ? (r.*member)->text() : std::string{}; },
            [member](Record& r, const std::optional<core::Uuid>& id) {
                r.*member = id ? std::optional{core::Id<Other>{*id}} : std::nullopt;
                return true;
            });
    }
    template <class Other>
    FieldRow& pick(const QString& label, core::Id<Other> Record::*member, const Choices& choices) {
        // A draft that names none of them says nothing yet, and is not kept until it does.
        FieldRow& row = pickRow(
            label, choices,
            [this, member, choices](const Record& r) {
                const std::string key = (r.*member).text();
                return m_isDraft && !isAmong(choices(), key) ? std::string{} : key;
            },
            [member](Record& r, const std::optional<core::Uuid>& id) {
                if (id) {
                    r.*member = core::Id<Other>{*id};
                }
                return id.has_value();
            });
        m_needed.push_back(&row);
        return row;
    }

    // Any other row.
    FieldRow& bind(const QString& label, QWidget* control, bool isWide, Print print, Take take) {
        m_bindings.push_back({std::move(print), std::move(take)});
        return addRow(label, control, isWide);
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

    struct Binding {
        Print print;
        Take take;
    };

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
            const QWidget* control = one.row->control();
            const bool isChoice = qobject_cast<const QComboBox*>(control) != nullptr;
            const bool isTick = qobject_cast<const QCheckBox*>(control) != nullptr;
            const QString said = one.row->text().trimmed();
            const bool holdsWords =
                isTick ? said == QLatin1String("1") : !isChoice && !said.isEmpty();
            one.row->setVisible(one.isSuch(chosen) || holdsWords || control->hasFocus());
        }
    }

    static Print textPrint(std::string Record::*member) {
        return [member](const Record& r) { return fromCore(r.*member); };
    }
    static Take textTake(std::string Record::*member) {
        return [member](Record& r, const QString& text) {
            r.*member = text.trimmed().toStdString();
            return QString{};
        };
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

    template <class T, class Get, class Set>
    FieldRow& valueRow(const QString& label, Get get, Set set) {
        const auto read = [this](const QString& text) {
            return Reader<T>::read(toCore(text.trimmed()), context());
        };
        return bind(label, new QLineEdit, false, get,
                    [read, set](Record& r, const QString& text) {
                        if (text.trimmed().isEmpty()) {
                            return set(r, std::nullopt)
                                       ? QString{}
                                       : sentence(core::TextError{core::TextProblem::empty, 0},
                                                  Reader<T>::kReading);
                        }
                        const auto value = read(text);
                        if (!value) {
                            return sentence(value.error(), Reader<T>::kReading);
                        }
                        set(r, *value);
                        return QString{};
                    })
            .understood([read](const QString& text) {
                const auto value = read(text);
                return value ? printed(*value) : QString{};
            })
            .tip(example(Reader<T>::kReading));
    }

    template <class Get, class Set>
    FieldRow& pickRow(const QString& label, const Choices& choices, Get get, Set set) {
        return bind(
                   label, new QLineEdit, false,
                   [get, choices](const Record& r) {
                       const std::string key = get(r);
                       return key.empty() ? QString{} : app::wordsOf(choices(), key);
                   },
                   [set, choices](Record& r, const QString& text) {
                       if (text.trimmed().isEmpty()) {
                           return set(r, std::nullopt) ? QString{} : notAmongThem();
                       }
                       const auto key = keyOf(choices(), text);
                       const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
                       return id && set(r, id) ? QString{} : notAmongThem();
                   })
            .completed([choices] { return app::wordsOf(choices()); });
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
