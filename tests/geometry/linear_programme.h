#pragma once

#include <memory>
#include <optional>
#include <utility>
#include <vector>

struct glp_prob;

namespace sheerlap {

/// A sum of variables times factors, and a constant.
struct LinearSum {
  std::vector<std::pair<int, double>> terms;  ///< variable, factor
  double constant = 0;

  LinearSum& add(double factor, int variable);
  LinearSum& add(double factor, const LinearSum& other);
};

LinearSum constant_sum(double value);
LinearSum variable_sum(int variable);

/// A mixed integer linear programme that seeks the least cost; for tests.
class LinearProgramme {
 public:
  LinearProgramme();

  /// @returns  a variable between 0 and `greatest`
  int number(double cost, double greatest);
  /// @returns  a variable that is 0 or 1
  int yes_or_no();
  /// The sum is to be no more than zero.
  void require(const LinearSum& sum);

  /// @returns  the cost and then the variables; nothing if they cannot keep the
  ///           requirements
  std::optional<std::vector<double>> solve();

  /// The same for a programme of numbers alone, by the simplex method without GLPK's
  /// preparation, which drops small factors.
  std::optional<std::vector<double>> solve_numbers();

 private:
  std::unique_ptr<glp_prob, void (*)(glp_prob*)> glpk_;
};

}  // namespace sheerlap
