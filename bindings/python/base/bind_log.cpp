#include <pybind11/pybind11.h>

#include <atomic>
#include <string_view>

#include "python/bind.hpp"
#include "spotblue/base/log.hpp"

namespace spotblue::python {
namespace {

namespace py = pybind11;

// Never freed: a message may come from a thread that outlives the interpreter.
PyObject* python_logger = nullptr;
std::atomic<bool> interpreter_lives{true};

void pass_on(LogLevel level, std::string_view text) {
  if (!interpreter_lives) {
    return;
  }
  const py::gil_scoped_acquire lock;
  const char* method = level == LogLevel::warning ? "warning"
                       : level == LogLevel::info  ? "info"
                                                  : "debug";
  try {
    const auto message = py::reinterpret_steal<py::str>(
        PyUnicode_DecodeUTF8(text.data(), static_cast<Py_ssize_t>(text.size()), "replace"));
    py::handle(python_logger).attr(method)("%s", message);
  } catch (py::error_already_set& error) {
    error.discard_as_unraisable("spotblue's log");
  }
}

}  // namespace

void bind_log(py::module_& /*module*/) {
  python_logger = py::module_::import("logging").attr("getLogger")("spotblue").release().ptr();
  py::module_::import("atexit").attr("register")(
      py::cpp_function([] { interpreter_lives = false; }));
  set_log_sink(pass_on);
}

}  // namespace spotblue::python
