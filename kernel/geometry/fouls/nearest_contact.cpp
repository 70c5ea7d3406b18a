#include "geometry/fouls/nearest_contact.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRepBndLib.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRep_Tool.hxx>
#include <Bnd_Box.hxx>
#include <GeomAPI_ProjectPointOnSurf.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <algorithm>
#include <gp_Vec.hxx>
#include <vector>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue::proof {
namespace {

struct BoxedFace {
  TopoDS_Face face;
  Bnd_Box box;
  FaceForm form = FaceForm::plane;
};

FaceForm surface_form(const TopoDS_Face& face) {
  switch (BRepAdaptor_Surface(face, Standard_False).GetType()) {
    case GeomAbs_Plane:
      return FaceForm::plane;
    case GeomAbs_Cylinder:
      return FaceForm::cylinder;
    case GeomAbs_Cone:
      return FaceForm::cone;
    case GeomAbs_Sphere:
      return FaceForm::sphere;
    case GeomAbs_Torus:
      return FaceForm::torus;
    default:
      return FaceForm::free_form;
  }
}

Bnd_Box box_of(const TopoDS_Shape& shape) {
  Bnd_Box box;
  BRepBndLib::Add(shape, box, Standard_False);
  return box;
}

std::vector<BoxedFace> boxed_faces(const TopoDS_Shape& shape, const Bnd_Box& other, double reach) {
  std::vector<BoxedFace> found;
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More(); it.Next()) {
    const TopoDS_Face& face = TopoDS::Face(it.Current());
    const Bnd_Box box = box_of(face);
    if (!box.IsVoid() && box.Distance(other) <= reach) {
      found.push_back({face, box, surface_form(face)});
    }
  }
  return found;
}

/// How a face curves at a point of it, along its two parameters: towards its outside where
/// positive.
struct Curving {
  double least = 0.0, most = 0.0;  ///< 1/mm
};

Curving curving(const TopoDS_Face& face, const gp_Pnt& at) {
  const Handle(Geom_Surface) surface = BRep_Tool::Surface(face);
  GeomAPI_ProjectPointOnSurf foot(at, surface);
  if (foot.NbPoints() == 0) {
    return {};
  }
  double u = 0.0, v = 0.0;
  foot.LowerDistanceParameters(u, v);
  gp_Pnt p;
  gp_Vec du, dv, duu, dvv, duv;
  surface->D2(u, v, p, du, dv, duu, dvv, duv);
  if (du.Crossed(dv).Magnitude() < kNoLength) {  // at a pole: as a little beside it
    const BRepAdaptor_Surface inner(face);
    const double middle = 0.5 * (inner.FirstVParameter() + inner.LastVParameter());
    v += 0.01 * (middle - v);
    surface->D2(u, v, p, du, dv, duu, dvv, duv);
  }
  gp_Vec normal = du.Crossed(dv);
  if (normal.Magnitude() < kRounding) {
    return {};
  }
  normal.Normalize();
  if (face.Orientation() == TopAbs_REVERSED) {
    normal.Reverse();
  }
  const double along_u = duu.Dot(normal) / du.SquareMagnitude();
  const double along_v = dvv.Dot(normal) / dv.SquareMagnitude();
  return {std::min(along_u, along_v), std::max(along_u, along_v)};
}

/// Whether what bulges stands in what is hollow, as a shaft in its hole: their radii differ by no
/// more than the gap allowed and half the smaller.
bool stands_in(const Curving& bulging, const Curving& hollow, double reach) {
  constexpr double kFlat = 1e-9;
  if (bulging.least > -kFlat || hollow.most < kFlat) {
    return false;
  }
  const double shaft = -1.0 / bulging.least;
  const double hole = 1.0 / hollow.most;
  return hole - shaft <= reach + 0.5 * shaft;
}

struct Nearest {
  double gap = 0.0;
  gp_Pnt on_a, on_b;
  int within = 0;  ///< on how many of the two the point lies off the face's edges
};

/// The least distance of two faces; none where Open CASCADE finds none.
std::optional<Nearest> nearest(const TopoDS_Face& a, const TopoDS_Face& b) {
  BRepExtrema_DistShapeShape extrema(a, b);
  if (!extrema.IsDone() || extrema.NbSolution() == 0) {
    return {};
  }
  Nearest found{extrema.Value(), extrema.PointOnShape1(1), extrema.PointOnShape2(1)};
  for (int i = 1; i <= extrema.NbSolution(); ++i) {
    const int within = (extrema.SupportTypeShape1(i) == BRepExtrema_IsInFace ? 1 : 0) +
                       (extrema.SupportTypeShape2(i) == BRepExtrema_IsInFace ? 1 : 0);
    if (within > found.within) {
      found = {extrema.Value(), extrema.PointOnShape1(i), extrema.PointOnShape2(i), within};
    }
  }
  return found;
}

/// Beside seats: what a ball or a free form bears on, but a ball in a bore of its size, which is
/// the round end of a shaft.
bool is_asked(const BoxedFace& a, const BoxedFace& b, ContactQuestion question) {
  const auto bears_on = [](FaceForm one, FaceForm other) {
    return other != FaceForm::plane &&
           (one == FaceForm::free_form || (one == FaceForm::sphere && other != FaceForm::cylinder));
  };
  return question == ContactQuestion::any_face || bears_on(a.form, b.form) ||
         bears_on(b.form, a.form);
}

bool is_contact(const BoxedFace& a, const BoxedFace& b, const Nearest& nearest,
                ContactQuestion question, double reach) {
  if (nearest.gap <= kTouching) {
    return true;
  }
  if (nearest.gap > contact_limit(a.form, b.form, question, reach)) {
    return false;
  }
  const Curving of_a = curving(a.face, nearest.on_a);
  const Curving of_b = curving(b.face, nearest.on_b);
  return stands_in(of_a, of_b, reach) || stands_in(of_b, of_a, reach);
}

/// Which of two faces as near tell more: those that meet off their edges, and round before plane.
int weight(const BoxedFace& a, const BoxedFace& b, const Nearest& nearest) {
  return 4 * nearest.within + (a.form == FaceForm::plane ? 0 : 1) +
         (b.form == FaceForm::plane ? 0 : 1);
}

}  // namespace

std::optional<NearestContact> nearest_contact(const TopoDS_Shape& a, const TopoDS_Shape& b,
                                              ContactQuestion question, double reach) {
  const std::vector<BoxedFace> of_a = boxed_faces(a, box_of(b), reach);
  const std::vector<BoxedFace> of_b = boxed_faces(b, box_of(a), reach);
  std::optional<NearestContact> found;
  constexpr double kAsNear = 1e-6;
  double most = reach;
  int heaviest = 0;
  for (const BoxedFace& one : of_a) {
    for (const BoxedFace& other : of_b) {
      const double limit =
          std::min(most + kAsNear, contact_limit(one.form, other.form, question, reach));
      if (!is_asked(one, other, question) || one.box.Distance(other.box) > limit) {
        continue;
      }
      const auto apart = nearest(one.face, other.face);
      if (!apart) {
        throw Error(ErrorCode::open_cascade_failed, {"", ""},
                    "Open CASCADE found no distance between two faces", "measure it on the parts");
      }
      const int weighs = weight(one, other, *apart);
      const bool nearer = apart->gap < most - kAsNear;
      const bool as_near = !nearer && apart->gap < most + kAsNear && weighs > heaviest;
      if ((nearer || as_near) && is_contact(one, other, *apart, question, reach)) {
        most = nearer ? apart->gap : most;
        heaviest = weighs;
        found = NearestContact{apart->gap, from_occt(apart->on_a), one.form, other.form};
      }
    }
  }
  return found;
}

}  // namespace spotblue::proof
