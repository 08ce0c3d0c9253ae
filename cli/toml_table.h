#pragma once

#include <toml++/toml.h>

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/reading.h"

namespace sheerlap {

class TomlTable;

/// What a table has under one key.
template <class T>
class TomlValue {
 public:
  TomlValue(TomlTable& table, std::string_view key, std::optional<T> value)
      : table_(&table), key_(key), value_(std::move(value)) {}

  /// The value; if the key is not there, an error that says what would be right.
  T needed(std::string_view remedy);

  /// The value; if the key is not there, the trade's, which is put on record.
  T otherwise(T fallback, std::string shown, std::string why);

  /// The value, if the key is there.
  std::optional<T> optional() { return value_; }

 private:
  TomlTable* table_;
  std::string key_;
  std::optional<T> value_;
};

/// A word of the joint file and what it stands for.
template <class T>
struct Choice {
  std::string_view word;
  T value;
};

/// One table of the joint file, read key by key: what is asked for by name is a known
/// key, whatever else the table has is an error.
class TomlTable {
 public:
  /// @param table    null if the file has no such table: it then has no keys either,
  ///                 and none of them is missed
  /// @param address  "" for the whole file, "layout", "keepout[2]"
  /// @param heading  as a message names it: "", "[layout]", "[[keepout]]"
  TomlTable(Reading& reading,
            const toml::table* table,
            std::string address,
            std::string heading);

  const std::string& heading() const { return heading_; }
  bool there() const { return table_ != nullptr; }
  bool has(std::string_view key) const;
  Reading& reading() { return *reading_; }
  std::string address_of(std::string_view key) const;
  /// The name of a key in a message: "[layout] pitch_max".
  std::string name_of(std::string_view key) const;
  /// Notes an error at a key, or with an empty key at the table.
  void refuse(std::string_view key, std::string message);

  TomlValue<Length> length(std::string_view key, Bounds bounds);
  TomlValue<double> number(std::string_view key, Bounds bounds);
  /// A whole number from 1 to a million.
  TomlValue<std::size_t> count(std::string_view key);
  TomlValue<bool> flag(std::string_view key);
  /// One line of text, not empty.
  TomlValue<std::string> text(std::string_view key);
  /// Whether the key has this very text; it is known then.
  bool says(std::string_view key, std::string_view text);
  /// Texts, each one line and not empty.
  TomlValue<std::vector<std::string>> texts(std::string_view key);
  /// Lengths above 0 and ascending, at least one.
  TomlValue<std::vector<Length>> lengths(std::string_view key);
  template <class T, std::size_t n>
  TomlValue<T> choice(std::string_view key, const std::array<Choice<T>, n>& choices);

  /// A table of the file; if it is not there, an error that says what it is for.
  TomlTable needed_table(std::string_view key, std::string_view remedy);
  /// A table of the file, there or not.
  TomlTable table(std::string_view key);
  /// The tables of the file under [[key]].
  std::vector<TomlTable> tables(std::string_view key);

  /// Notes an error for each key that was not asked for. To be called last.
  void refuse_unknown_keys();

  /// For `TomlValue`.
  void miss(std::string_view key, std::string_view remedy);
  void use_default(std::string_view key, std::string shown, std::string why);

 private:
  /// The node under a key, which is from now on known; null if there is none.
  const toml::node* ask(std::string_view key);
  std::optional<double> number_at(std::string_view key, Bounds bounds);
  std::optional<std::string> text_at(std::string_view key);
  std::optional<Length> length_of(const toml::node& node,
                                  std::string_view key,
                                  Bounds bounds);
  std::optional<std::size_t> word_at(std::string_view key,
                                     const std::vector<std::string_view>& words);

  Reading* reading_;
  const toml::table* table_;
  std::string address_;
  std::string heading_;
  std::vector<std::string_view> known_;
};

template <class T>
T TomlValue<T>::needed(std::string_view remedy) {
  table_->miss(key_, remedy);
  return value_.value_or(unread<T>());
}

template <class T>
T TomlValue<T>::otherwise(T fallback, std::string shown, std::string why) {
  if (value_) return *value_;
  if (table_->has(key_)) return unread<T>();
  table_->use_default(key_, std::move(shown), std::move(why));
  return fallback;
}

template <class T, std::size_t n>
TomlValue<T> TomlTable::choice(std::string_view key,
                               const std::array<Choice<T>, n>& choices) {
  std::vector<std::string_view> words;
  for (const Choice<T>& choice : choices) words.push_back(choice.word);
  const auto word = word_at(key, words);
  return {*this, key, word ? std::optional<T>(choices[*word].value) : std::nullopt};
}

}  // namespace sheerlap
