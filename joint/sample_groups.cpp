#include "joint/sample_groups.h"

#include <Eigen/QR>
#include <Eigen/SVD>
#include <algorithm>
#include <cassert>

namespace sheerlap {
namespace {

using Eigen::Index;

/// Parts of the pattern that the modes take up, against the greatest.
constexpr double taken_up = 1e-9;

SampleGroup group_like(const FieldSample& sample) {
  const Index count = sample.values.size();
  Eigen::ColPivHouseholderQR<Eigen::MatrixXd> parted(sample.modes);
  const Index left = count - (sample.modes.cols() > 0 ? parted.rank() : 0);
  SampleGroup group;
  group.along_mm = sample.along_mm;
  group.modes = sample.modes;
  group.places = sample.pattern;
  group.rest = Eigen::MatrixXd::Identity(count, count);
  if (sample.modes.cols() > 0)
    group.rest = Eigen::MatrixXd(parted.householderQ()).rightCols(left);
  group.level = group.rest.transpose() * Eigen::VectorXd::Ones(count);
  group.squares = Eigen::MatrixXd::Zero(left, left);
  group.mean = Eigen::VectorXd::Zero(left);
  return group;
}

}  // namespace

std::vector<SampleGroup> grouped(const std::vector<FieldSample>& samples) {
  std::vector<SampleGroup> groups;
  for (const FieldSample& sample : samples) {
    assert(sample.modes.rows() == sample.values.size());
    assert(sample.pattern.empty() || sample.pattern.size() == sample.along_mm.size());
    auto found = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
      return group.along_mm == sample.along_mm && group.modes == sample.modes &&
             group.places == sample.pattern;
    });
    if (found == groups.end()) {
      groups.push_back(group_like(sample));
      found = groups.end() - 1;
    }
    const Eigen::VectorXd off = found->rest.transpose() * sample.values - found->mean;
    ++found->samples;
    found->mean += off / found->samples;
    found->squares += off * off.transpose() * (1 - 1 / found->samples);
  }
  return groups;
}

void add_pattern(std::vector<SampleGroup>& groups) {
  Index places = 1, left = 0;
  for (const SampleGroup& group : groups) {
    for (const std::size_t place : group.places)
      places = std::max(places, static_cast<Index>(place) + 1);
    left += group.rest.cols();
  }
  Eigen::MatrixXd all(left, places);
  Index row = 0;
  for (SampleGroup& group : groups) {
    Eigen::MatrixXd at = Eigen::MatrixXd::Zero(group.rest.rows(), places);
    for (Index i = 0; i < at.rows(); ++i)
      at(i, group.places.empty()
                ? 0
                : static_cast<Index>(group.places[static_cast<std::size_t>(i)])) = 1;
    group.pattern = group.rest.transpose() * at;
    all.middleRows(row, group.pattern.rows()) = group.pattern;
    row += group.pattern.rows();
  }
  Eigen::JacobiSVD<Eigen::MatrixXd> parted(all, Eigen::ComputeThinV);
  parted.setThreshold(taken_up);
  const Eigen::MatrixXd told = parted.matrixV().leftCols(parted.rank());
  for (SampleGroup& group : groups) group.pattern = group.pattern * told;
}

}  // namespace sheerlap
