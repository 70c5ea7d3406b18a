#include "python/values/errors.hpp"

#include "spotblue/base/error.hpp"

namespace spotblue::python {
namespace {

namespace py = pybind11;

const char* class_name(ErrorCode code) {
  switch (code) {
    case ErrorCode::bad_input:
      return "BadInputError";
    case ErrorCode::file_access:
      return "FileAccessError";
    case ErrorCode::unreadable:
      return "UnreadableError";
    case ErrorCode::incomplete:
      return "IncompleteError";
    case ErrorCode::not_in_standard:
      return "NotInStandardError";
    case ErrorCode::open_cascade_failed:
      return "OpenCascadeError";
    case ErrorCode::stopped:
      return "StoppedError";
    case ErrorCode::system:
      return "MachineError";
  }
  return "Error";
}

}  // namespace

void translate_errors() {
  // NOLINTNEXTLINE(performance-unnecessary-value-param): as pybind11 calls it
  py::register_exception_translator([](std::exception_ptr thrown) {
    try {
      if (thrown) {
        std::rethrow_exception(thrown);
      }
    } catch (const Error& error) {
      const py::object kind = py::module_::import("spotblue.errors").attr(class_name(error.code()));
      const py::object value =
          kind(error.what(), error.file(), error.place(), error.rule(), error.cure());
      PyErr_SetObject(kind.ptr(), value.ptr());
    }
  });
}

}  // namespace spotblue::python
