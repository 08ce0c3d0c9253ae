#include "tests/geometry/linear_programme.h"

#include <glpk.h>

#include <cassert>
#include <map>

namespace sheerlap {

LinearSum& LinearSum::add(double factor, int variable) {
  terms.emplace_back(variable, factor);
  return *this;
}

LinearSum& LinearSum::add(double factor, const LinearSum& other) {
  for (const auto& [variable, own] : other.terms)
    terms.emplace_back(variable, factor * own);
  constant += factor * other.constant;
  return *this;
}

LinearSum constant_sum(double value) { return {{}, value}; }

LinearSum variable_sum(int variable) { return {{{variable, 1}}, 0}; }

LinearProgramme::LinearProgramme() : glpk_(glp_create_prob(), glp_delete_prob) {}

int LinearProgramme::number(double cost, double greatest) {
  const int index = glp_add_cols(glpk_.get(), 1);
  glp_set_obj_coef(glpk_.get(), index, cost);
  glp_set_col_bnds(glpk_.get(), index, greatest > 0 ? GLP_DB : GLP_FX, 0, greatest);
  return index;
}

int LinearProgramme::yes_or_no() {
  const int index = glp_add_cols(glpk_.get(), 1);
  glp_set_col_kind(glpk_.get(), index, GLP_BV);
  return index;
}

void LinearProgramme::require(const LinearSum& sum) {
  std::map<int, double> factor_of;
  for (const auto& [variable, factor] : sum.terms) factor_of[variable] += factor;
  std::vector<int> variables{0};  // the library counts from 1
  std::vector<double> factors{0};
  for (const auto& [variable, factor] : factor_of) {
    variables.push_back(variable);
    factors.push_back(factor);
  }
  const int row = glp_add_rows(glpk_.get(), 1);
  glp_set_row_bnds(glpk_.get(), row, GLP_UP, 0, -sum.constant);
  glp_set_mat_row(glpk_.get(), row, static_cast<int>(variables.size()) - 1,
                  variables.data(), factors.data());
}

std::optional<std::vector<double>> LinearProgramme::solve() {
  glp_iocp options;
  glp_init_iocp(&options);
  options.msg_lev = GLP_MSG_OFF;
  options.presolve = GLP_ON;
  options.cov_cuts = GLP_ON;
  options.tol_int = 1e-9;
  glp_term_out(GLP_OFF);
  const int outcome = glp_intopt(glpk_.get(), &options);
  if (outcome == GLP_ENOPFS) return std::nullopt;
  assert(outcome == 0);
  if (glp_mip_status(glpk_.get()) == GLP_NOFEAS) return std::nullopt;
  assert(glp_mip_status(glpk_.get()) == GLP_OPT);
  std::vector<double> result{glp_mip_obj_val(glpk_.get())};
  for (int variable = 1; variable <= glp_get_num_cols(glpk_.get()); ++variable)
    result.push_back(glp_mip_col_val(glpk_.get(), variable));
  return result;
}

std::optional<std::vector<double>> LinearProgramme::solve_numbers() {
  glp_smcp options;
  glp_init_smcp(&options);
  options.msg_lev = GLP_MSG_OFF;
  options.presolve = GLP_OFF;
  options.tol_bnd = options.tol_dj = 1e-9;
  glp_term_out(GLP_OFF);
  [[maybe_unused]] const int outcome = glp_simplex(glpk_.get(), &options);
  assert(outcome == 0);
  if (glp_get_status(glpk_.get()) == GLP_NOFEAS) return std::nullopt;
  assert(glp_get_status(glpk_.get()) == GLP_OPT);
  std::vector<double> result{glp_get_obj_val(glpk_.get())};
  for (int variable = 1; variable <= glp_get_num_cols(glpk_.get()); ++variable)
    result.push_back(glp_get_col_prim(glpk_.get(), variable));
  return result;
}

}  // namespace sheerlap
