#include "geometry/mockup/mockup_face_names.hpp"

#include <fmt/format.h>

#include <BRepBndLib.hxx>
#include <Bnd_Box.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/mockup/block_faces.hpp"
#include "geometry/mockup/turned_profile.hpp"
#include "geometry/surfaces/face_surface.hpp"
#include "spotblue/geometry/mockup_faces.hpp"

namespace spotblue {
namespace {

constexpr double kSame = 1e-6;  // mm

double coordinate(Point p, int axis) { return axis == 0 ? p.x : axis == 1 ? p.y : p.z; }

double coordinate(Direction d, int axis) { return axis == 0 ? d.x() : axis == 1 ? d.y() : d.z(); }

// A round or conical face: where it is and how far it reaches along its axis.
struct RoundName {
  std::string name;
  int axis = 2;
  Point centre;
  Side side = Side::external;
  double radius = 0.0, end_radius = 0.0;
  double from = 0.0, to = 0.0;
};

class NameList {
 public:
  void step(const Step& step, Side side) {
    if (!step.name.empty()) {
      rounds_.push_back({step.name,
                         2,
                         {0, 0, 0},
                         side,
                         step.diameter / 2,
                         step.end_diameter / 2,
                         step.start,
                         step.start + step.length});
    }
  }
  void bore(const Bore& bore, double from, double to) {
    if (bore.name.empty()) {
      return;
    }
    const std::vector<FacePoint> centres = bore_centres(bore);
    for (std::size_t i = 0; i < centres.size(); ++i) {
      const std::string name =
          centres.size() == 1 ? bore.name : fmt::format("{} {}", bore.name, i + 1);
      const Point centre = face_point(bore.face, centres[i], 0.0);
      const auto add = [&](std::string said, double diameter) {
        rounds_.push_back({std::move(said), face_axis(bore.face), centre, Side::internal,
                           diameter / 2, diameter / 2, from, to});
      };
      add(name, bore.diameter);
      if (bore.counterbore) {
        add(name + " counterbore", bore.counterbore->diameter);
      }
    }
  }
  void boss(const Boss& boss, double from, double to) {
    if (!boss.name.empty()) {
      rounds_.push_back({boss.name + " outside", face_axis(boss.face),
                         face_point(boss.face, {boss.u, boss.v}, 0.0), Side::external,
                         boss.diameter / 2, boss.diameter / 2, from, to});
    }
  }
  [[nodiscard]] const std::vector<RoundName>& rounds() const { return rounds_; }

 private:
  std::vector<RoundName> rounds_;
};

constexpr double kAnywhere = 1e9;  // mm

std::vector<RoundName> round_names(const MockupPart& part) {
  NameList names;
  if (const auto* turned = std::get_if<TurnedPart>(&part.shape)) {
    for (const Step& step : turned->outside) {
      names.step(step, Side::external);
    }
    for (const Step& step : turned->inside) {
      names.step(step, Side::internal);
    }
    for (const Bore& bore : turned->bores) {
      names.bore(bore, -kAnywhere, kAnywhere);
    }
  } else if (const auto* block = std::get_if<BlockPart>(&part.shape)) {
    for (const Bore& bore : block->bores) {
      names.bore(bore, -kAnywhere, kAnywhere);
    }
    for (const Boss& boss : block->bosses) {
      names.boss(boss, -kAnywhere, kAnywhere);
    }
  }
  return names.rounds();
}

// The part as if its maker had named nothing.
MockupPart nameless(MockupPart part) {
  const auto forget = [](auto& list) {
    for (auto& one : list) {
      one.name.clear();
    }
  };
  if (auto* turned = std::get_if<TurnedPart>(&part.shape)) {
    forget(turned->outside);
    forget(turned->inside);
    forget(turned->bores);
  } else if (auto* block = std::get_if<BlockPart>(&part.shape)) {
    forget(block->bosses);
    forget(block->bores);
  }
  return part;
}

// Of the faces by which the part can be placed, those its maker gave a name.
std::vector<MockupFace> flat_names(const MockupPart& part) {
  const std::vector<MockupFace> generic = faces_of(nameless(part));
  std::vector<MockupFace> named = faces_of(part);
  std::erase_if(named, [&](const MockupFace& face) {
    return std::ranges::any_of(generic,
                               [&](const MockupFace& other) { return other.name == face.name; });
  });
  return named;
}

std::pair<double, double> reach(const TopoDS_Face& face, int axis) {
  Bnd_Box box;
  BRepBndLib::AddOptimal(face, box, false, false);
  const gp_Pnt low = box.CornerMin();
  const gp_Pnt high = box.CornerMax();
  return {coordinate(Point{low.X(), low.Y(), low.Z()}, axis),
          coordinate(Point{high.X(), high.Y(), high.Z()}, axis)};
}

bool is_on(const RoundName& name, const FaceSurface& surface, const TopoDS_Face& face) {
  const bool straight = name.radius == name.end_radius;
  if (surface.kind != (straight ? FaceSurface::Kind::cylinder : FaceSurface::Kind::cone) ||
      surface.side != name.side ||
      std::abs(std::abs(coordinate(surface.axis.along, name.axis)) - 1.0) > kSame) {
    return false;
  }
  Point off = surface.axis.at - name.centre;
  (name.axis == 0 ? off.x : name.axis == 1 ? off.y : off.z) = 0.0;
  if (norm(off) > kSame || (straight && std::abs(surface.radius - name.radius) > kSame)) {
    return false;
  }
  const auto [from, to] = reach(face, name.axis);
  return from > name.from - kSame && to < name.to + kSame;
}

std::optional<std::string> round_name(const std::vector<RoundName>& names,
                                      const FaceSurface& surface, const TopoDS_Face& face) {
  for (const RoundName& name : names) {
    if (is_on(name, surface, face)) {
      return name.name;
    }
  }
  return std::nullopt;
}

std::optional<std::string> flat_name(const std::vector<MockupFace>& names,
                                     const FaceSurface& surface) {
  for (const MockupFace& name : names) {
    if (std::abs(coordinate(surface.axis.along, name.axis) - name.sense) < kSame &&
        std::abs(coordinate(surface.axis.at, name.axis) - name.station) < kSame) {
      return name.name;
    }
  }
  return std::nullopt;
}

bool is_flank(const MockupPart& part, const FaceSurface& surface) {
  return std::holds_alternative<KeyPart>(part.shape) &&
         std::abs(std::abs(surface.axis.along.y()) - 1.0) < kSame;
}

}  // namespace

std::vector<NamedFace> named_faces(const TopoDS_Shape& solid, const MockupPart& part) {
  const std::vector<RoundName> rounds = round_names(part);
  const std::vector<MockupFace> flats = flat_names(part);
  std::vector<NamedFace> named;
  for (TopExp_Explorer each(solid, TopAbs_FACE); each.More(); each.Next()) {
    const TopoDS_Face face = TopoDS::Face(each.Current());
    const FaceSurface surface = face_surface(face);
    std::optional<std::string> name;
    if (surface.kind != FaceSurface::Kind::plane) {
      name = round_name(rounds, surface, face);
    } else if (is_flank(part, surface)) {
      name = "key";
    } else {
      name = flat_name(flats, surface);
    }
    if (name) {
      named.push_back({face, *std::move(name)});
    }
  }
  return named;
}

}  // namespace spotblue
