#include "python/values/numbers.hpp"
#include "spotblue/standards/b4_1.hpp"
#include "spotblue/standards/common_fits.hpp"
#include "spotblue/standards/fit.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue::python {
namespace {

void bind_fit(py::module_& module) {
  choice<FitKind>(module);
  bind_record<Fit>(module);
  module.def(
      "fit_kind_name", [](FitKind kind) { return std::string(fit_kind_name(kind)); },
      py::arg("kind"), "The kind in one word: clearance, transition or interference.");
  module.def(
      "fit_kind",
      [](double least_clearance_mm, double greatest_clearance_mm) {
        return fit_kind(Length::mm(least_clearance_mm), Length::mm(greatest_clearance_mm));
      },
      py::arg("least_clearance_mm"), py::arg("greatest_clearance_mm"),
      R"(Kind of a fit by its least and greatest clearance, ISO 286-1:2010, 3.3.

Args:
    least_clearance_mm: mm on the diameter, negative is interference.
    greatest_clearance_mm: the same; zero makes an interference fit.)");
}

void bind_iso286(py::module_& module) {
  choice<SizeKind>(module);
  bind_record<Deviations>(module);
  module.def(
      "it_value",
      [](double nominal_mm, const std::string& grade) {
        return it_value(Length::mm(nominal_mm), grade).in_mm();
      },
      py::arg("nominal_mm"), py::arg("grade"),
      R"(Width of a standard tolerance grade, ISO 286-1:2010, table 1.

Args:
    nominal_mm: over 0, up to 3150 mm.
    grade: "IT7" or "7"; IT01, IT0, IT1 to IT18.
Returns: mm.
Raises: BadInputError for no size or grade; NotInStandardError where the standard gives none.)");
  module.def(
      "size_kind", [](const std::string& tolerance_class) { return size_kind(tolerance_class); },
      py::arg("tolerance_class"), R"(Kind of size a class is for, by its letters alone.

Raises: BadInputError when the text is no class like H7, js6 or ZC11.)");
  module.def(
      "deviations",
      [](double nominal_mm, const std::string& tolerance_class) {
        return deviations(Length::mm(nominal_mm), tolerance_class);
      },
      py::arg("nominal_mm"), py::arg("tolerance_class"),
      R"(Deviations of a tolerance class, ISO 286-1:2010, tables 2 to 5.

Args:
    nominal_mm: over 0, up to 3150 mm.
    tolerance_class: letters and grade: "H7", "zc8", "JS6"; capitals for holes.
Raises: BadInputError for no size or class; NotInStandardError where the standard has no such class,
    with the nearest that it has.)");
}

void bind_iso286_limits(py::module_& module) {
  module.def(
      "limits",
      [](double nominal_mm, const std::string& tolerance_class) {
        return limits(Length::mm(nominal_mm), tolerance_class);
      },
      py::arg("nominal_mm"), py::arg("tolerance_class"),
      R"(Limits of size of a tolerance class: nominal plus deviations.

Args:
    nominal_mm: over 0, up to 3150 mm.
    tolerance_class: letters and grade: "H7", "s6"; capitals for holes.
Raises: BadInputError, NotInStandardError as deviations.)");
  module.def(
      "fit",
      [](double nominal_mm, const std::string& text) { return fit(Length::mm(nominal_mm), text); },
      py::arg("nominal_mm"), py::arg("text"), R"(A fit by its two classes, hole first.

Args:
    nominal_mm: over 0, up to 3150 mm.
    text: hole class, stroke, shaft class: "H7/s6".
Raises: BadInputError, NotInStandardError as deviations.)");
}

void bind_common_fits(py::module_& module) {
  bind_record<CommonFit>(module);
  module.def(
      "common_fits_with_clearance",
      [](double nominal_mm, double clearance_mm) {
        return common_fits_with_clearance(Length::mm(nominal_mm), Length::mm(clearance_mm));
      },
      py::arg("nominal_mm"), py::arg("clearance_mm"),
      R"(Hole-basis fits of ISO 286 that allow this clearance at this size; advice, no drawing.

Args:
    nominal_mm: over 0; outside the tables the answer is empty.
    clearance_mm: hole less shaft on the diameter, negative is interference.
Returns: best centred first.
Raises: BadInputError when either is not a number or the nominal not positive.)");
  module.def(
      "common_b4_1_fits_with_clearance",
      [](double nominal_mm, double clearance_mm) {
        return common_b4_1_fits_with_clearance(Length::mm(nominal_mm), Length::mm(clearance_mm));
      },
      py::arg("nominal_mm"), py::arg("clearance_mm"),
      R"(Fits of ANSI B4.1 that allow this clearance at this size; advice, no drawing.

Args:
    nominal_mm: over 0; outside the tables the answer is empty.
    clearance_mm: hole less shaft on the diameter, negative is interference.
Returns: best centred first.
Raises: BadInputError when either is not a number or the nominal not positive.)");
}

}  // namespace

void bind_fits(py::module_& module) {
  bind_fit(module);
  bind_iso286(module);
  bind_iso286_limits(module);
  module.def(
      "b4_1_fit",
      [](double nominal_mm, const std::string& cls) {
        return b4_1_fit(Length::mm(nominal_mm), cls);
      },
      py::arg("nominal_mm"), py::arg("cls"), R"(Limits of hole and shaft by ANSI B4.1.

Args:
    nominal_mm: over 0, up to 500.126 mm (19.69 in).
    cls: class without blanks, letter case aside: "FN2", "rc4".
Raises: BadInputError for no size or class; NotInStandardError where its table does not reach.)");
  module.def(
      "has_b4_1_letters", [](const std::string& cls) { return has_b4_1_letters(cls); },
      py::arg("cls"),
      "Whether a class begins with the two capitals of one of ANSI B4.1, whatever follows.");
  bind_common_fits(module);
}

}  // namespace spotblue::python
