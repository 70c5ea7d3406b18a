#include <fmt/format.h>
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>
#include <pybind11/stl/filesystem.h>

#include <filesystem>
#include <string>
#include <system_error>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/check/judge_job.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"
#include "spotblue/job/toml_screen.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue::python {

namespace py = pybind11;

namespace {

Look look_within(const std::filesystem::path& file, double seconds, double memory_mb,
                 bool in_child) {
  LookSettings settings = bounded({}, {seconds, memory_mb});
  settings.limits.read_in = in_child ? ReadIn::child_process : ReadIn::this_process;
  Look found = look(file, settings);
  if (found.machine_lacked) {
    throw Error(ErrorCode::system, {}, "the machine has no memory left for all of it",
                "let fewer files be read at a time, or end other programs");
  }
  if (found.model.products.empty()) {
    throw Error(ErrorCode::unreadable, {found.model.file.name, ""},
                fmt::format("reading took longer than {:g} s", seconds),
                "raise the limit on time or simplify the file");
  }
  return found;
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
  shelf.attr("version") = fmt::format("{} (Open CASCADE {})", kVersion, open_cascade_version());
  shelf.def("fitted_text", &fitted_text, py::arg("text"), py::arg("width"),
            "The text with its lines broken at so many columns, 0 for none.");
  shelf.def("look_within", &look_within, py::arg("file"), py::kw_only(), py::arg("seconds"),
            py::arg("memory_mb"), py::arg("in_child"), py::call_guard<py::gil_scoped_release>(),
            "look() with the read in a child process, or without bounds on it in this one.");
  shelf.def("findings_of", &judge_job, py::arg("job"), py::arg("look"),
            py::call_guard<py::gil_scoped_release>(),
            "What judge() finds, in this thread and without a copy of the look.");
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
}

}  // namespace spotblue::python
