#include "cli/toml_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/text_file.h"
#include "joint/nearest_word.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

std::string_view kind_words(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::table:
      return "a table";
    case toml::node_type::array:
      return node.is_array_of_tables() ? "an array of tables" : "an array";
    case toml::node_type::string:
      return "text";
    case toml::node_type::integer:
    case toml::node_type::floating_point:
      return "a number";
    case toml::node_type::boolean:
      return "true or false";
    default:
      return "a date or time";
  }
}

/// A node as a message shows it: its text, or what kind of value it is.
std::string shown(const toml::node& node) {
  if (const auto text = node.value_exact<std::string>()) return quoted_text(*text);
  if (const auto number = node.value_exact<double>()) return fmt::format("{}", *number);
  if (const auto number = node.value_exact<std::int64_t>())
    return fmt::format("{}", *number);
  if (const auto flag = node.value_exact<bool>()) return *flag ? "true" : "false";
  return std::string(kind_words(node));
}

std::optional<double> number_of(const toml::node& node) {
  if (const auto number = node.value_exact<double>()) return number;
  if (const auto number = node.value_exact<std::int64_t>())
    return static_cast<double>(*number);
  return std::nullopt;
}

bool within(double value, Bounds bounds) {
  return (bounds.above_low ? value > bounds.low : value >= bounds.low) &&
         value <= bounds.high;
}

std::size_t line_of(const toml::source_region& source) { return source.begin.line; }

}  // namespace

TomlTable::TomlTable(Reading& reading,
                     const toml::table* table,
                     std::string address,
                     std::string heading)
    : reading_(&reading),
      table_(table),
      address_(std::move(address)),
      heading_(std::move(heading)) {
  if (table_ == nullptr) return;
  for (const auto& [key, node] : *table_)
    reading_->sources.lines[address_of(key.str())] = {false, line_of(key.source())};
}

bool TomlTable::has(std::string_view key) const {
  return table_ != nullptr && table_->contains(key);
}

std::string TomlTable::address_of(std::string_view key) const {
  if (key.empty()) return address_;
  return address_.empty() ? std::string(key) : fmt::format("{}.{}", address_, key);
}

std::string TomlTable::name_of(std::string_view key) const {
  return heading_.empty() ? std::string(key) : fmt::format("{} {}", heading_, key);
}

void TomlTable::refuse(std::string_view key, std::string message) {
  reading_->errors.push_back(
      {ErrorKind::InvalidInput, address_of(key), std::move(message)});
}

void TomlTable::miss(std::string_view key, std::string_view remedy) {
  if (table_ == nullptr || has(key)) return;
  refuse(key, fmt::format("{} has no {}: {}", heading_, key, remedy));
}

void TomlTable::use_default(std::string_view key, std::string shown, std::string why) {
  reading_->defaults.push_back({address_of(key), std::move(shown), std::move(why)});
}

const toml::node* TomlTable::ask(std::string_view key) {
  known_.push_back(key);
  return table_ == nullptr ? nullptr : table_->get(key);
}

std::optional<Length> TomlTable::length_of(const toml::node& node,
                                           std::string_view key,
                                           Bounds bounds) {
  const auto name = name_of(key.substr(0, key.find('[')));
  const auto text = node.value_exact<std::string>();
  const auto number = number_of(node);
  if (!text && !number) {
    refuse(key, fmt::format("{} is {}: a length", name, shown(node)));
    return std::nullopt;
  }
  const auto length = text ? length_from_text(*text, reading_->unit)
                           : length_from_number(*number, reading_->unit);
  if (!length) {
    refuse(key, fmt::format("{} {}", name, length.error().front().message));
    return std::nullopt;
  }
  if (within(length->in_mm(), bounds)) return *length;
  refuse(key, fmt::format("{} is {}: {}", name, length_words(*length, reading_->unit),
                          bounds.words));
  return std::nullopt;
}

TomlValue<Length> TomlTable::length(std::string_view key, Bounds bounds) {
  const toml::node* node = ask(key);
  return {*this, key, node ? length_of(*node, key, bounds) : std::nullopt};
}

std::optional<double> TomlTable::number_at(std::string_view key, Bounds bounds) {
  const toml::node* node = ask(key);
  if (node == nullptr) return std::nullopt;
  const auto number = number_of(*node);
  if (number && within(*number, bounds)) return number;
  const bool text = node->is_string();
  refuse(key, fmt::format("{} is {}: {}", name_of(key), shown(*node),
                          text      ? "a bare number, without quotes"
                          : !number ? "a number"
                                    : bounds.words));
  return std::nullopt;
}

TomlValue<double> TomlTable::number(std::string_view key, Bounds bounds) {
  return {*this, key, number_at(key, bounds)};
}

TomlValue<std::size_t> TomlTable::count(std::string_view key) {
  constexpr Bounds counts{1, 1e6, false, "a whole number from 1 to a million"};
  const auto number = number_at(key, counts);
  if (!number) return {*this, key, std::nullopt};
  if (*number == std::floor(*number))
    return {*this, key, static_cast<std::size_t>(*number)};
  refuse(key, fmt::format("{} is {}: {}", name_of(key), *number, counts.words));
  return {*this, key, std::nullopt};
}

TomlValue<bool> TomlTable::flag(std::string_view key) {
  const toml::node* node = ask(key);
  const auto flag = node ? node->value_exact<bool>() : std::nullopt;
  if (node && !flag)
    refuse(key, fmt::format("{} is {}: true or false", name_of(key), shown(*node)));
  return {*this, key, flag};
}

std::optional<std::string> TomlTable::text_at(std::string_view key) {
  const toml::node* node = ask(key);
  if (node == nullptr) return std::nullopt;
  auto text = node->value_exact<std::string>();
  if (!text) {
    refuse(key, fmt::format("{} is {}: text in quotes", name_of(key), shown(*node)));
    return std::nullopt;
  }
  if (!text->empty() && !has_control_character(*text)) return text;
  refuse(key, text->empty()
                  ? fmt::format("{} is empty: write the text, or leave the key out",
                                name_of(key))
                  : fmt::format("{} {} has a control character: one line of plain text",
                                name_of(key), quoted_text(*text)));
  return std::nullopt;
}

TomlValue<std::string> TomlTable::text(std::string_view key) {
  return {*this, key, text_at(key)};
}

bool TomlTable::says(std::string_view key, std::string_view text) {
  const toml::node* node = table_ == nullptr ? nullptr : table_->get(key);
  if (node == nullptr || node->value_exact<std::string>() != std::string(text))
    return false;
  known_.push_back(key);
  return true;
}

TomlValue<std::vector<std::string>> TomlTable::texts(std::string_view key) {
  const toml::node* node = ask(key);
  if (node == nullptr) return {*this, key, std::nullopt};
  std::vector<std::string> texts;
  const toml::array* array = node->as_array();
  for (std::size_t i = 0; array != nullptr && i < array->size(); ++i) {
    const auto text = (*array)[i].value_exact<std::string>();
    if (text && !text->empty() && !has_control_character(*text)) texts.push_back(*text);
  }
  if (array != nullptr && texts.size() == array->size())
    return {*this, key, std::move(texts)};
  refuse(key, fmt::format("{} is {}: texts in quotes, in brackets", name_of(key),
                          array ? "not a list of texts" : shown(*node)));
  return {*this, key, std::nullopt};
}

std::optional<std::size_t> TomlTable::word_at(
    std::string_view key, const std::vector<std::string_view>& words) {
  const auto text = text_at(key);
  if (!text) return std::nullopt;
  const auto found = std::find(words.begin(), words.end(), *text);
  if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
  refuse(key, fmt::format("{} is {}: {}", name_of(key), quoted_text(*text),
                          word_hint(*text, words)));
  return std::nullopt;
}

TomlValue<std::vector<Length>> TomlTable::lengths(std::string_view key) {
  using Lengths = std::vector<Length>;
  const toml::node* node = ask(key);
  if (node == nullptr) return {*this, key, std::nullopt};
  const toml::array* array = node->as_array();
  if (array == nullptr || array->empty()) {
    refuse(key, fmt::format("{} is {}: lengths in brackets, such as [6, 8]",
                            name_of(key), array ? "empty" : shown(*node)));
    return {*this, key, std::nullopt};
  }
  Lengths lengths;
  for (std::size_t i = 0; i < array->size(); ++i) {
    const std::string element = fmt::format("{}[{}]", key, i);
    reading_->sources.lines[address_of(element)] = {false,
                                                    line_of((*array)[i].source())};
    const auto length = length_of((*array)[i], element, bounds::above_zero);
    if (!length) continue;
    if (!lengths.empty() && *length <= lengths.back())
      refuse(element, fmt::format("{} has {} after {}: each larger than the one before",
                                  name_of(key), length_words(*length, reading_->unit),
                                  length_words(lengths.back(), reading_->unit)));
    lengths.push_back(*length);
  }
  return {*this, key, std::move(lengths)};
}

TomlTable TomlTable::needed_table(std::string_view key, std::string_view remedy) {
  if (!has(key))
    refuse(key, fmt::format("the joint file has no [{}]: {}", key, remedy));
  return table(key);
}

TomlTable TomlTable::table(std::string_view key) {
  const std::string heading = fmt::format("[{}]", key);
  const toml::node* node = ask(key);
  if (node != nullptr && !node->is_table())
    refuse(key, fmt::format("{} is {}: a table, {}", key, shown(*node), heading));
  return {*reading_, node ? node->as_table() : nullptr, address_of(key), heading};
}

std::vector<TomlTable> TomlTable::tables(std::string_view key) {
  const std::string heading = fmt::format("[[{}]]", key);
  std::vector<TomlTable> tables;
  const toml::node* node = ask(key);
  if (node == nullptr) return tables;
  const toml::array* array = node->as_array();
  if (array == nullptr)
    refuse(key,
           fmt::format("{} is {}: a table for each, {}", key, shown(*node), heading));
  for (std::size_t i = 0; array != nullptr && i < array->size(); ++i) {
    const toml::node& element = (*array)[i];
    const std::string address = fmt::format("{}[{}]", key, i);
    reading_->sources.lines[address] = {false, line_of(element.source())};
    if (element.is_table())
      tables.emplace_back(*reading_, element.as_table(), address, heading);
    else
      refuse(address, fmt::format("{} is {}: a table for each, {}", key, shown(element),
                                  heading));
  }
  return tables;
}

void TomlTable::refuse_unknown_keys() {
  if (table_ == nullptr) return;
  for (const auto& [key, node] : *table_) {
    if (std::find(known_.begin(), known_.end(), key.str()) != known_.end()) continue;
    const bool table = node.is_table() || node.is_array_of_tables();
    refuse(
        key.str(),
        fmt::format("unknown {} {}{}: {}", table && heading_.empty() ? "table" : "key",
                    quoted_text(key.str()), heading_.empty() ? "" : " in " + heading_,
                    word_hint(key.str(), known_)));
  }
}

}  // namespace sheerlap
