#include <pybind11/stl/filesystem.h>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/check/decided_sizes.hpp"
#include "spotblue/geometry/semantic_size.hpp"
#include "spotblue/geometry/semantic_write.hpp"

namespace spotblue::python {

/// Deviations of a size, which may lie either way round until they are written.
template <>
struct PairCrossing<std::optional<SizeLimits>> {
  using Given = std::optional<LimitsMm>;
  static Given out(const std::optional<SizeLimits>& held) {
    return held ? Given({held->lower_mm, held->upper_mm}) : std::nullopt;
  }
  static std::optional<SizeLimits> in(const Given& given) {
    return given ? std::optional(SizeLimits{given->first, given->second}) : std::nullopt;
  }
};

void bind_semantic_size(py::module_& module) {
  choice<FeatureKind>(module);
  choice<SizeCharacteristic>(module);
  bind_views<ProductFeatureRef, SizeLimits, SemanticSize>(module);
  bind_record<SizeToWrite>(module);
  module.def(
      "size_characteristic_name",
      [](SizeCharacteristic characteristic) {
        return std::string(size_characteristic_name(characteristic));
      },
      py::arg("characteristic"), "The characteristic in one word.");
}

void bind_semantic(py::module_& module) {
  bind_view<DecidedSizes>(module);
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
