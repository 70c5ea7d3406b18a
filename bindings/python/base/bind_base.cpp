#include "python/values/numbers.hpp"
#include "python/values/typed.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/outcome.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue::python {
namespace {

void bind_units(py::module_& module) {
  choice<LengthUnit>(module);
  choice_class<LengthUnit>->numbers["in"] = 1;  // as unit_name writes it
  module.def(
      "parse_length",
      [](const std::string& text, LengthUnit unit) { return parse_length(text, unit).in_mm(); },
      py::arg("text"), py::arg("unit"), R"(Reads a length as people write it.

Args:
    text: "33.34", "5/16", "1 5/16", "1-5/16", with "mm", "in" or an inch mark behind it or none.
    unit: unit of a bare number.
Returns: mm.
Raises: BadInputError when the text is no length.)");
  module.def(
      "unit_name", [](LengthUnit unit) { return std::string(unit_name(unit)); }, py::arg("unit"),
      "The unit's short name.\n\nReturns: \"mm\" or \"in\".");
  module.def(
      "parse_unit", [](const std::string& name) { return parse_unit(name); }, py::arg("name"),
      R"(The unit of this name.

Args:
    name: "mm", "inch" or "in".
Raises: BadInputError for anything else.)");
}

void bind_formats(py::module_& module) {
  module.def(
      "format_length",
      [](double length_mm, LengthUnit unit, int decimals) {
        return format_length(Length::mm(length_mm), unit, decimals);
      },
      py::arg("length_mm"), py::arg("unit"), py::kw_only(), py::arg("decimals"),
      R"(A length as a number in the given unit, no unit behind it; never "-0".

Args:
    length_mm: mm.
    unit: the unit to write in.
    decimals: digits behind the point, 0 or more.)");
  module.def(
      "format_size",
      [](double length_mm, LengthUnit unit) { return format_size(Length::mm(length_mm), unit); },
      py::arg("length_mm"), py::arg("unit"),
      R"(A size with no more decimals than it needs: 44, 6.6, 25.4.

Args:
    length_mm: mm.
    unit: the unit to write in; at most 4 decimals in mm, 5 in inch.)");
}

void bind_outcome(py::module_& module) {
  choice<Outcome>(module);
  module.def(
      "outcome_name", [](Outcome outcome) { return std::string(outcome_name(outcome)); },
      py::arg("outcome"), "The outcome in one word, as findings write it.");
  module.def(
      "judge",
      [](double value_mm, double uncertainty_mm, const Limits& limits) {
        return judge(Length::mm(value_mm), Length::mm(uncertainty_mm), limits);
      },
      py::arg("value_mm"), py::arg("uncertainty_mm"), py::kw_only(), py::arg("limits"),
      R"(Judges a measured length against limits, both included, by ISO 14253-1.

Args:
    value_mm: the measured length, mm.
    uncertainty_mm: expanded uncertainty U (k = 2), mm, 0 or more.
    limits: lower no more than upper.
Returns: conforming when all of value - U to value + U lies within, nonconforming when none does.
Raises: BadInputError when U is negative, a number not finite or the limits reversed.)");
  module.def(
      "judge", [](const Limits& possible, const Limits& limits) { return judge(possible, limits); },
      py::arg("possible"), py::arg("limits"), R"(Judges a whole range of possible values.

Returns: conforming when all of them lie within the limits, nonconforming when none does.
Raises: BadInputError when a number is not finite or limits are reversed.)");
  module.def(
      "margin",
      [](const Limits& possible, const Limits& limits) { return margin(possible, limits).in_mm(); },
      py::arg("possible"), py::arg("limits"),
      "Distance of the range's worst end from the limit nearest to it.\n\nReturns: mm, positive "
      "inside.");
}

void bind_names(py::module_& module) {
  const py::module_ os = py::module_::import("os");
  module.def(
      "shown_text",
      [](const py::str& text) {
        return shown_text(text.attr("encode")("utf-8", "surrogateescape").cast<std::string>());
      },
      py::arg("text"),
      "One line of text without control letters and marks that turn lines: what is one, and what "
      "came of bytes that are no UTF-8, becomes \\xNN.");
  module.def(
      "shortened",
      [](const py::str& text, std::size_t most_bytes) {
        return shortened(text.attr("encode")("utf-8", "surrogateescape").cast<std::string>(),
                         most_bytes);
      },
      py::arg("text"), py::arg("most_bytes"),
      R"(Beginning and end of a text that is longer than so many bytes of UTF-8; else the text.

Args:
    text: shown_text.
    most_bytes: 16 or more.)");
  module.def(
      "shown_name",
      [os](const Typed<"os.PathLike">& file) {
        return shown_name(os.attr("fsencode")(file).cast<std::string>());
      },
      py::arg("file"),
      R"(The shown form of a file's name, as every text, manifest and job file has it.

Returns: shown_text, and also \xNN for blanks at its ends; most names are their own shown form.)");
  module.def(
      "path_of_shown",
      [os](const py::str& shown) -> py::str {
        const std::string text =
            shown.attr("encode")("utf-8", "surrogateescape").cast<std::string>();
        return os.attr("fsdecode")(py::bytes(path_of_shown(text).native()));
      },
      py::arg("shown"), "The file that a shown name stands for, as open() takes it.");
}

}  // namespace

void bind_base(py::module_& module) {
  Record<Limits>(module, "Limits", "Lower and upper limit of a size, both included, mm.")
      .member("lower_mm", &Limits::lower, "lower limit, mm")
      .member("upper_mm", &Limits::upper, "upper limit, mm, no less than lower")
      .derived(
          "width_mm", [](const Limits& self) { return self.width().in_mm(); }, "upper - lower, mm")
      .done();
  bind_units(module);
  bind_formats(module);
  bind_outcome(module);
  bind_names(module);
  module.def(
      "nearest_word",
      [](const std::string& word, const std::vector<std::string>& known) {
        return nearest_word(word, known);
      },
      py::arg("word"), py::arg("known"),
      R"(The known word with the fewest single-letter edits from one that was mistyped.

Returns: the first of several equally near; empty when `known` is empty.)");
  module.def(
      "likely_word",
      [](const std::string& word, const std::vector<std::string>& known) {
        return likely_word(word, known);
      },
      py::arg("word"), py::arg("known"),
      R"(nearest_word where it is no more than a quarter of the word's letters off, one at the least.

Returns: what was mistyped, and not what merely comes nearest; empty else.)");
}

}  // namespace spotblue::python
