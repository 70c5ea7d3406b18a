#include <pybind11/stl/filesystem.h>

#include <variant>

#include "python/bind.hpp"
#include "python/geometry/bind_mockup_parts.hpp"
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

void bind_placing(py::module_& module) {
  choice<Facing>(module, "Facing", "Which way round a part is placed.",
                 {"as drawn", "turned round"});
  Record<PlacingLine>(module, "PlacingLine", "A centre line that parts are placed on.")
      .field("name", &PlacingLine::name, "as placements call it")
      .field("at", &PlacingLine::at, "mm")
      .field("along", &PlacingLine::along, "any length but 0")
      .done();
  Record<PlacingCircle> circle(module, "PlacingCircle", "A circle of equal instances.");
  circle.field("diameter_mm", &PlacingCircle::diameter, "mm")
      .field("count", &PlacingCircle::count, "1: no circle");
  circle.degrees("angle_deg", &PlacingCircle::angle, "of the first");
  circle.done();
  Record<Placement> place(module, "Placement", "Where one part goes, once or on a circle.");
  place.field("name", &Placement::name, "of the instance")
      .field("part", &Placement::part, "a part's name")
      .field("group", &Placement::group, "sub-assembly; empty: the assembly itself")
      .field("line", &Placement::line, "a line's name; empty: the first")
      .field("on", &Placement::on, "bore whose centre goes on the line; empty: the part's own z");
  place.field("facing", &Placement::facing, "\"as drawn\", \"turned round\"");
  place.field("face", &Placement::face, "that is brought to its place")
      .field("at_mm", &Placement::at, "station of that face, or None and ...")
      .field("against", &Placement::against, "... the instance it is set against")
      .field("against_face", &Placement::against_face, "of that instance")
      .field("gap_mm", &Placement::gap, "between the two; negative: they overlap")
      .field("aside_x_mm", &Placement::aside_x, "of the line")
      .field("aside_y_mm", &Placement::aside_y, "of the line");
  place.degrees("turn_deg", &Placement::turn, "about the line");
  place.field("circle", &Placement::circle, "PlacingCircle")
      .field("keyseat_of", &Placement::keyseat_of, "a key: the instance it lies in")
      .field("keyseat", &Placement::keyseat, "which of its keyseats, from 1")
      .done();
}

void bind_whole_mockup(py::module_& module) {
  choice<StepProtocol>(module, "StepProtocol", "The application protocol of a STEP file.",
                       {"AP203", "AP214", "AP242"});
  Record<Mockup> mockup(module, "Mockup",
                        "Simple solids from caliper sizes, placed along centre lines.");
  mockup.field("file", &Mockup::file, "named in errors; may be empty")
      .field("read_from", &Mockup::read_from, "files it was read from; never written over")
      .field("title", &Mockup::title, "name of the assembly")
      .field("about", &Mockup::about, "goes into the STEP header");
  mockup.field("unit", &Mockup::unit, "the STEP file is written in");
  mockup.field("protocol", &Mockup::protocol, "AP203, AP214 or AP242");
  mockup.field("parts", &Mockup::parts, "MockupPart")
      .field("lines", &Mockup::lines, "PlacingLine; none: along z through the origin")
      .field("placements", &Mockup::placements, "Placement; none: the one part alone")
      .done();
  View<PlacedPart>(module, "PlacedPart", "One instance and where it went.")
      .value("name", &PlacedPart::name, "of the instance")
      .value("part", &PlacedPart::part, "number of its part, from 0")
      .value("group", &PlacedPart::group, "sub-assembly")
      .value("frame", &PlacedPart::frame, "part frame to assembly frame")
      .done();
  View<MockupFace>(module, "MockupFace", "A flat face by which a part can be placed.")
      .value("name", &MockupFace::name, "\"first\", \"outside 2 start\"")
      .value("axis", &MockupFace::axis, "0, 1, 2: the part axis it is square to")
      .value("station_mm", &MockupFace::station, "on that axis")
      .value("sense", &MockupFace::sense, "1: material on its lower side, -1: on its upper")
      .done();
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
  bind_whole_mockup(module);
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
