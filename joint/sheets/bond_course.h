#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "joint/bond_strength.h"
#include "joint/job.h"
#include "joint/length_text.h"

namespace sheerlap {

/// A stretch of a side's sheer with its name.
struct CourseStretch {
  Length from;  ///< girth along the sheer
  Length to;
  std::string what;
};

/// A part of the course in which one thing gives first.
struct CourseRun {
  struct Point {
    Length girth;    ///< along the sheer
    double use = 0;  ///< infinite where there is no bond line
  };
  BondMode mode = BondMode::AdhesiveShear;
  std::vector<Point> points;  ///< by girth; where the load jumps two at one girth
};

/// How the use of the bond runs along one side, and what bears on it.
struct BondCourse {
  const PerimeterSide* side = nullptr;
  std::vector<CourseRun> runs;          ///< by girth; none over an opening
  std::vector<CourseStretch> loads;     ///< what loads a part of the side only
  std::vector<Length> jumps;            ///< of the load, where there is joint
  std::vector<CourseStretch> wedges;    ///< the gap differs across the bond band
  std::vector<CourseStretch> openings;  ///< no joint
};

/// The courses of all sides, in their order.
/// @param job  with its strength; its perimeter is referred to, not copied
std::vector<BondCourse> bond_courses(const Job& job);

/// The axis that uses are drawn on, from 0 up.
struct UseAxis {
  double top = 1;   ///< over 1; a greater use is drawn at the top
  double step = 1;  ///< of its marks
};

/// An axis for some uses; infinite ones are left out.
UseAxis use_axis(const std::vector<double>& uses);

/// The step of the marks of an axis of girth: 1, 2 or 5 times a power of ten of the
/// unit, about an eighth of the whole.
Length girth_step(Length whole, LengthUnit unit);

/// Puts stretches with names on as few rows as keep their names apart.
/// @param extents  from and to of each, name and all, by `from`
/// @returns        a row for each, from 0
std::vector<std::size_t> rows_apart(
    const std::vector<std::pair<double, double>>& extents);

}  // namespace sheerlap
