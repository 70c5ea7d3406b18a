#pragma once
// Steps between Open CASCADE's own points, directions and places and ours.

#include <gp_Dir.hxx>
#include <gp_Pnt.hxx>
#include <gp_Trsf.hxx>
#include <gp_Vec.hxx>
#include <gp_XYZ.hxx>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

inline Point from_occt(const gp_XYZ& p) { return {p.X(), p.Y(), p.Z()}; }
inline Point from_occt(const gp_Pnt& p) { return from_occt(p.XYZ()); }
inline Point from_occt(const gp_Vec& v) { return from_occt(v.XYZ()); }
inline Direction from_occt(const gp_Dir& d) { return Direction(from_occt(d.XYZ())); }
inline gp_Pnt to_pnt(Point p) { return {p.x, p.y, p.z}; }
inline gp_Dir to_dir(Direction d) { return {d.x(), d.y(), d.z()}; }
inline gp_Trsf to_trsf(const Frame& frame) {
  const auto& r = frame.rows;
  gp_Trsf result;
  result.SetValues(r[0][0], r[0][1], r[0][2], r[0][3], r[1][0], r[1][1], r[1][2], r[1][3], r[2][0],
                   r[2][1], r[2][2], r[2][3]);
  return result;
}

}  // namespace spotblue
