#include "tests/joint/documents/sample_tolerance.h"

#include "joint/tolerance_checks.h"
#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

/// A figure and how far its range reaches either way.
Estimate about(double value, double reach) {
  return {value, value - reach, value + reach};
}

ToleranceInputs inputs() {
  ProcessError shrinkage{ProcessErrorKind::LidShrinkage, ErrorLaw::Normal, 0.0005,
                         0.00015, Length()};
  ProcessError face{ProcessErrorKind::HullFace, ErrorLaw::Uniform, 0, 0.4,
                    Length::mm(700)};
  return {10000, 640, {shrinkage, face}};
}

std::vector<BlamedStretch> stretches() {
  const auto rare = about(0.0004, 0.0003);
  return {{SideName::Starboard, Length::mm(0), Length::mm(500), about(0.41, 0.0096),
           about(0.201, 0.0078), rare},
          {SideName::Starboard, Length::mm(500), Length::mm(1000), rare, rare, rare},
          {SideName::Port, Length::mm(0), Length::mm(487.5), about(0.06, 0.0047), rare,
           about(0.102, 0.006)}};
}

std::vector<LengthMix> lengths() {
  return {{Length::mm(19), 104, about(100.234, 0.21), about(12104, 12)},
          {Length::mm(22), 5, about(8.6, 0.12), about(1053, 8)},
          {std::nullopt, 0, about(0.166, 0.011), std::nullopt}};
}

}  // namespace

ToleranceJob sample_tolerance() {
  ToleranceJob sample;
  sample.job.joint = sample_job().joint;
  sample.job.perimeter = sample_job().perimeter;
  sample.job.joint.seating.spreaders = {{Length::mm(2000), Length::mm(8)}};
  sample.job.joint.tolerance = inputs();
  Tolerance& of = sample.tolerance;
  of.boats = of.asked = 10000;
  of.seed = 640;
  of.stations = 312;
  of.shares = {about(0.929, 0.0051), about(0.611, 0.0096), about(0.318, 0.0091),
               about(0.051, 0.0043), about(0.02, 0.0028)};
  of.nominal_margin_mm = 0.71;
  of.margin_mean_mm = about(0.41, 0.009);
  of.margin_mm = {about(-0.12, 0.02), about(0.43, 0.012), about(0.93, 0.018), 0.005};
  of.squeeze_mm = Deciles{about(1.2, 0.1), about(3.4, 0.1), about(7.7, 0.2), 0.01};
  of.stretches = stretches();
  of.adhesive = {{about(1712, 2), about(1795, 1.4), about(1880, 2), 0.1},
                 {about(2580, 3), about(2702, 2), about(2831, 3), 0.1},
                 about(1796, 1.3),
                 about(66, 0.9)};
  of.run = ToleranceRun{120,
                        about(227300, 120),
                        about(228400, 160),
                        {Volume::ml(226800), 765, 1003},
                        {Volume::ml(228400), 771, 1009},
                        {Volume::ml(240100), 812, 1050}};
  of.lengths = lengths();
  of.drives = {4000,
               {{0, about(0.25, 0.03), about(0.26, 0.02)},
                {1, about(0.73, 0.04), about(0.74, 0.03)}},
               {{0, about(0.002, 0.03), about(0.001, 0.001)},
                {1, about(0.99, 0.03), about(1, 0.02)}},
               {{0, about(0.4, 0.05), about(0.5, 0.04)},
                {1, about(0.5, 0.05), about(0.6, 0.04)}}};
  sample.job.checks = tolerance_checks(sample.job.joint, of, {});
  return sample;
}

}  // namespace sheerlap
