#include "python/values/numbers.hpp"
#include "spotblue/standards/keys.hpp"

namespace spotblue::python {
namespace {

void bind_metric_keys(py::module_& module) {
  choice<KeyFit>(module);
  bind_records<ParallelKey, KeyWidths>(module);
  module.def(
      "parallel_keys", [] { return listed(parallel_keys()); },
      "Metric keys for shafts of 6 up to 500 mm, ISO 773 / DIN 6885-1, smallest first.");
  module.def(
      "parallel_key",
      [](double shaft_diameter_mm) {
        return parallel_key(Diameter(Length::mm(shaft_diameter_mm)));
      },
      py::arg("shaft_diameter_mm"), R"(The metric key for a shaft, ISO 773 / DIN 6885-1.

Args:
    shaft_diameter_mm: 6 up to 500 mm.
Raises: BadInputError for no size; NotInStandardError outside the table.)");
  module.def("key_widths", &key_widths, py::arg("key"), py::arg("fit"),
             R"(Width limits of a metric key and its keyseats, ISO 773.

Args:
    key: its section, mm.
    fit: free (keyseats H9, D10), normal (N9, JS9) or tight (P9, P9); the key is h9.)");
}

void bind_inch_keys(py::module_& module) {
  choice<InchKeyFit>(module);
  bind_record<InchKey>(module);
  module.def(
      "inch_keys", [] { return listed(inch_keys()); },
      "Inch keys for shafts of 5/16 up to 7 1/2 in, ASME B17.1, smallest first, in mm.");
  module.def(
      "inch_key",
      [](double shaft_diameter_mm) { return inch_key(Diameter(Length::mm(shaft_diameter_mm))); },
      py::arg("shaft_diameter_mm"), R"(The inch key for a shaft, ASME B17.1.

Args:
    shaft_diameter_mm: 7.9375 up to 190.5 mm (5/16 to 7 1/2 in).
Raises: BadInputError for no size; NotInStandardError outside the table.)");
  module.def(
      "inch_keyseat_depth",
      [](double key_height_mm) { return inch_keyseat_depth(Length::mm(key_height_mm)).in_mm(); },
      py::arg("key_height_mm"), R"(Nominal depth of an inch keyseat at the side of the key.

Args:
    key_height_mm: mm.
Returns: half the height, mm.)");
  module.def(
      "inch_key_widths",
      [](double width_mm, InchKeyFit fit) { return inch_key_widths(Length::mm(width_mm), fit); },
      py::arg("width_mm"), py::arg("fit"), R"(Width limits by ASME B17.1, table 4 (from memory).

Args:
    width_mm: of the key, over 0 up to 63.5 mm (2 1/2 in).
    fit: class 1 (free, bar stock) or 2 (close, key stock).
Raises: BadInputError for no size; NotInStandardError over 2 1/2 in.)");
}

}  // namespace

void bind_keys(py::module_& module) {
  bind_metric_keys(module);
  bind_inch_keys(module);
}

}  // namespace spotblue::python
