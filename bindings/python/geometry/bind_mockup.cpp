#include <pybind11/stl/filesystem.h>

#include <variant>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/geometry/mockup.hpp"
#include "spotblue/geometry/mockup_faces.hpp"
#include "spotblue/geometry/mockup_placing.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/mockup_file.hpp"

namespace spotblue::python {
namespace {

void bind_mockup_parts(py::module_& module) {
  choice<BreakKind>(module);
  choice<EndShape>(module);
  choice<PartFace>(module);
  bind_records<EdgeBreak, Step, Groove, Keyseat, Keyway, Flats, CrossHole, BoreGroove, Counterbore,
               Bore, Boss>(module);
  bind_records<TurnedPart, AddedBlock, BlockPart, RingPart, KeyPart, MockupPart>(module);
}

void bind_placing(py::module_& module) {
  choice<Facing>(module);
  choice<StepProtocol>(module);
  bind_records<PlacingLine, PlacingCircle, Placement, Mockup>(module);
  bind_views<PlacedPart, MockupFace>(module);
}

using MockupOrFile = std::variant<Mockup, std::filesystem::path>;

void make_model(const MockupOrFile& given, const std::filesystem::path& out, bool allow_outside) {
  long_call([=] {
    const auto* const mockup = std::get_if<Mockup>(&given);
    write_mockup(mockup != nullptr ? *mockup
                                   : read_mockup(std::get<std::filesystem::path>(given),
                                                 outside_of(allow_outside)),
                 out);
    return true;
  });
}

}  // namespace

void bind_mockup(py::module_& module) {
  bind_mockup_parts(module);
  bind_placing(module);
  module.def("model", &make_model, py::arg("mockup"), py::arg("out"), py::kw_only(),
             py::arg("allow_outside") = false,
             "Makes the STEP model of a Mockup or a mock-up file; it appears whole or not at all.");
  module.def(
      "read_mockup",
      [](const std::filesystem::path& file, bool allow_outside) {
        return read_mockup(file, outside_of(allow_outside));
      },
      py::arg("file"), py::kw_only(), py::arg("allow_outside") = false,
      R"(Reads and checks a mock-up file.

Args:
    file: a mock-up file.
    allow_outside: include files also from elsewhere than its folder and what is below it.)");
  module.def("check_parts", &check_parts, py::arg("mockup"), "Refuses sizes that make no part.");
  module.def("place_parts", &place_parts, py::arg("mockup"),
             "Where each instance goes, in order of the placements.");
  module.def("faces_of", &faces_of, py::arg("part"), "The flat faces a part can be placed by.");
}

}  // namespace spotblue::python
