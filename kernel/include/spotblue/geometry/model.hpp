#pragma once
/// @file
/// What is known of a model once it has been read: products analysed once each, their features
/// of size and bounding faces as plain values, and where each product occurs.

#include <cstddef>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "spotblue/geometry/ids.hpp"
#include "spotblue/geometry/region.hpp"
#include "spotblue/geometry/semantic_size.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {

/// On which side of the surface the material is: internal = hole (air inside), external = shaft.
enum class Side { internal, external };

/// What kind of surface a feature was read from in the file.
enum class SurfaceSource { cylinder, cone, plane, bspline, revolution, extrusion };

/// A stretch of angles about an axis, rad, counter-clockwise seen against `along`, 0 < sweep <= 2
/// pi.
struct Arc {
  double from = 0.0;
  double sweep = 0.0;
};

/// One piece of a surface of revolution: a stretch along the axis and the angles it covers.
struct Patch {
  double from = 0.0;  ///< station on the feature's axis, mm
  double to = 0.0;    ///< > from
  std::vector<Arc> arcs;
};

/// What a worn cylinder measures at one station, mm.
struct DiameterAt {
  double at = 0.0;                     ///< station on the feature's axis
  double least = 0.0, greatest = 0.0;  ///< of all directions across
  bool operator==(const DiameterAt&) const = default;
};

/// A cylinder of one product; all faces on the same surface and side are one feature.
///
/// One that is worn is tapered by half a degree or less, bell-mouthed or oval: `sizes` then tells
/// how, and `diameter` is the mean of the least and the greatest.
struct Cylinder {
  std::string name;  ///< "bore 44", "outside 30 @ 12"; the feature's id is "<product>: <name>"
  Side side = Side::internal;
  Line axis;                        ///< product frame; `along` has its largest component positive
  Direction zero;                   ///< unit, square to axis.along: where angles start
  double diameter = 0.0;            ///< mm
  std::vector<DiameterAt> sizes{};  ///< of a worn one, ascending, even between; else none
  std::vector<Patch> patches;
  /// Stretches along the axis that have any surface, merged, ascending; stations on axis, mm.
  std::vector<std::pair<double, double>> intervals;
  double coverage = 0.0;  ///< angles covered by all patches together, rad, up to 2 pi
  SurfaceSource source = SurfaceSource::cylinder;
  double deviation = 0.0;  ///< mm: how far the file's free-form faces lie off it at most
};

/// A cone of one product.
struct Cone {
  std::string name;  ///< "taper bore 20/24"
  Side side = Side::internal;
  Line axis;  ///< product frame; radius grows along axis.along
  Direction zero;
  double radius = 0.0;      ///< at axis.at, mm (may be 0: apex)
  double half_angle = 0.0;  ///< rad, > 0, between axis and generator
  std::vector<Patch> patches;
  std::vector<std::pair<double, double>> intervals;
  double coverage = 0.0;
  SurfaceSource source = SurfaceSource::cone;
  double deviation = 0.0;  ///< mm, as of a cylinder
};

/// A plane face of one product (faces on one plane with one normal are one feature).
struct Plane {
  std::string name;  ///< "face 60 @ 8"
  Point at;          ///< product frame
  Direction normal;  ///< unit, out of the material
  Direction u;       ///< unit, in the plane; v = normal x u
  Region outline;    ///< in (u, v) from `at`
  SurfaceSource source = SurfaceSource::plane;
  double deviation = 0.0;  ///< mm, as of a cylinder
};

/// Two opposite parallel planes with a size: a slot or keyseat (internal), a key, tongue or flat
/// (external).
struct Width {
  std::string name;  ///< "slot 8", "width 8"
  Side side = Side::internal;
  std::size_t first = 0, second = 0;  ///< indexes into Product::planes
  double width = 0.0;                 ///< mm
};

/// A ring about an axis by its radii and stations, mm.
struct RingPiece {
  double inner = 0.0, outer = 0.0;
  double from = 0.0, to = 0.0;
};

/// Any other face, kept as what bounds it.
struct OtherFace {
  Box box;  ///< product frame, conservative
  /// Set for tori and spheres and other surfaces of revolution: the face lies in this ring.
  bool revolved = false;
  Line axis;
  double inner = 0.0, outer = 0.0;  ///< radii from the axis, mm
  double from = 0.0, to = 0.0;      ///< stations on the axis, mm
  /// Smaller rings that hold all of a fillet between them; none: it may be anywhere in its ring.
  std::vector<RingPiece> pieces{};
  bool sized = false;  ///< a worn cylinder of the product tells what it measures
};

/// A part, analysed once however often it occurs; of a part with several solids each of them, a
/// body, since bodies are set against each other as parts are.
struct Product {
  /// Unique in the model: the name, or "name (2)" where names repeat; of a body "name#2".
  std::string id;
  std::string name;       ///< as the file says; "Part 3" when the file gives none
  std::string part;       ///< of a body the id of its part: "Pin" of "Pin#2"; else empty
  int body = 0;           ///< which of its part's solids, from 1; 0 when the part has no other
  std::string body_name;  ///< what the file calls a body; empty when it says nothing
  int solids = 0;         ///< 1, unless the model is made of plain values
  int faces = 0;
  double volume = 0.0;  ///< mm3, of all its solids
  /// mm3: how far off `volume` may be, by the integration of free-form faces and by edges that lie
  /// off their surfaces; of plain faces only what adding them up loses.
  double volume_error = 0.0;
  /// mm: surfaces that lie nearer to one another are one. What the file states, from 1e-6 to 1e-5.
  double uncertainty = 1e-6;
  bool closed = true;  ///< every shell of every solid closed
  /// Why nothing measured on it can be relied on: an open shell, faces that lie off their own
  /// edges, a void that reaches out of its solid, no volume; empty where none of these is found.
  std::string unsound;
  /// Where the product frame's origin lies in the part as the file draws it, mm: in its middle, to
  /// whole mm, for a part drawn more than 10 m off, since digits are lost out there; else nowhere
  /// but at the part's own origin, {0, 0, 0}.
  Point drawn_at;
  Box box;  ///< product frame, conservative
  std::vector<Cylinder> cylinders;
  std::vector<Cone> cones;
  std::vector<Plane> planes;
  std::vector<Width> widths;
  std::vector<OtherFace> others;
};

/// A product placed in the assembly.
struct Occurrence {
  std::string id;    ///< the path, or "path (2)" where paths repeat
  std::string path;  ///< "Press/Back shaft/Wheel": names from the root down
  ProductId product{};
  Frame frame;  ///< product frame to assembly frame
  bool mirrored = false;
  Box box;  ///< assembly frame
};

struct FileInfo {
  std::string name;      ///< as the caller gave it
  std::string sha256;    ///< of the bytes, lower-case hex
  std::string protocol;  ///< "AP203", "AP214", "AP242", "brep", "xbf"
  std::string unit;      ///< length unit the file is written in: "mm", "inch", "metre", ...
  std::vector<std::string> files;  ///< all that were read for it, itself first, as shown_name
};

/// A remark a reader of the result must know.
struct Note {
  std::string about;
  std::string text;
};

class ShapeStore;  ///< the solids themselves, loaded only when a boolean needs them

struct Model {
  FileInfo file;
  List<Product> products;
  List<Occurrence> occurrences;
  std::vector<Note> notes;
  /// What is set against nothing: faces that bound no solid, and of a partial model what is
  /// missing. Also among the notes.
  std::vector<Note> not_compared;
  /// Toleranced sizes the file states on faces, sound or not, in the order of their entities.
  std::vector<SemanticSize> semantic_sizes;
  std::shared_ptr<const ShapeStore> shapes;  ///< null for models made of plain values
};

}  // namespace spotblue
