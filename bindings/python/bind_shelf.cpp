#include <fmt/format.h>
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>
#include <pybind11/stl/filesystem.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <iterator>
#include <system_error>
#include <tuple>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/typed.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/outcome.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/geometry/kernel_version.hpp"
#include "spotblue/job/toml_screen.hpp"
#include "spotblue/report/text.hpp"
#include "spotblue/standards/b4_1.hpp"
#include "spotblue/standards/iso286.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue::python {

namespace py = pybind11;

namespace {

// feature, class or empty, lower and upper limit for when it is empty, nominal of the class; mm
using SizeClaim = std::tuple<std::string, std::string, double, double, double>;
// hole, shaft, class or empty, least and greatest clearance for when it is empty, nominal; mm
using FitClaim =
    std::tuple<std::string, std::string, std::string, double, double, std::optional<double>>;

// "RC4" is a whole fit of ANSI B4.1; "R7" and "H7/g6" are of ISO 286, which has no such pairs of
// letters.
bool is_b4_1(std::string_view text) {
  constexpr std::array<std::string_view, 5> families{"RC", "LC", "LT", "LN", "FN"};
  const bool known =
      std::find(families.begin(), families.end(), text.substr(0, 2)) != families.end();
  return known && text.find('/') == std::string_view::npos;
}

Fit fit_of(double nominal_mm, const std::string& text) {
  const Length nominal = Length::mm(nominal_mm);
  return is_b4_1(text) ? b4_1_fit(nominal, text) : fit(nominal, text);
}

SizeWant size_want(const SizeClaim& claim) {
  const auto& [feature, tolerance_class, lower, upper, nominal] = claim;
  SizeWant want;
  want.feature = feature;
  if (tolerance_class.empty()) {
    want.rule = Limits{Length::mm(lower), Length::mm(upper)};
  } else {
    want.rule = tolerance_class;
    want.nominal = Length::mm(nominal);
  }
  return want;
}

FitWant fit_want(const FitClaim& claim) {
  const auto& [hole, shaft, text, least, greatest, nominal] = claim;
  FitWant want;
  want.hole = hole;
  want.shaft = shaft;
  if (text.empty()) {
    want.rule = ClearanceLimits{Length::mm(least), Length::mm(greatest)};
    return want;
  }
  ClassFit rule;
  rule.system = is_b4_1(text) ? FitSystem::ansi_b4_1 : FitSystem::iso_286;
  rule.text = text;
  if (nominal) {
    rule.nominal = Length::mm(*nominal);
  }
  want.rule = rule;
  return want;
}

py::dict quantities(const std::vector<Quantity>& given) {
  py::dict result;
  for (const Quantity& quantity : given) {
    result[py::str(quantity.key)] = py::cast(quantity.value);
  }
  return result;
}

py::dict finding_fields(const Finding& finding) {
  py::dict result;
  result["kind"] = finding.kind;
  result["about"] = finding.about;
  result["outcome"] = std::string(outcome_name(finding.outcome));
  result["wanted"] = quantities(finding.wanted);
  result["found"] = quantities(finding.found);
  result["margin"] = quantities(finding.margin);
  result["basis"] = finding.basis;
  result["advice"] = finding.advice;
  return result;
}

Typed<"list[dict[str, typing.Any]]"> judge_claims(const Look& look,
                                                  const std::vector<SizeClaim>& sizes,
                                                  const std::vector<FitClaim>& fits,
                                                  double uncertainty_mm) {
  std::vector<Finding> findings;
  {
    const py::gil_scoped_release released;
    Job job;
    job.settings.default_uncertainty = Length::mm(uncertainty_mm);
    std::transform(sizes.begin(), sizes.end(), std::back_inserter(job.sizes), size_want);
    std::transform(fits.begin(), fits.end(), std::back_inserter(job.fits), fit_want);
    findings = judge_job(job, look);
  }
  py::list result;
  for (const Finding& finding : findings) {
    result.append(finding_fields(finding));
  }
  return result;
}

Look look_within(const std::filesystem::path& file, double seconds, double memory_mb,
                 bool in_child) {
  LookSettings settings = bounded({}, {seconds, memory_mb});
  settings.limits.read_in = in_child ? ReadIn::child_process : ReadIn::this_process;
  Look found = look(file, settings);
  if (found.machine_lacked) {
    throw Error(ErrorCode::file_access, {}, "the machine has no memory left for all of it",
                "let fewer files be read at a time, or end other programs");
  }
  if (found.model.products.empty()) {
    throw Error(ErrorCode::unreadable, {found.model.file.name, ""},
                fmt::format("reading took longer than {:g} s", seconds),
                "raise the limit on time or simplify the file");
  }
  return found;
}

std::pair<double, double> in_mm(const Limits& limits) {
  return {limits.lower.in_mm(), limits.upper.in_mm()};
}

std::pair<double, double> size_limits(double nominal_mm, const std::string& text, bool hole) {
  if (is_b4_1(text)) {
    const Fit fit = b4_1_fit(Length::mm(nominal_mm), text);
    return in_mm(hole ? fit.hole : fit.shaft);
  }
  return in_mm(limits(Length::mm(nominal_mm), text));
}

std::string material_full_name(const std::string& name) {
  const Material* const found = find_material(name);
  return found == nullptr ? std::string() : fmt::format("{} {}", found->name, found->condition);
}

// A device or a pipe may keep its writer waiting, and then Ctrl-C must be heard; a file of the disk
// is whole first, so that no draft is left of it.
void write_result(const std::filesystem::path& file, const std::string& bytes) {
  std::error_code ignored;
  const auto kind = std::filesystem::status(file, ignored).type();
  if (kind == std::filesystem::file_type::regular ||
      kind == std::filesystem::file_type::not_found) {
    const py::gil_scoped_release released;
    write_whole(file, bytes);
    return;
  }
  run_long([file, bytes] { write_whole(file, bytes); });
}

}  // namespace

void bind_shelf(py::module_& module) {
  py::module_ shelf = module.def_submodule("shelf", "What the library runner asks of the kernel.");
  shelf.attr("version") = fmt::format("{} (Open CASCADE {})", kVersion, kernel_version());
  shelf.def("fitted_text", &fitted_text, py::arg("text"), py::arg("width"),
            "The text with its lines broken at so many columns, 0 for none.");
  shelf.def("look_within", &look_within, py::arg("file"), py::kw_only(), py::arg("seconds"),
            py::arg("memory_mb"), py::arg("in_child"), py::call_guard<py::gil_scoped_release>(),
            "look() with the read in a child process, or without bounds on it in this one.");
  shelf.def("judge_claims", &judge_claims, py::arg("look"), py::kw_only(), py::arg("sizes"),
            py::arg("fits"), py::arg("uncertainty_mm"),
            "Findings on claimed sizes and fits, and on everything else check() judges.");
  shelf.def(
      "judge_value",
      [](double value_mm, double uncertainty_mm, double lower_mm, double upper_mm) {
        return std::string(outcome_name(judge(Length::mm(value_mm), Length::mm(uncertainty_mm),
                                              {Length::mm(lower_mm), Length::mm(upper_mm)})));
      },
      py::arg("value_mm"), py::arg("uncertainty_mm"), py::arg("lower_mm"), py::arg("upper_mm"),
      "Outcome of a value against limits, by ISO 14253-1.");
  shelf.def("size_limits", &size_limits, py::arg("nominal_mm"), py::arg("tolerance_class"),
            py::arg("hole"), "Limits of an ISO 286 class, or of one side of an ANSI B4.1 fit; mm.");
  shelf.def(
      "fit_clearance",
      [](double nominal_mm, const std::string& text) {
        const Fit wanted = fit_of(nominal_mm, text);
        return std::pair(wanted.least_clearance.in_mm(), wanted.greatest_clearance.in_mm());
      },
      py::arg("nominal_mm"), py::arg("text"),
      "Least and greatest clearance of \"H7/g6\" or \"RC4\"; mm, negative is interference.");
  shelf.def(
      "length_mm",
      [](const std::string& text, const std::string& unit) {
        return parse_length(text, parse_unit(unit)).in_mm();
      },
      py::arg("text"), py::arg("unit"), "A length as people write it: \"44\", \"1 5/16 in\"; mm.");
  shelf.def(
      "nearest_word",
      [](const std::string& word, const std::vector<std::string>& known) {
        return nearest_word(word, known);
      },
      py::arg("word"), py::arg("known"), "The known word nearest to one that was mistyped.");
  shelf.def(
      "read_plain",
      [](const std::filesystem::path& file, double most_mb, const std::string& wanted) {
        return py::bytes(read_bytes(file, most_mb, wanted));
      },
      py::arg("file"), py::arg("most_mb"), py::arg("wanted"),
      "The bytes of an ordinary file, not empty and no larger than that; never waits for a pipe.");
  shelf.def(
      "screen_toml",
      [](const std::string& text, const std::filesystem::path& file) {
        screen_toml(text, shown_name(file));
      },
      py::arg("text"), py::arg("file"),
      "Refuses TOML that nests or is dotted too deep for any parser, by its line.");
  shelf.def(
      "write_whole",
      [](const std::filesystem::path& file, const py::bytes& data) { write_result(file, data); },
      py::arg("file"), py::arg("data"),
      "A file that appears whole or not at all; a device or a pipe is written to.");
  shelf.def("material_full_name", &material_full_name, py::arg("name"),
            "Name and condition in the table of materials; empty when it is not there.");
  shelf.def(
      "material_names",
      [] {
        const auto names = material_names();
        return std::vector<std::string>(names.begin(), names.end());
      },
      "Full and short names of the table of materials.");
}

}  // namespace spotblue::python
