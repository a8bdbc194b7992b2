// What a field offers to choose from, and how a choice is written and read.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QStringList>

namespace headcap::app {

// One of a list: what is kept, and what is seen.
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

} // namespace headcap::app
