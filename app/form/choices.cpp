#include "app/form/choices.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/session/words.h"

namespace headcap::app {

QString wordsOf(const std::vector<Choice>& choices, const std::string& key) {
    for (const Choice& one : choices) {
        if (one.key == key) {
            return one.words;
        }
    }
    return fromCore(key);
}

std::optional<std::string> keyOf(const std::vector<Choice>& choices, const QString& words) {
    const QString asked = words.trimmed();
    const Choice* only = nullptr;
    for (const Choice& one : choices) {
        if (one.words.compare(asked, Qt::CaseInsensitive) == 0) {
            return one.key;
        }
    }
    for (const Choice& one : choices) {
        if (one.words.contains(asked, Qt::CaseInsensitive)) {
            if (only != nullptr) {
                return std::nullopt;
            }
            only = &one;
        }
    }
    return only != nullptr ? std::optional{only->key} : std::nullopt;
}

QStringList wordsOf(const std::vector<Choice>& choices) {
    QStringList all;
    for (const Choice& one : choices) {
        all << one.words;
    }
    return all;
}

bool isAmong(const std::vector<Choice>& choices, const std::string& key) {
    return std::ranges::find(choices, key, &Choice::key) != choices.end();
}

QString notAmongThem() {
    return QCoreApplication::translate("form", "Not in the list: press Down to choose one.");
}

} // namespace headcap::app
