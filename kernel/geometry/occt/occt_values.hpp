#pragma once
// Steps between Open CASCADE's own points and ours; sources of this layer only.

#include <gp_Dir.hxx>
#include <gp_Pnt.hxx>
#include <gp_Vec.hxx>
#include <gp_XYZ.hxx>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

inline Point from_occt(const gp_XYZ& p) { return {p.X(), p.Y(), p.Z()}; }
inline Point from_occt(const gp_Pnt& p) { return from_occt(p.XYZ()); }
inline Point from_occt(const gp_Vec& v) { return from_occt(v.XYZ()); }
inline Direction from_occt(const gp_Dir& d) { return from_occt(d.XYZ()); }
inline gp_Pnt to_pnt(Point p) { return {p.x, p.y, p.z}; }
inline gp_Dir to_dir(Direction d) { return {d.x, d.y, d.z}; }

}  // namespace spotblue
