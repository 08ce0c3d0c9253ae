#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "geometry/result.h"

struct sqlite3;
struct sqlite3_stmt;

namespace sheerlap {

class Database;

/// A statement of SQL, ready to be run over and over.
class Statement {
 public:
  /// Binds the next value; the first call after `reset` binds the first.
  void bind(std::int64_t value);
  void bind(double value);
  void bind(std::string_view value);
  void bind(std::optional<double> value);
  void bind(std::optional<std::int64_t> value);

  /// Goes to the next row. @returns false after the last
  Result<bool> step();
  /// Runs a statement that has no rows, and resets it.
  Result<void> run();
  void reset();

  bool is_null(int column) const;
  std::int64_t integer(int column) const;
  double real(int column) const;
  /// Valid until the next step.
  std::string_view text(int column) const;
  std::optional<double> maybe_real(int column) const;
  std::optional<std::int64_t> maybe_integer(int column) const;

 private:
  friend class Database;
  struct Finalize {
    void operator()(sqlite3_stmt* statement) const;
  };
  Statement(const Database& database, sqlite3_stmt* statement)
      : database_(&database), statement_(statement) {}

  const Database* database_;
  std::unique_ptr<sqlite3_stmt, Finalize> statement_;
  int bound_ = 0;
};

/// A file of SQLite.
///
/// It keeps a rollback journal, not a write-ahead log: what is confirmed then stands in
/// the one file, which can be copied, mailed and kept on a shared drive, and commands
/// are too short to be in each other's way. Each is synced to the disk before it is
/// confirmed, its journal's removal too. Another program that is writing is waited for.
class Database {
 public:
  enum class Missing { Make, Refuse };

  /// Opens the file. @errors  Unreadable: it is not there, or no such file
  static Result<Database> open(const std::filesystem::path& path, Missing missing);

  Result<Statement> prepare(std::string_view sql) const;
  /// Runs statements without values.
  Result<void> run(const std::string& sql) const;
  /// The one number that a statement gives.
  Result<std::int64_t> number(std::string_view sql) const;

  /// The failure of the last call, in words, as `Unreadable`; `where` empty.
  tl::unexpected<Errors> failure() const;

 private:
  struct Close {
    void operator()(sqlite3* handle) const;
  };
  explicit Database(sqlite3* handle) : handle_(handle) {}

  std::unique_ptr<sqlite3, Close> handle_;
};

/// A transaction that holds other writers off from its start; undone unless committed.
class Transaction {
 public:
  static Result<Transaction> begin(const Database& database);
  Transaction(Transaction&& other) noexcept;
  Transaction& operator=(Transaction&&) = delete;
  ~Transaction();
  /// @errors  nothing of the transaction is kept
  Result<void> commit();

 private:
  explicit Transaction(const Database& database) : database_(&database) {}
  const Database* database_;  ///< none: it is over
};

}  // namespace sheerlap
