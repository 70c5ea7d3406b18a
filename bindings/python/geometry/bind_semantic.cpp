#include <pybind11/stl/filesystem.h>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/check/decided_sizes.hpp"
#include "spotblue/geometry/semantic_size.hpp"
#include "spotblue/geometry/semantic_write.hpp"

namespace spotblue::python {
namespace {

using LimitsOrNone = std::optional<LimitsMm>;

}  // namespace

void bind_semantic_size(py::module_& module) {
  choice<FeatureKind>(module, "FeatureKind", "Which list of a product a feature is in.",
                      {"cylinder", "cone", "plane", "width"});
  choice<SizeCharacteristic>(module, "SizeCharacteristic", "What of a feature a stated size is.",
                             {"diameter", "radius", "width", "other"});
  View<ProductFeatureRef>(module, "ProductFeatureRef", "A feature of a product.")
      .value("kind", &ProductFeatureRef::kind, "which list of the product")
      .value("index", &ProductFeatureRef::index, "number in that list, from 0")
      .done();
  View<SizeLimits>(module, "SizeLimits", "Lower and upper end of a size or a deviation.")
      .value("lower_mm", &SizeLimits::lower_mm, "mm")
      .value("upper_mm", &SizeLimits::upper_mm, "mm")
      .done();
  View<SemanticSize>(module, "SemanticSize", "A toleranced size that the STEP file itself states.")
      .value("entity", &SemanticSize::entity, "its number in the file")
      .value("name", &SemanticSize::name, "as the file says")
      .value("characteristic", &SemanticSize::characteristic, "diameter, radius, width or other")
      .value("product", &SemanticSize::product, "number of the product, from 0, or None")
      .value("features", &SemanticSize::features, "of that product")
      .value("nominal_mm", &SemanticSize::nominal_mm, "mm, or None")
      .value("deviations", &SemanticSize::deviations, "from the nominal, or None")
      .value("limits", &SemanticSize::limits, "ends of the size, or None")
      .value("tolerance_class", &SemanticSize::tolerance_class, "\"H7\"; empty without one")
      .value("doubt", &SemanticSize::doubt, "why nothing is judged by it; empty: sound")
      .computed("usable", &is_usable, "whether a size may be judged by it")
      .computed("text", &semantic_size_text, "\"44 H7\", as a person reads it, in mm")
      .done();
  Record<SizeToWrite> size(module, "SizeToWrite",
                           "A size to be stated for one feature: a class or "
                           "deviations.");
  size.field("product", &SizeToWrite::product, "id of the product")
      .field("feature", &SizeToWrite::feature, "\"bore 44\"")
      .field("nominal_mm", &SizeToWrite::nominal_mm, "more than 0")
      .field("tolerance_class", &SizeToWrite::tolerance_class, "\"H7\", or empty")
      .computed(
          "deviations_mm",
          [](const SizeToWrite& value) {
            return value.deviations
                       ? LimitsOrNone({value.deviations->lower_mm, value.deviations->upper_mm})
                       : std::nullopt;
          },
          [](SizeToWrite& value, const LimitsOrNone& given) {
            value.deviations.reset();
            if (given) {
              value.deviations = SizeLimits{given->first, given->second};
            }
          },
          "(lower, upper), signed, or None")
      .done();
  module.def(
      "size_characteristic_name",
      [](SizeCharacteristic characteristic) {
        return std::string(size_characteristic_name(characteristic));
      },
      py::arg("characteristic"), "The characteristic in one word.");
}

void bind_semantic(py::module_& module) {
  View<DecidedSizes>(module, "DecidedSizes", "The sizes a job has decided for its model.")
      .value("sizes", &DecidedSizes::sizes, "SizeToWrite, one a feature")
      .value("left_out", &DecidedSizes::left_out, "features left open, and why")
      .done();
  module.def(
      "decided_sizes",
      [](const Job& job, const std::shared_ptr<Look>& look) { return decided_sizes(job, *look); },
      py::arg("job"), py::arg("look"), "Classes and limits of the job, each on its feature.");
  module.def(
      "write_semantic_sizes",
      [](const std::filesystem::path& model, const std::filesystem::path& out,
         const std::vector<SizeToWrite>& sizes, const std::string& unit) {
        const LengthUnit in = parse_unit(unit);
        return long_call([=] { return write_semantic_sizes(model, out, sizes, in, ReadLimits{}); });
      },
      py::arg("model"), py::arg("out"), py::arg("sizes"), py::arg("unit") = "mm",
      "Writes a copy of a STEP file that also states these sizes; returns remarks.");
}

}  // namespace spotblue::python
