#include "joint/records/database.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <cassert>
#include <fstream>
#include <system_error>

namespace sheerlap {
namespace {

/// Another program that is writing is waited for this long.
constexpr int patience_ms = 10'000;

/// Of this connection alone: they write nothing to a file that may be no record. A
/// file's journal is a rollback journal where nobody has asked for another.
const char* const settings =
    "PRAGMA foreign_keys = ON;"
    "PRAGMA synchronous = EXTRA;"
    "PRAGMA trusted_schema = OFF;";

/// What to do about a failure.
const char* remedy(int code) {
  switch (code & 0xFF) {
    case SQLITE_NOTADB:
      return "it is no record of boats: name another file";
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return "another program has been writing to it for 10 s: give the command again";
    case SQLITE_FULL:
    case SQLITE_IOERR:
      return "nothing of this command was kept: make room on the disk and give it "
             "again";
    case SQLITE_CORRUPT:
      return "the file is damaged: take the last good copy of it";
    default:
      return "give the path of a record that may be read and written";
  }
}

/// How every file of SQLite begins, its closing zero left out.
constexpr std::string_view sqlite_header = "SQLite format 3";

/// What is at a path, as far as it can be told without SQLite, which takes a file
/// shorter than its header for an empty one and would write over it.
Result<void> may_be_opened(const std::filesystem::path& path,
                           Database::Missing missing) {
  std::error_code ignored;
  const bool refuse = missing == Database::Missing::Refuse;
  if (!std::filesystem::exists(path, ignored)) {
    if (refuse) return unreadable("", "there is no such record: record add makes it");
    return {};
  }
  if (std::filesystem::is_directory(path, ignored))
    return unreadable("", "is a directory: give the path of a file");
  std::string start(sqlite_header.size(), ' ');
  std::ifstream file(path, std::ios::binary);
  file.read(start.data(), static_cast<std::streamsize>(start.size()));
  if (file.gcount() == 0 && file.eof()) {
    if (refuse) return unreadable("", "is empty: record add makes it a record");
    return {};
  }
  if (file.gcount() > 0 && start != sqlite_header)
    return unreadable("", "it is no record of boats: name another file");
  return {};
}

}  // namespace

void Statement::Finalize::operator()(sqlite3_stmt* statement) const {
  sqlite3_finalize(statement);
}

void Database::Close::operator()(sqlite3* handle) const { sqlite3_close(handle); }

void Statement::bind(std::int64_t value) {
  const int code = sqlite3_bind_int64(statement_.get(), ++bound_, value);
  assert(code == SQLITE_OK);
  static_cast<void>(code);
}

void Statement::bind(double value) {
  const int code = sqlite3_bind_double(statement_.get(), ++bound_, value);
  assert(code == SQLITE_OK);
  static_cast<void>(code);
}

void Statement::bind(std::string_view value) {
  const int code = sqlite3_bind_text64(statement_.get(), ++bound_, value.data(),
                                       value.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
  assert(code == SQLITE_OK);
  static_cast<void>(code);
}

void Statement::bind(std::optional<double> value) {
  if (value) return bind(*value);
  sqlite3_bind_null(statement_.get(), ++bound_);
}

void Statement::bind(std::optional<std::int64_t> value) {
  if (value) return bind(*value);
  sqlite3_bind_null(statement_.get(), ++bound_);
}

Result<bool> Statement::step() {
  const int code = sqlite3_step(statement_.get());
  if (code == SQLITE_ROW) return true;
  if (code == SQLITE_DONE) return false;
  return database_->failure();
}

Result<void> Statement::run() {
  const auto row = step();
  if (!row) return tl::unexpected(row.error());
  reset();
  return {};
}

void Statement::reset() {
  sqlite3_reset(statement_.get());
  bound_ = 0;
}

bool Statement::is_null(int column) const {
  return sqlite3_column_type(statement_.get(), column) == SQLITE_NULL;
}

std::int64_t Statement::integer(int column) const {
  return sqlite3_column_int64(statement_.get(), column);
}

double Statement::real(int column) const {
  return sqlite3_column_double(statement_.get(), column);
}

std::string_view Statement::text(int column) const {
  const auto* bytes = sqlite3_column_text(statement_.get(), column);
  if (bytes == nullptr) return {};
  const auto size = sqlite3_column_bytes(statement_.get(), column);
  return {reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size)};
}

std::optional<double> Statement::maybe_real(int column) const {
  return is_null(column) ? std::nullopt : std::optional(real(column));
}

std::optional<std::int64_t> Statement::maybe_integer(int column) const {
  return is_null(column) ? std::nullopt : std::optional(integer(column));
}

Result<Database> Database::open(const std::filesystem::path& path, Missing missing) {
  if (const auto may = may_be_opened(path, missing); !may)
    return tl::unexpected(may.error());
  sqlite3* handle = nullptr;
  const int make = missing == Missing::Make ? SQLITE_OPEN_CREATE : 0;
  const int code =
      sqlite3_open_v2(path.c_str(), &handle, SQLITE_OPEN_READWRITE | make, nullptr);
  Database database(handle);
  if (code != SQLITE_OK) return database.failure();
  sqlite3_extended_result_codes(handle, 1);
  sqlite3_busy_timeout(handle, patience_ms);
  if (const auto set = database.run(settings); !set) return tl::unexpected(set.error());
  return database;
}

Result<Statement> Database::prepare(std::string_view sql) const {
  sqlite3_stmt* statement = nullptr;
  const int code = sqlite3_prepare_v2(
      handle_.get(), sql.data(), static_cast<int>(sql.size()), &statement, nullptr);
  if (code != SQLITE_OK) return failure();
  return Statement(*this, statement);
}

Result<void> Database::run(const std::string& sql) const {
  if (sqlite3_exec(handle_.get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
    return failure();
  return {};
}

Result<std::int64_t> Database::number(std::string_view sql) const {
  auto statement = prepare(sql);
  if (!statement) return tl::unexpected(statement.error());
  const auto row = statement->step();
  if (!row) return tl::unexpected(row.error());
  assert(*row);
  return statement->integer(0);
}

tl::unexpected<Errors> Database::failure() const {
  if (!handle_) return unreadable("", "there is no memory left to open it");
  return unreadable("", fmt::format("{}: {}", sqlite3_errmsg(handle_.get()),
                                    remedy(sqlite3_extended_errcode(handle_.get()))));
}

Result<Transaction> Transaction::begin(const Database& database) {
  if (const auto begun = database.run("BEGIN IMMEDIATE"); !begun)
    return tl::unexpected(begun.error());
  return Transaction(database);
}

Transaction::Transaction(Transaction&& other) noexcept : database_(other.database_) {
  other.database_ = nullptr;
}

Transaction::~Transaction() {
  // some failures have undone it already, and then this one has nothing to undo
  if (database_ != nullptr) static_cast<void>(database_->run("ROLLBACK"));
}

Result<void> Transaction::commit() {
  if (auto committed = database_->run("COMMIT"); !committed) return committed;
  database_ = nullptr;
  return {};
}

}  // namespace sheerlap
