#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// How much glass a hand-laid laminate of mat and woven roving holds.
template <class Number>
struct GlassContent {
  Number psi;  ///< glass, share of the mass: 0.25 to 0.5
  Number kM;   ///< factor on untested strengths
};

/// The tensile strength, sut.
/// @source  ISO 12215-5:2008; from memory, confirm. It reproduces a published sample
template <class Working>
auto estimated_tension(Working& work,
                       const GlassContent<typename Working::Number>& glass) {
  return work.figure({"sut", "tensile strength of the laminate", "N/mm2",
                      "ISO 12215-5:2008; from memory, confirm",
                      "hand-laid E-glass, mat and woven roving; an estimate, no test"},
                     glass.kM * (800 * power(glass.psi, 2) - 80 * glass.psi + 37));
}

/// The compressive strength, suc. @source  as `estimated_tension`
template <class Working>
auto estimated_compression(Working& work,
                           const GlassContent<typename Working::Number>& glass) {
  return work.figure({"suc", "compressive strength of the laminate", "N/mm2",
                      "ISO 12215-5:2008; from memory, confirm",
                      "hand-laid E-glass, mat and woven roving; an estimate, no test"},
                     glass.kM * (150 * glass.psi + 72));
}

/// The flexural strength, suf. @source  as `estimated_tension`
template <class Working>
auto estimated_flexure(Working& work,
                       const GlassContent<typename Working::Number>& glass) {
  return work.figure({"suf", "flexural strength of the laminate", "N/mm2",
                      "ISO 12215-5:2008; from memory, confirm",
                      "hand-laid E-glass, mat and woven roving; an estimate, no test"},
                     glass.kM * (502 * power(glass.psi, 2) + 107));
}

/// The in-plane shear strength, tau_u. @source  as `estimated_tension`
template <class Working>
auto estimated_shear(Working& work,
                     const GlassContent<typename Working::Number>& glass) {
  return work.figure({"tau_u", "in-plane shear strength of the laminate", "N/mm2",
                      "ISO 12215-5:2008; from memory, confirm",
                      "hand-laid E-glass, mat and woven roving; an estimate, no test"},
                     glass.kM * (80 * glass.psi + 38));
}

/// The interlaminar shear strength, til. @source  as `estimated_tension`
template <class Working>
auto estimated_interlaminar(Working& work,
                            const GlassContent<typename Working::Number>& glass) {
  return work.figure({"til", "interlaminar shear strength of the laminate", "N/mm2",
                      "ISO 12215-5:2008; from memory, confirm",
                      "hand-laid E-glass, mat and woven roving; an estimate, no test"},
                     glass.kM * (22.5 - 17.5 * glass.psi));
}

}  // namespace sheerlap
