#include "python/geometry/bind_mockup_parts.hpp"

#include "python/values/record.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue::python {
namespace {

void bind_turned_steps(py::module_& module) {
  Record<EdgeBreak> edge(module, "EdgeBreak", "What was done to an edge or left in a corner.");
  edge.field("kind", &EdgeBreak::kind, "sharp, chamfer or fillet");
  edge.field("size_mm", &EdgeBreak::size, "leg of the chamfer or radius").done();
  Record<Step>(module, "Step", "One stretch of the outside or inside of a turned part.")
      .field("name", &Step::name, "may be empty")
      .field("start_mm", &Step::start, "from the first end")
      .field("length_mm", &Step::length, "more than 0")
      .field("diameter_mm", &Step::diameter, "at its start")
      .field("end_diameter_mm", &Step::end_diameter, "at its end; the same unless a taper")
      .field("at_start", &Step::at_start, "EdgeBreak")
      .field("at_end", &Step::at_end, "EdgeBreak")
      .done();
  Record<Groove>(module, "Groove", "A square groove turned into the outside or inside.")
      .field("at_mm", &Groove::at, "its nearer edge, from the first end")
      .field("width_mm", &Groove::width, "mm")
      .field("diameter_mm", &Groove::diameter, "of its floor")
      .done();
}

void bind_milled(py::module_& module) {
  Record<Keyseat> keyseat(module, "Keyseat", "A keyseat milled in the outside of a turned part.");
  keyseat.field("at_mm", &Keyseat::at, "its nearer end")
      .field("length_mm", &Keyseat::length, "mm")
      .field("width_mm", &Keyseat::width, "mm")
      .field("depth_mm", &Keyseat::depth, "from the top of the shaft");
  keyseat.degrees("angle_deg", &Keyseat::angle, "about the part's line");
  keyseat.field("ends", &Keyseat::ends, "round or square");
  keyseat.done();
  Record<Keyway> keyway(module, "Keyway", "A keyway in a bore.");
  keyway.field("at_mm", &Keyway::at, "None: right through")
      .field("length_mm", &Keyway::length, "given with at_mm")
      .field("width_mm", &Keyway::width, "mm")
      .field("depth_mm", &Keyway::depth, "from the top of the bore")
      .field("bore_mm", &Keyway::bore, "diameter; None: the inside step it lies in")
      .field("x_mm", &Keyway::x, "centre of the bore")
      .field("y_mm", &Keyway::y, "centre of the bore");
  keyway.degrees("angle_deg", &Keyway::angle, "about the bore");
  keyway.done();
  Record<Flats> flats(module, "Flats", "Flats milled on a turned part.");
  flats.field("at_mm", &Flats::at, "from the first end")
      .field("length_mm", &Flats::length, "mm")
      .field("across_mm", &Flats::across, "over two flats; one: to the far side")
      .field("count", &Flats::count, "1 or an even number");
  flats.degrees("angle_deg", &Flats::angle, "of the first");
  flats.done();
  Record<CrossHole> hole(module, "CrossHole", "A hole square to the line of a turned part.");
  hole.field("at_mm", &CrossHole::at, "its centre, from the first end")
      .field("diameter_mm", &CrossHole::diameter, "mm")
      .field("depth_mm", &CrossHole::depth, "None: right through");
  hole.degrees("angle_deg", &CrossHole::angle, "about the part's line");
  hole.field("offset_mm", &CrossHole::offset, "of its line from the part's").done();
}

void bind_bores(py::module_& module) {
  Record<BoreGroove>(module, "BoreGroove", "A groove turned into a bore.")
      .field("depth_mm", &BoreGroove::depth, "of its nearer edge")
      .field("width_mm", &BoreGroove::width, "mm")
      .field("diameter_mm", &BoreGroove::diameter, "of its floor")
      .done();
  Record<Bore> bore(module, "Bore", "A bore, or a circle of them, square to a face.");
  bore.field("name", &Bore::name, "may be empty");
  bore.field("face", &Bore::face, "first, last, left, right, front or back");
  bore.field("u_mm", &Bore::u, "first coordinate on the face")
      .field("v_mm", &Bore::v, "second coordinate on the face")
      .field("diameter_mm", &Bore::diameter, "mm")
      .field("depth_mm", &Bore::depth, "None: right through")
      .field("counterbore_diameter_mm", &Bore::counterbore_diameter, "0: none")
      .field("counterbore_depth_mm", &Bore::counterbore_depth, "mm")
      .field("count", &Bore::count, "on a circle")
      .field("circle_mm", &Bore::circle, "pitch circle diameter; 0: at (u, v)");
  bore.degrees("angle_deg", &Bore::angle, "of the first one");
  bore.field("grooves", &Bore::grooves, "BoreGroove").done();
  Record<Boss> boss(module, "Boss", "A round boss on a face of a block.");
  boss.field("name", &Boss::name, "may be empty");
  boss.field("face", &Boss::face, "first, last, left, right, front or back");
  boss.field("u_mm", &Boss::u, "first coordinate on the face")
      .field("v_mm", &Boss::v, "second coordinate on the face")
      .field("diameter_mm", &Boss::diameter, "mm")
      .field("height_mm", &Boss::height, "mm")
      .done();
}

void bind_shapes(py::module_& module) {
  Record<TurnedPart>(module, "TurnedPart", "A part made on the lathe, drilled and milled after.")
      .field("outside", &TurnedPart::outside, "steps without gaps from 0")
      .field("inside", &TurnedPart::inside, "steps, ascending")
      .field("outside_grooves", &TurnedPart::outside_grooves, "Groove")
      .field("inside_grooves", &TurnedPart::inside_grooves, "Groove")
      .field("keyseats", &TurnedPart::keyseats, "Keyseat")
      .field("keyways", &TurnedPart::keyways, "Keyway")
      .field("flats", &TurnedPart::flats, "Flats")
      .field("cross_holes", &TurnedPart::cross_holes, "CrossHole")
      .field("bores", &TurnedPart::bores, "Bore, parallel to the part's line")
      .done();
  Record<AddedBlock>(module, "AddedBlock", "A further block joined to the first.")
      .field("corner", &AddedBlock::corner, "lowest x, y, z, mm")
      .field("size", &AddedBlock::size, "mm")
      .done();
  Record<BlockPart>(module, "BlockPart", "A plate, block or bracket.")
      .field("size", &BlockPart::size, "mm")
      .field("added", &BlockPart::added, "AddedBlock")
      .field("bosses", &BlockPart::bosses, "Boss")
      .field("bores", &BlockPart::bores, "Bore")
      .done();
  Record<RingPart>(module, "RingPart", "A flat ring, or with a gap a retaining ring.")
      .field("outside_mm", &RingPart::outside, "diameter")
      .field("inside_mm", &RingPart::inside, "diameter")
      .field("thickness_mm", &RingPart::thickness, "mm")
      .field("gap_mm", &RingPart::gap, "0: closed")
      .done();
  Record<KeyPart> key(module, "KeyPart", "A parallel key.");
  key.field("width_mm", &KeyPart::width, "mm")
      .field("height_mm", &KeyPart::height, "mm")
      .field("length_mm", &KeyPart::length, "mm");
  key.field("ends", &KeyPart::ends, "round or square");
  key.done();
}

}  // namespace

void bind_mockup_parts(py::module_& module) {
  choice<BreakKind>(module, "BreakKind", "What was done to an edge.",
                    {"sharp", "chamfer", "fillet"});
  choice<EndShape>(module, "EndShape", "How a keyseat or key ends.", {"round", "square"});
  choice<PartFace>(module, "PartFace", "A face of a block.",
                   {"first", "last", "left", "right", "front", "back"});
  bind_turned_steps(module);
  bind_milled(module);
  bind_bores(module);
  bind_shapes(module);
  Record<MockupPart>(module, "MockupPart", "A part of a mock-up, as measured with calipers.")
      .field("name", &MockupPart::name, "of the product")
      .field("shape", &MockupPart::shape, "TurnedPart, BlockPart, RingPart or KeyPart")
      .done();
}

}  // namespace spotblue::python
