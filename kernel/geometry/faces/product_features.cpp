#include "geometry/faces/product_features.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRepBndLib.hxx>
#include <BRep_Tool.hxx>
#include <Bnd_Box.hxx>
#include <Geom_BSplineSurface.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <utility>

#include "geometry/faces/drawn_far.hpp"
#include "geometry/faces/feature_merge.hpp"
#include "geometry/faces/feature_split.hpp"
#include "geometry/faces/modelled_thread.hpp"
#include "geometry/faces/product_notes.hpp"
#include "geometry/faces/width_features.hpp"
#include "geometry/model/feature_names.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/edge_integral.hpp"
#include "geometry/surfaces/face_flux.hpp"
#include "geometry/surfaces/free_form_flux.hpp"
#include "geometry/surfaces/loop_senses.hpp"
#include "geometry/surfaces/shell_facing.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

// The volume is integrated until it is known to this share of itself, or until this many points of
// each free-form face have been asked for: about 50 ms.
constexpr double kVolumeShare = 1e-8;
constexpr std::size_t kEffort = 60'000;
constexpr double kRounding = 1e-13;  // of the faces' shares: what adding them up may lose

void add_edges(const TopoDS_Shape& wire, std::vector<EdgeCurve>& edges) {
  for (TopExp_Explorer it(wire, TopAbs_EDGE); it.More(); it.Next()) {
    if (auto edge = edge_curve(TopoDS::Edge(it.Current()))) {
      edges.push_back(std::move(*edge));
    }
  }
}

Box box_of_shape(const TopoDS_Shape& shape) {
  Bnd_Box bounds;
  BRepBndLib::Add(shape, bounds, Standard_False);
  Box box;
  if (!bounds.IsVoid()) {
    extend(box, from_occt(bounds.CornerMin()));
    extend(box, from_occt(bounds.CornerMax()));
  }
  return box;
}

// A free-form face lies in the hull of its poles; another kind of surface is sampled and grown.
Box box_of_free_form(const TopoDS_Face& face, const std::vector<EdgeCurve>& edges) {
  Box box;
  for (const EdgeCurve& edge : edges) {
    for (int i = 0; i <= 8; ++i) {
      extend(box, point_along(edge, i / 8.0).at);
    }
  }
  const BRepAdaptor_Surface surface(face, Standard_False);
  if (surface.GetType() == GeomAbs_BSplineSurface) {
    const Handle(Geom_BSplineSurface) spline = surface.BSpline();
    for (int u = 1; u <= spline->NbUPoles(); ++u) {
      for (int v = 1; v <= spline->NbVPoles(); ++v) {
        extend(box, from_occt(spline->Pole(u, v)));
      }
    }
  } else {
    box = grown(box, diagonal(box));
  }
  return box;
}

// A share of the volume that is not settled yet.
struct OpenShare {
  std::size_t shell = 0, face = 0;
  FreeFormFlux flux;
};

struct ReadShell {
  std::vector<ReadFace> faces;
  int facing = 1;
  TopoDS_Shape shape;
  [[nodiscard]] Flux flux() const {
    return std::accumulate(faces.begin(), faces.end(), Flux{},
                           [](Flux sum, const ReadFace& face) { return sum + face.flux; });
  }
};

// How far an edge lies off its face's surface.
double width_of_strip(const FaceSurface& surface, const EdgeCurve& edge) {
  constexpr int kSteps = 8;
  double off = 0.0;
  for (int i = 0; i <= kSteps; ++i) {
    const double s = static_cast<double>(i) / kSteps;
    off = std::max(off, off_surface(surface, i == 0        ? edge.from
                                             : i == kSteps ? edge.to
                                                           : point_along(edge, s).at));
  }
  return off;
}

// How far the lines and circles that bound a plain face lie off it. Other curves are drawn to meet
// two faces nearly, in a sound file too.
double edges_off(const ReadFace& face) {
  double off = 0.0;
  if (face.surface.kind != FaceSurface::Kind::other) {
    for (const EdgeCurve& edge : face.edges) {
      if (edge.kind != EdgeCurve::Kind::other) {
        off = std::max(off, width_of_strip(face.surface, edge) - face.surface.deviation);
      }
    }
  }
  return off;
}

// How far lines and circles end off the vertices that they name.
double ends_off(const ReadFace& face) {
  double off = 0.0;
  for (const EdgeCurve& edge : face.edges) {
    if (edge.kind != EdgeCurve::Kind::other) {
      off = std::max({off, norm(edge.from - edge.from_vertex), norm(edge.to - edge.to_vertex)});
    }
  }
  return off;
}

ReadFace read_face(const TopoDS_Face& face, double within) {
  ReadFace result;
  result.surface = face_surface(face, within);
  for (TopExp_Explorer wire(face, TopAbs_WIRE); wire.More(); wire.Next()) {
    result.loops.push_back(result.edges.size());
    add_edges(wire.Current(), result.edges);
  }
  if (result.surface.kind == FaceSurface::Kind::other) {
    result.box = box_of_free_form(face, result.edges);
    result.worn = worn_surface(face);
    result.surface.side = Side::external;
    result.slopes = slopes_of(BRepAdaptor_Surface(face, Standard_False));
    if (face.Orientation() == TopAbs_REVERSED) {
      for (SurfaceSlope& slope : result.slopes) {
        std::swap(slope.u, slope.v);
      }
    }
  }
  return result;
}

void settle(std::vector<ReadShell>& shells, std::vector<OpenShare>& open) {
  const auto put = [&](const OpenShare& share) {
    shells[share.shell].faces[share.face].flux = share.flux.flux();
  };
  Flux whole;
  double unsettled = 0.0;
  std::size_t effort = 0;
  for (const OpenShare& share : open) {
    put(share);
    unsettled += share.flux.open_error();
    effort += share.flux.effort();
  }
  for (const ReadShell& shell : shells) {
    const Flux flux = shell.flux();
    whole = whole + Flux{std::abs(flux.value), flux.error};
  }
  const auto worse = [&](std::size_t a, std::size_t b) {
    return open[a].flux.worst() < open[b].flux.worst();
  };
  std::vector<std::size_t> order(open.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::make_heap(order.begin(), order.end(), worse);
  const std::size_t most = effort + kEffort * open.size();
  while (!order.empty() && unsettled > kVolumeShare * std::abs(whole.value) && effort < most) {
    std::pop_heap(order.begin(), order.end(), worse);
    stop_if_asked();
    FreeFormFlux& worst = open[order.back()].flux;
    if (worst.worst() == 0.0) {
      break;
    }
    unsettled -= worst.open_error();
    effort -= worst.effort();
    worst.refine();
    unsettled += worst.open_error();
    effort += worst.effort();
    std::push_heap(order.begin(), order.end(), worse);
  }
  std::for_each(open.begin(), open.end(), put);
}

void measure_faces(const std::vector<TopoDS_Face>& faces, Point origin, std::size_t shell,
                   std::vector<ReadFace>& read, std::vector<OpenShare>& open) {
  for (std::size_t i = 0; i < faces.size(); ++i) {
    stop_if_asked();
    ReadFace& face = read[i];
    if (const auto plain = face_flux(face.surface, face.edges, origin)) {
      face.flux = *plain;
      face.flux.error += 3.0 * face.surface.deviation * std::abs(area_by_normal(face));
      for (const EdgeCurve& edge : face.edges) {
        face.flux.error += strip_flux(edge, width_of_strip(face.surface, edge), origin);
        face.flux.error += gap_flux(edge, origin);
      }
    } else {
      open.push_back({shell, i, FreeFormFlux(faces[i], face.edges, origin)});
    }
  }
}

std::vector<ReadShell> read_shells(const TopoDS_Shape& solid, Point origin, Product& product,
                                   Remarks& remarks) {
  std::vector<ReadShell> shells;
  std::vector<OpenShare> open;
  for (TopExp_Explorer it(solid, TopAbs_SHELL); it.More(); it.Next()) {
    product.closed = product.closed && BRep_Tool::IsClosed(it.Current());
    std::vector<TopoDS_Face> faces;
    ReadShell shell;
    shell.shape = it.Current();
    for (TopExp_Explorer each(it.Current(), TopAbs_FACE); each.More(); each.Next()) {
      stop_if_asked();
      faces.push_back(TopoDS::Face(each.Current()));
      shell.faces.push_back(read_face(faces.back(), product.uncertainty));
      remarks.ends_off = std::max(remarks.ends_off, ends_off(shell.faces.back()));
      remarks.edges_off = std::max(remarks.edges_off, edges_off(shell.faces.back()));
    }
    remarks.turned_loops += settle_loops(shell.faces);
    measure_faces(faces, origin, shells.size(), shell.faces, open);
    shells.push_back(std::move(shell));
  }
  settle(shells, open);
  for (ReadShell& shell : shells) {
    shell.facing = shell_facing(shell.faces);
  }
  return shells;
}

// Adds each modelled thread as a cylinder of its crests; tells which faces stand for it no more.
std::vector<bool> add_threads(const std::vector<ReadFace>& faces, Product& product,
                              Remarks& remarks) {
  std::vector<bool> threaded(faces.size(), false);
  for (const ModelledThread& thread : modelled_threads(faces)) {
    ++remarks.threads;
    const ReadFace crest = crest_face(thread);
    add_face(product, crest.surface, crest.edges);
    for (const std::size_t i : thread.faces) {
      threaded[i] = true;
    }
  }
  return threaded;
}

// Whether a corner of the void lies outside the box of the shell that should enclose it.
bool reaches_out(const ReadShell& hollow, const ReadShell& outer, double within) {
  const Box box = grown(box_of_shape(outer.shape), within);
  const auto is_out = [&](const EdgeCurve& edge) {
    return !overlap(box, Box{edge.from, edge.from});
  };
  return std::any_of(hollow.faces.begin(), hollow.faces.end(), [&](const ReadFace& face) {
    return std::any_of(face.edges.begin(), face.edges.end(), is_out);
  });
}

// What a solid's faces enclose, and the sum of what each adds to it.
struct Enclosing {
  Flux flux;
  double shares = 0.0;
};

void add_faces(ReadShell& shell, Product& product, Remarks& remarks, Enclosing& enclosing) {
  const std::vector<bool> threaded = add_threads(shell.faces, product, remarks);
  for (std::size_t i = 0; i < shell.faces.size(); ++i) {
    const ReadFace& face = shell.faces[i];
    enclosing.flux = enclosing.flux + face.flux;
    enclosing.shares += std::abs(face.flux.value);
    ++product.faces;
    if (threaded[i]) {
      continue;
    }
    if (face.surface.kind == FaceSurface::Kind::other) {
      ++remarks.free_form_faces;
      OtherFace other;
      other.box = face.box;
      other.sized = face.worn.has_value();
      product.others.push_back(other);
      if (face.worn) {
        add_worn(product, *face.worn, face.edges);
      }
    }
    add_face(product, face.surface, face.edges);
  }
}

// A file may hold a shell inside out, whichever it is: the largest encloses the solid and its faces
// look out, all others enclose voids and look in.
void add_solid(const TopoDS_Shape& solid, Point origin, Product& product, Remarks& remarks) {
  std::vector<ReadShell> shells = read_shells(solid, origin, product, remarks);
  const auto outer =
      std::max_element(shells.begin(), shells.end(), [](const ReadShell& a, const ReadShell& b) {
        return std::abs(a.flux().value) < std::abs(b.flux().value);
      });
  Enclosing enclosing;
  for (auto shell = shells.begin(); shell != shells.end(); ++shell) {
    const int wanted = shell == outer ? 1 : -1;
    if (shell != outer && reaches_out(*shell, *outer, product.uncertainty)) {
      ++remarks.stray_voids;
    }
    if (shell->facing != wanted) {
      std::for_each(shell->faces.begin(), shell->faces.end(), turn_over);
    }
    add_faces(*shell, product, remarks, enclosing);
  }
  const double volume = enclosing.flux.value / 3.0;
  const double error = (enclosing.flux.error + kRounding * enclosing.shares) / 3.0;
  product.volume += volume;
  product.volume_error += error;
  if (shells.empty()) {
    ++remarks.bare_solids;
    product.closed = false;
  } else if (!(volume > error)) {
    ++remarks.flat_solids;
  }
}

// More digits of a bound say nothing, and would change with the last digits of a file.
double two_digits_up(double bound) {
  const double unit = bound > 0.0 ? std::pow(10.0, std::floor(std::log10(bound)) - 1.0) : 0.0;
  return unit > 0.0 ? std::ceil(bound / unit) * unit : bound;
}

}  // namespace

void leave_unmeasured(const TopoDS_Shape& shape, Product& product) {
  for (TopExp_Explorer it(shape, TopAbs_SOLID); it.More(); it.Next()) {
    ++product.solids;
  }
  const Box box = box_of_shape(shape);
  if (!is_empty(box)) {
    product.volume_error =
        (box.high.x - box.low.x) * (box.high.y - box.low.y) * (box.high.z - box.low.z);
  }
}

Remarks analyse_shape(const TopoDS_Shape& shape, Product& product) {
  Remarks remarks;
  for (TopExp_Explorer it(shape, TopAbs_SOLID); it.More(); it.Next()) {
    ++product.solids;
    // Near the solid, so that neither digits nor the strips along edges count more than they must.
    add_solid(it.Current(), middle_of_corners(it.Current()), product, remarks);
  }
  product.volume_error = two_digits_up(product.volume_error);
  product.unsound = unsound(product, remarks);
  finish_features(product);
  divide_cylinders(product);
  find_widths(product);
  name_features(product);
  return remarks;
}

}  // namespace spotblue
