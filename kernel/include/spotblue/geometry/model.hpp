#pragma once
/// @file
/// What is known of a model once it has been read: products analysed once each, their features
/// of size and bounding faces as plain values, and where each product occurs.

#include <cstddef>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/geometry/ids.hpp"
#include "spotblue/geometry/region.hpp"
#include "spotblue/geometry/semantic_size.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {

/// On which side of the surface the material is: internal = hole (air inside), external = shaft.
enum class Side { internal, external };
constexpr auto describe(const Side*) {
  return words("Whether a feature is a hole or slot, or a shaft or key.", "internal", "external");
}

/// What kind of surface a feature was read from in the file.
enum class SurfaceSource { cylinder, cone, plane, bspline, revolution, extrusion };
constexpr auto describe(const SurfaceSource*) {
  return words("The surface in the file that a feature was recognised from.", "cylinder", "cone",
               "plane", "bspline", "revolution", "extrusion");
}

struct Arc {
  double from = 0.0;
  double sweep = 0.0;
};
constexpr void describe(auto& fields, const Arc*) {
  fields.value("Arc", "A stretch of angles about an axis, counter-clockwise seen against `along`.")
      .degrees("start_deg", &Arc::from, "from the feature's zero direction")
      .degrees("sweep_deg", &Arc::sweep, "over 0, up to 360");
}

struct Patch {
  double from = 0.0;
  double to = 0.0;
  std::vector<Arc> arcs;
};
constexpr void describe(auto& fields, const Patch*) {
  fields
      .value("Patch",
             "One piece of a surface of revolution: a stretch along the axis and the angles it "
             "covers.")
      .member("start_mm", &Patch::from, "station on the feature's axis")
      .member("end_mm", &Patch::to, "station on the feature's axis, past the start")
      .member("arcs", &Patch::arcs, "the angles it covers");
}

struct DiameterAt {
  double at = 0.0;
  double least = 0.0, greatest = 0.0;
  bool operator==(const DiameterAt&) const = default;
};
constexpr void describe(auto& fields, const DiameterAt*) {
  fields.value("DiameterAt", "What a worn cylinder measures at one station.")
      .member("at_mm", &DiameterAt::at, "station on the feature's axis")
      .member("least_mm", &DiameterAt::least, "diameter, of all directions across")
      .member("greatest_mm", &DiameterAt::greatest, "diameter, of all directions across");
}

struct Cylinder {
  std::string name;
  Side side = Side::internal;
  Line axis;
  Direction zero{1, 0, 0};
  double diameter = 0.0;
  std::vector<DiameterAt> sizes{};
  std::vector<Patch> patches;
  std::vector<Interval> intervals;
  double coverage = 0.0;
  SurfaceSource source = SurfaceSource::cylinder;
  double deviation = 0.0;
  std::string sized_name{};
  std::vector<std::string> given{};
};
constexpr void describe(auto& fields, const Cylinder*) {
  fields
      .value("Cylinder",
             "A cylindrical hole or shaft of one product; all faces on the same surface and side "
             "are one. One that is worn is tapered by half a degree or less, bell-mouthed or oval.")
      .member("name", &Cylinder::name,
              "the file's own, \"journal\", else \"bore\", \"outside 3\"; the feature's id is "
              "\"<product>: <name>\"")
      .member("side", &Cylinder::side, "internal: a hole; external: a shaft")
      .member("diameter_mm", &Cylinder::diameter,
              "of a worn one the mean of the least and the greatest")
      .range(kOver0)
      .member("sizes", &Cylinder::sizes,
              "of a worn one by station, ascending, even between; else none")
      .member("axis", &Cylinder::axis,
              "in the product's frame; its direction has its largest component positive")
      .member("zero", &Cylinder::zero, "direction square to the axis where angles start, 1 long")
      .member("patches", &Cylinder::patches, "its pieces")
      .member("intervals_mm", &Cylinder::intervals,
              "stretches along the axis that have any surface, from axis.at, merged, ascending")
      .degrees("coverage_deg", &Cylinder::coverage,
               "angles covered by all patches together, up to 360")
      .range({0.0, 360})
      .member("recognised_from", &Cylinder::source, "surface in the file")
      .member("deviation_mm", &Cylinder::deviation,
              "how far the file's free-form faces lie off it at most")
      .range(kFrom0)
      .member("sized_name", &Cylinder::sized_name,
              "by size and place: \"bore 44\", \"outside 30 @ 12\"")
      .member("given", &Cylinder::given, "what the file calls its faces, in order of the letters");
}

struct Cone {
  std::string name;
  Side side = Side::internal;
  Line axis;
  Direction zero{1, 0, 0};
  double radius = 0.0;
  double half_angle = 0.0;
  std::vector<Patch> patches;
  std::vector<Interval> intervals;
  double coverage = 0.0;
  SurfaceSource source = SurfaceSource::cone;
  double deviation = 0.0;
  std::string sized_name{};
  std::vector<std::string> given{};
};
constexpr void describe(auto& fields, const Cone*) {
  fields.value("Cone", "A conical hole or shaft of one product.")
      .member("name", &Cone::name, "the file's own, else \"taper\", \"taper bore 2\"")
      .member("side", &Cone::side, "internal: a hole; external: a shaft")
      .member("axis", &Cone::axis, "in the product's frame; the radius grows along it")
      .member("zero", &Cone::zero, "direction square to the axis where angles start, 1 long")
      .member("patches", &Cone::patches, "its pieces")
      .member("radius_mm", &Cone::radius, "at axis.at; 0 in the apex")
      .degrees("half_angle_deg", &Cone::half_angle, "between axis and generator, more than 0")
      .member("intervals_mm", &Cone::intervals,
              "stretches along the axis that have any surface, from axis.at, merged, ascending")
      .degrees("coverage_deg", &Cone::coverage, "angles covered by all patches together, up to 360")
      .range({0.0, 360})
      .member("recognised_from", &Cone::source, "surface in the file")
      .member("deviation_mm", &Cone::deviation,
              "how far the file's free-form faces lie off it at most")
      .range(kFrom0)
      .member("sized_name", &Cone::sized_name, "by size and place: \"taper bore 20/24\"")
      .member("given", &Cone::given, "what the file calls its faces, in order of the letters");
}

struct Plane {
  std::string name;
  Point at;
  Direction normal;
  Direction u{1, 0, 0};
  Region outline;
  SurfaceSource source = SurfaceSource::plane;
  double deviation = 0.0;
  std::string sized_name{};
  std::vector<std::string> given{};
};
constexpr void describe(auto& fields, const Plane*) {
  fields
      .value("Plane",
             "A plane face of one product; faces on one plane with one normal are one feature.")
      .member("name", &Plane::name, "the file's own, \"journal start\", else \"face 3\"")
      .member("at", &Plane::at, "a point on it, product's frame, mm")
      .member("normal", &Plane::normal, "out of the material, 1 long")
      .member("u", &Plane::u, "the first axis of its outline; the second is normal x u")
      .derived(
          "area_mm2", [](const Plane& plane) { return area(plane.outline); }, "of the outline")
      .member("outline", &Plane::outline, "in (u, v) from at")
      .member("recognised_from", &Plane::source, "surface in the file")
      .member("deviation_mm", &Plane::deviation,
              "how far the file's free-form faces lie off it at most")
      .member("sized_name", &Plane::sized_name, "by size and place: \"face 60 @ 8\"")
      .member("given", &Plane::given, "what the file calls its faces, in order of the letters");
}

struct Width {
  std::string name;
  Side side = Side::internal;
  std::size_t first = 0, second = 0;
  double width = 0.0;
  std::string sized_name{};
  std::vector<std::string> given{};
};
constexpr void describe(auto& fields, const Width*) {
  fields
      .value("Width",
             "Two opposite parallel planes with a size: a slot or keyseat; a key, tongue or flat.")
      .member("name", &Width::name,
              "the file's own, else \"keyseat\", \"slot 2\", \"key\", \"width\"")
      .member("side", &Width::side, "internal: a slot; external: a key")
      .member("first", &Width::first, "number of a plane of the product, from 0")
      .member("second", &Width::second, "number of the other one")
      .member("width_mm", &Width::width, "between its planes")
      .range(kOver0)
      .member("sized_name", &Width::sized_name, "by size and place: \"slot 8\", \"width 8\"")
      .member("given", &Width::given, "what the file calls its faces, in order of the letters");
}

struct RingPiece {
  double inner = 0.0, outer = 0.0;
  double from = 0.0, to = 0.0;
};
constexpr void describe(auto& fields, const RingPiece*) {
  fields.value("RingPiece", "A ring about an axis.")
      .member("inner_radius_mm", &RingPiece::inner, "mm")
      .member("outer_radius_mm", &RingPiece::outer, "mm")
      .member("start_mm", &RingPiece::from, "station on the axis")
      .member("end_mm", &RingPiece::to, "station on the axis");
}

struct OtherFace {
  Box box;
  bool revolved = false;
  Line axis;
  double inner = 0.0, outer = 0.0;
  double from = 0.0, to = 0.0;
  std::vector<RingPiece> pieces{};
  bool sized = false;
};
constexpr void describe(auto& fields, const OtherFace*) {
  fields.value("OtherFace", "A face that is no feature, kept as what bounds it.")
      .member("box", &OtherFace::box, "in the product's frame; the face may be smaller")
      .member("sized", &OtherFace::sized, "a worn cylinder of the product tells what it measures")
      .member("revolved", &OtherFace::revolved,
              "whether the ring below holds it: of tori, spheres and other surfaces of revolution")
      .member("axis", &OtherFace::axis, "of the ring, product's frame")
      .member("inner_radius_mm", &OtherFace::inner, "from the axis")
      .member("outer_radius_mm", &OtherFace::outer, "from the axis")
      .member("start_mm", &OtherFace::from, "station on the axis")
      .member("end_mm", &OtherFace::to, "station on the axis")
      .member("pieces", &OtherFace::pieces,
              "smaller rings that hold all of a fillet between them; none: it may be anywhere in "
              "its ring");
}

struct Product {
  std::string id;
  std::string name;
  std::string part;
  std::optional<int> body;
  std::string body_name;
  int solids = 0;
  int faces = 0;
  double volume = 0.0;
  double volume_error = 0.0;
  double uncertainty = 1e-6;
  bool closed = true;
  std::string unsound;
  Point drawn_at;
  Box box;
  std::vector<Cylinder> cylinders;
  std::vector<Cone> cones;
  std::vector<Plane> planes;
  std::vector<Width> widths;
  std::vector<OtherFace> others;
};
constexpr void describe(auto& fields, const Product*) {
  fields
      .value("Product",
             "A part, analysed once however often it occurs; of a part with several solids each "
             "of them, a body, since bodies are set against each other as parts are.")
      .member("id", &Product::id,
              "unique in the model: the name, or \"name (2)\" where names repeat; of a body "
              "\"name#2\"")
      .member("name", &Product::name, "as the file says; \"Part 3\" when the file gives none")
      .member("part", &Product::part,
              "of a body the id of its part: \"Pin\" of \"Pin#2\"; else empty")
      .member("body", &Product::body,
              "which of its part's solids, from 1; None when the part has no other")
      .member("body_name", &Product::body_name,
              "what the file calls the solid; empty when it says nothing")
      .member("solids", &Product::solids,
              "number of solids: 1, unless the model is made of plain values")
      .range(kFrom0)
      .member("faces", &Product::faces, "number of faces")
      .member("volume_mm3", &Product::volume, "of all its solids")
      .member("volume_error_mm3", &Product::volume_error,
              "how far off the volume may be, by the integration of free-form faces and by edges "
              "that lie off their surfaces; of plain faces only what adding them up loses")
      .range(kFrom0)
      .member("uncertainty_mm", &Product::uncertainty,
              "surfaces that lie nearer to one another are one; what the file states, from 1e-6 to "
              "1e-5")
      .member("closed", &Product::closed, "every shell of every solid closed")
      .member("unsound", &Product::unsound,
              "why nothing measured on it can be relied on: an open shell, faces that lie off "
              "their own edges, a void that reaches out of its solid, no volume; empty where none "
              "of these is found")
      .member("drawn_at", &Product::drawn_at,
              "where the product frame's origin lies in the part as the file draws it, mm: in its "
              "middle, to whole mm, for a part drawn more than 10 m off, since digits are lost out "
              "there; else at the part's own origin")
      .member("box", &Product::box, "in the product's frame; the part may be smaller")
      .member("cylinders", &Product::cylinders, "holes and shafts")
      .member("cones", &Product::cones, "tapers")
      .member("planes", &Product::planes, "flat faces")
      .member("widths", &Product::widths, "slots and keys")
      .member("others", &Product::others, "faces that are no feature");
}

struct Occurrence {
  std::string id;
  std::string path;
  ProductId product{};
  Frame frame;
  bool mirrored = false;
  Box box;
};
constexpr void describe(auto& fields, const Occurrence*) {
  fields.value("Occurrence", "A product placed in the assembly.")
      .member("id", &Occurrence::id,
              "unique in the model: the path below the one root, \"Back shaft/Wheel\", or all of "
              "it where there are several roots; numbered, \"Wheel (2)\", where such paths repeat")
      .member("path", &Occurrence::path, "\"Press/Back shaft/Wheel\": names from the root down")
      .member("product", &Occurrence::product, "number of its product, from 0")
      .member("frame", &Occurrence::frame,
              "three rows of rotation and shift, product frame to assembly frame, mm")
      .member("mirrored", &Occurrence::mirrored, "placed as its mirror image")
      .member("box", &Occurrence::box, "in the assembly's frame");
}

struct FileInfo {
  std::string name;
  std::string sha256;
  std::string protocol;
  std::string unit;
  std::vector<std::string> files;
};
constexpr void describe(auto& fields, const FileInfo*) {
  fields.value("FileInfo", "The file that was read.")
      .member("name", &FileInfo::name, "as the caller gave it")
      .member("sha256", &FileInfo::sha256, "of its bytes, lower-case hex")
      .member("protocol", &FileInfo::protocol,
              "AP203, AP214 or AP242; brep or xbf for Open CASCADE's own files")
      .member("unit", &FileInfo::unit,
              "of length, as the file is written: \"mm\", \"inch\", \"metre\", ...")
      .member("files", &FileInfo::files, "all that were read for it, itself first, as shown");
}

struct Note {
  std::string about;
  std::string text;
};
constexpr void describe(auto& fields, const Note*) {
  fields.value("Note", "A remark a reader of the result must know.")
      .member("about", &Note::about, "part or file")
      .member("text", &Note::text, "the remark");
}

class ShapeStore;  ///< the solids themselves, loaded only when a boolean needs them

struct Model {
  FileInfo file;
  List<Product> products;
  List<Occurrence> occurrences;
  std::vector<Note> notes;
  std::vector<Note> not_compared;
  std::vector<SemanticSize> semantic_sizes;
  std::shared_ptr<const ShapeStore> shapes;  ///< null for models made of plain values
};
constexpr void describe(auto& fields, const Model*) {
  fields.value("Model", "What is known of a model's file once read.")
      .member("file", &Model::file, "the file")
      .member("products", &Model::products, "parts")
      .member("occurrences", &Model::occurrences, "where they are")
      .member("notes", &Model::notes, "remarks of the reading")
      .member("not_compared", &Model::not_compared,
              "what is set against nothing: faces that bound no solid, and of a partial model what "
              "is missing; also among the notes")
      .member("semantic_sizes", &Model::semantic_sizes,
              "toleranced sizes the file states on faces, sound or not, in the order of their "
              "entities")
      .held(&Model::shapes);
}

}  // namespace spotblue
