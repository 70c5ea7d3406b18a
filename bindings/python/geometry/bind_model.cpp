#include <pybind11/stl/filesystem.h>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/view.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::python {
namespace {

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

}  // namespace

void bind_model(py::module_& module) {
  choice<Side>(module);
  choice<SurfaceSource>(module);
  bind_views<Arc, Patch, RingPiece, OtherFace, DiameterAt, Cylinder, Cone, Plane, Width>(module);
  bind_view<Product>(module, &product_shown);
  bind_views<Occurrence, FileInfo, Note>(module);
  bind_view<Model, std::shared_ptr<Model>>(module, &model_shown);
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
