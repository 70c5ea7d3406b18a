#include <pybind11/stl/filesystem.h>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/view.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::python {
namespace {

void bind_pieces(py::module_& module) {
  View<Arc>(module, "Arc", "A stretch of angles about an axis, counter-clockwise seen against it.")
      .degrees("start_deg", &Arc::from, "from the feature's zero direction")
      .degrees("sweep_deg", &Arc::sweep, "over 0, up to 360")
      .done();
  View<Patch>(module, "Patch", "One piece of a surface of revolution.")
      .value("start_mm", &Patch::from, "station on the feature's axis")
      .value("end_mm", &Patch::to, "station on the feature's axis")
      .value("arcs", &Patch::arcs, "the angles it covers")
      .done();
  View<RingPiece>(module, "RingPiece", "A ring about an axis.")
      .value("inner_radius_mm", &RingPiece::inner, "mm")
      .value("outer_radius_mm", &RingPiece::outer, "mm")
      .value("start_mm", &RingPiece::from, "station on the axis")
      .value("end_mm", &RingPiece::to, "station on the axis")
      .done();
  View<OtherFace>(module, "OtherFace", "A face that is no feature, kept as what bounds it.")
      .value("box", &OtherFace::box, "in the product's frame")
      .value("sized", &OtherFace::sized, "a worn cylinder tells what it measures")
      .value("revolved", &OtherFace::revolved, "whether the ring below holds it")
      .value("axis", &OtherFace::axis, "of the ring, product's frame")
      .value("inner_radius_mm", &OtherFace::inner, "mm")
      .value("outer_radius_mm", &OtherFace::outer, "mm")
      .value("start_mm", &OtherFace::from, "station on the axis")
      .value("end_mm", &OtherFace::to, "station on the axis")
      .value("pieces", &OtherFace::pieces, "smaller rings that hold all of a fillet")
      .done();
}

void bind_features(py::module_& module) {
  View<DiameterAt>(module, "DiameterAt", "What a worn cylinder measures at one station.")
      .value("at_mm", &DiameterAt::at, "station on the feature's axis")
      .value("least_mm", &DiameterAt::least, "diameter, of all directions across")
      .value("greatest_mm", &DiameterAt::greatest, "diameter, of all directions across")
      .done();
  View<Cylinder>(module, "Cylinder", "A cylindrical hole or shaft of one product.")
      .value("name", &Cylinder::name, "\"bore 44\", \"outside 30 @ 12\"")
      .value("side", &Cylinder::side, "internal: a hole; external: a shaft")
      .value("diameter_mm", &Cylinder::diameter, "mm; of a worn one the mean")
      .value("sizes", &Cylinder::sizes, "of a worn one by station; else none")
      .value("axis", &Cylinder::axis, "in the product's frame")
      .value("zero", &Cylinder::zero, "direction square to the axis where angles start")
      .value("patches", &Cylinder::patches, "its pieces")
      .value("intervals_mm", &Cylinder::intervals, "stretches of the axis that have surface")
      .degrees("coverage_deg", &Cylinder::coverage, "angles covered, up to 360")
      .value("recognised_from", &Cylinder::source, "surface in the file")
      .value("deviation_mm", &Cylinder::deviation, "how far that lies off this one")
      .done();
  View<Cone>(module, "Cone", "A conical hole or shaft of one product.")
      .value("name", &Cone::name, "\"taper bore 20/24\"")
      .value("side", &Cone::side, "internal: a hole; external: a shaft")
      .value("axis", &Cone::axis, "in the product's frame; the radius grows along it")
      .value("zero", &Cone::zero, "direction square to the axis where angles start")
      .value("patches", &Cone::patches, "its pieces")
      .value("radius_mm", &Cone::radius, "at axis.at")
      .degrees("half_angle_deg", &Cone::half_angle, "between axis and surface")
      .value("intervals_mm", &Cone::intervals, "stretches of the axis that have surface")
      .degrees("coverage_deg", &Cone::coverage, "angles covered, up to 360")
      .value("recognised_from", &Cone::source, "surface in the file")
      .value("deviation_mm", &Cone::deviation, "how far that lies off this one")
      .done();
  View<Plane>(module, "Plane", "A plane face of one product.")
      .value("name", &Plane::name, "\"face 60 @ 8\"")
      .value("at", &Plane::at, "a point on it, product's frame, mm")
      .value("normal", &Plane::normal, "out of the material")
      .value("u", &Plane::u, "the first axis of its outline; the second is normal x u")
      .computed(
          "area_mm2", [](const Plane& plane) { return area(plane.outline); }, "mm2")
      .value("outline", &Plane::outline, "in (u, v) from at")
      .value("recognised_from", &Plane::source, "surface in the file")
      .value("deviation_mm", &Plane::deviation, "how far that lies off this one")
      .done();
  View<Width>(module, "Width", "A slot or key: two opposite parallel planes.")
      .value("name", &Width::name, "\"slot 8\", \"width 8\"")
      .value("side", &Width::side, "internal: a slot; external: a key")
      .value("first", &Width::first, "number of a plane of the product, from 0")
      .value("second", &Width::second, "number of the other one")
      .value("width_mm", &Width::width, "mm")
      .done();
}

std::string product_shown(const Product& product) {
  return "<Product " + product.id + ": " + std::to_string(product.cylinders.size()) +
         " cylinders, " + std::to_string(product.cones.size()) + " cones, " +
         std::to_string(product.planes.size()) + " planes, " +
         std::to_string(product.widths.size()) + " widths>";
}

std::string model_shown(const Model& model) {
  return "<Model of " + model.file.name + ": " + std::to_string(model.products.size()) +
         " products, " + std::to_string(model.occurrences.size()) + " occurrences>";
}

void bind_products(py::module_& module) {
  View<Product>(module, "Product", "A part, analysed once however often it occurs.")
      .value("id", &Product::id, "unique in the model")
      .value("name", &Product::name, "as the file says")
      .value("part", &Product::part, "of a body the id of its part, else empty")
      .value("body", &Product::body, "which of its part's solids, from 1; 0 for the only one")
      .value("body_name", &Product::body_name, "what the file calls the solid")
      .value("solids", &Product::solids, "number of solids")
      .value("faces", &Product::faces, "number of faces")
      .value("volume_mm3", &Product::volume, "of all its solids")
      .value("volume_error_mm3", &Product::volume_error, "how far off the volume may be")
      .value("uncertainty_mm", &Product::uncertainty, "surfaces that lie nearer are one")
      .value("closed", &Product::closed, "every shell of every solid closed")
      .value("unsound", &Product::unsound, "why nothing measured on it can be relied on, or empty")
      .value("drawn_at", &Product::drawn_at,
             "where the product's frame lies in a part drawn far off, mm; else the origin")
      .value("box", &Product::box, "in the product's frame")
      .value("cylinders", &Product::cylinders, "holes and shafts")
      .value("cones", &Product::cones, "tapers")
      .value("planes", &Product::planes, "flat faces")
      .value("widths", &Product::widths, "slots and keys")
      .value("others", &Product::others, "faces that are no feature")
      .shown_by(&product_shown)
      .done();
  View<Occurrence>(module, "Occurrence", "A product placed in the assembly.")
      .value("id", &Occurrence::id, "the path, unique in the model")
      .value("path", &Occurrence::path, "names from the root down")
      .value("product", &Occurrence::product, "number of its product, from 0")
      .value("frame", &Occurrence::frame, "product frame to assembly frame")
      .value("mirrored", &Occurrence::mirrored, "placed as its mirror image")
      .value("box", &Occurrence::box, "in the assembly's frame")
      .done();
  View<FileInfo>(module, "FileInfo", "The STEP file that was read.")
      .value("name", &FileInfo::name, "as the caller gave it")
      .value("sha256", &FileInfo::sha256, "of its bytes")
      .value("protocol", &FileInfo::protocol, "AP203, AP214 or AP242")
      .value("unit", &FileInfo::unit, "of length, as the file is written")
      .value("files", &FileInfo::files, "all that were read for it, itself first")
      .done();
  View<Note>(module, "Note", "A remark a reader of the result must know.")
      .value("about", &Note::about, "part or file")
      .value("text", &Note::text, "the remark")
      .done();
}

}  // namespace

void bind_model(py::module_& module) {
  choice<Side>(module, "Side", "Whether a feature is a hole or slot, or a shaft or key.",
               {"internal", "external"});
  choice<SurfaceSource>(module, "SurfaceSource",
                        "The surface in the file that a feature was recognised from.",
                        {"cylinder", "cone", "plane", "bspline", "revolution", "extrusion"});
  bind_pieces(module);
  bind_features(module);
  bind_products(module);
  View<Model, std::shared_ptr<Model>>(module, "Model", "What is known of a STEP file once read.")
      .value("file", &Model::file, "the file")
      .value("products", &Model::products, "parts")
      .value("occurrences", &Model::occurrences, "where they are")
      .value("notes", &Model::notes, "remarks of the reading")
      .value("not_compared", &Model::not_compared,
             "what is set against nothing: faces without a solid, and what is missing")
      .value("semantic_sizes", &Model::semantic_sizes, "sizes the file itself states")
      .shown_by(&model_shown)
      .done();
  module.def("open_cascade_version", &open_cascade_version, "Version of Open CASCADE: \"7.6.3\".");
  module.def(
      "read",
      [](const std::filesystem::path& file, bool accept_partial,
         const std::optional<ReadLimits>& limits) {
        const Completeness completeness =
            accept_partial ? Completeness::accept_partial : Completeness::all_or_error;
        return std::make_shared<Model>(long_call(
            [=] { return read_model(file, limits.value_or(ReadLimits{}), completeness); }));
      },
      py::arg("file"), py::kw_only(), py::arg("accept_partial") = false,
      py::arg("limits") = py::none(),
      R"(Reads a model's file into plain values in mm.

STEP (AP203, AP214, AP242; any length unit), or Open CASCADE's own shapes (.brep) and documents
(.xbf): the first bytes tell which.

Args:
    file: the model's file.
    accept_partial: take what can be read of a damaged file, with a note, in place of an error.
    limits: bounds on time, memory and size in place of the usual ones.
Raises: FileAccessError, UnreadableError, IncompleteError, each naming the file.)");
}

}  // namespace spotblue::python
