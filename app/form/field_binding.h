// How a member of a record stands in a field as text, and is taken back from it. Of widgets only
// this is known: a combo box's text is its index, a check box's 0 or 1 (field_row.h).
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <type_traits>

#include <QString>

#include "app/form/choices.h"
#include "app/form/readers.h"
#include "app/session/words.h"
#include "core/values/id.h"

namespace headcap::app {

template <class Record>
struct FieldBinding {
    std::function<QString(const Record&)> print;
    // Puts the text into the record; a sentence where it can't be read.
    std::function<QString(Record&, const QString&)> take;
};

template <class Record>
FieldBinding<Record> textBinding(std::string Record::*member) {
    return {[member](const Record& r) { return fromCore(r.*member); },
            [member](Record& r, const QString& text) {
                r.*member = toCore(text.trimmed());
                return QString{};
            }};
}

template <class Record, class Number>
requires std::is_enum_v<Number> || std::is_integral_v<Number> FieldBinding<Record>
indexBinding(Number Record::*member) {
    return {
        [member](const Record& r) { return QString::number(static_cast<qlonglong>(r.*member)); },
        [member](Record& r, const QString& text) {
            r.*member = static_cast<Number>(text.toLongLong());
            return QString{};
        }};
}

// What reading depends on, asked at each reading.
using AskContext = std::function<ReadingContext()>;

namespace detail {

// Of any value that a Reader knows; without a text set() is given nothing, and says whether the
// record can do without.
template <class T, class Record, class Get, class Set>
FieldBinding<Record> readBinding(const AskContext& context, Get get, Set set) {
    return {get, [context, set](Record& r, const QString& text) {
                if (text.trimmed().isEmpty()) {
                    return set(r, std::nullopt)
                               ? QString{}
                               : sentence(core::TextError{core::TextProblem::empty, 0},
                                          Reader<T>::kReading);
                }
                const auto value = Reader<T>::read(toCore(text.trimmed()), context());
                if (!value) {
                    return sentence(value.error(), Reader<T>::kReading);
                }
                set(r, *value);
                return QString{};
            }};
}

template <class Record, class Get, class Set>
FieldBinding<Record> idBinding(const Choices& choices, Get get, Set set) {
    return {[get, choices](const Record& r) {
                const std::string key = get(r);
                return key.empty() ? QString{} : wordsOf(choices(), key);
            },
            [set, choices](Record& r, const QString& text) {
                if (text.trimmed().isEmpty()) {
                    return set(r, std::nullopt) ? QString{} : notAmongThem();
                }
                const auto key = keyOf(choices(), text);
                const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
                return id && set(r, id) ? QString{} : notAmongThem();
            }};
}

} // namespace detail

template <class T, class Record>
FieldBinding<Record> valueBinding(T Record::*member, const AskContext& context) {
    return detail::readBinding<T, Record>(
        context, [member](const Record& r) { return printed(r.*member); },
        [member](Record& r, const std::optional<T>& value) {
            if (value) {
                r.*member = *value;
            }
            return value.has_value();
        });
}

template <class T, class Record>
FieldBinding<Record> valueBinding(std::optional<T> Record::*member, const AskContext& context) {
    return detail::readBinding<T, Record>(
        context,
        [member](const Record& r) { return r.*member ? printed(*(r.*member)) : QString{}; },
        [member](Record& r, const std::optional<T>& value) {
            r.*member = value;
            return true;
        });
}

// A word of a vocabulary, or one of the workshop's own.
template <class Record>
FieldBinding<Record> termBinding(std::string Record::*member, const Choices& vocabulary) {
    return {[member, vocabulary](const Record& r) { return wordsOf(vocabulary(), r.*member); },
            [member, vocabulary](Record& r, const QString& text) {
                r.*member = toCore(text.trimmed());
                for (const Choice& one : vocabulary()) {
                    if (one.words.compare(text.trimmed(), Qt::CaseInsensitive) == 0) {
                        r.*member = one.key;
                    }
                }
                return QString{};
            }};
}

template <class Record, class Other>
FieldBinding<Record> pickBinding(std::optional<core::Id<Other>> Record::*member,
                                 const Choices& choices) {
    return detail::idBinding<Record>(
        choices,
        [member](const Record& r) { return r.*member ? (r.*member)->text() : std::string{}; },
        [member](Record& r, const std::optional<core::Uuid>& id) {
            r.*member = id ? std::optional{core::Id<Other>{*id}} : std::nullopt;
            return true;
        });
}

// Of a draft a name that is none of the choices says nothing yet.
template <class Record, class Other>
FieldBinding<Record> pickBinding(core::Id<Other> Record::*member, const Choices& choices,
                                 const std::function<bool()>& isDraft) {
    return detail::idBinding<Record>(
        choices,
        [member, choices, isDraft](const Record& r) {
            const std::string key = (r.*member).text();
            return isDraft() && !isAmong(choices(), key) ? std::string{} : key;
        },
        [member](Record& r, const std::optional<core::Uuid>& id) {
            if (id) {
                r.*member = core::Id<Other>{*id};
            }
            return id.has_value();
        });
}

} // namespace headcap::app
