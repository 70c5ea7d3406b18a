#include "python/values/numbers.hpp"
#include "spotblue/mechanics/stock.hpp"

namespace spotblue::python {
namespace {

void bind_stock_values(py::module_& module) {
  Record<RoundStock>(module, "RoundStock", "Bar, slug or tube, turned about its own axis, mm.")
      .field("diameter_mm", &RoundStock::diameter_mm, "mm, > 0.")
      .field("inner_mm", &RoundStock::inner_mm, "Hole of a tube, mm, under the diameter.")
      .field("length_mm", &RoundStock::length_mm, "mm; None: as long as needed.")
      .done();
  Record<BlockStock>(module, "BlockStock", "Plate or block, mm; None: as large as needed.")
      .field("length_mm", &BlockStock::length_mm, "mm or None.")
      .field("width_mm", &BlockStock::width_mm, "mm or None.")
      .field("thickness_mm", &BlockStock::thickness_mm, "mm or None.")
      .done();
  Record<RoundPart>(module, "RoundPart", "A turned part, mm.")
      .field("outside_mm", &RoundPart::outside_mm, "Greatest diameter, mm, > 0.")
      .field("bore_mm", &RoundPart::bore_mm, "Least bore right through, mm; 0 without one.")
      .field("length_mm", &RoundPart::length_mm, "mm, > 0.")
      .done();
  Record<FlatSidedPart>(module, "FlatSidedPart", "A part with flat sides: the box round it, mm.")
      .field("length_mm", &FlatSidedPart::length_mm, "mm, > 0.")
      .field("width_mm", &FlatSidedPart::width_mm, "mm, > 0.")
      .field("thickness_mm", &FlatSidedPart::thickness_mm, "mm, > 0.")
      .done();
  Record<StockMargin>(module, "StockMargin", "Room left at one size once both sides are cleaned.")
      .field("size", &StockMargin::size, "diameter, bore, length, width or thickness.")
      .field("margin_mm", &StockMargin::margin_mm, "mm, negative: too small.")
      .done();
  Record<StockCheck> check(module, "StockCheck", "Whether a part comes out of a piece of stock.");
  check.field("margins", &StockCheck::margins, "One for each size.")
      .field("volume_mm3", &StockCheck::volume_mm3, "Of the stock, mm3, or None.");
  check.done()
      .def_property_readonly("least_margin_mm", &StockCheck::least_margin_mm, "mm.")
      .def_property_readonly("fits", &StockCheck::fits, "Whether no margin is negative.");
}

template <class Part, class Stock>
void bind_check_stock(py::module_& module, const char* doc) {
  module.def(
      "check_stock",
      [](const Part& part, const Stock& stock, double cleaning_mm) {
        return check_stock(part, stock, cleaning_mm);
      },
      py::arg("part"), py::arg("stock"), py::kw_only(), py::arg("cleaning_mm"), doc);
}

}  // namespace

void bind_stock(py::module_& module) {
  bind_stock_values(module);
  bind_check_stock<RoundPart, RoundStock>(module, R"(A turned part out of bar or tube.

Args:
    part, stock: mm.
    cleaning_mm: metal to take off each side, mm, 0 or more.
Raises: BadInputError naming the argument out of range.)");
  bind_check_stock<RoundPart, BlockStock>(
      module, "A turned part out of a plate, its axis square to the plate; mm.");
  bind_check_stock<FlatSidedPart, RoundStock>(
      module, "A flat-sided part out of bar, its longest size along the bar; mm.");
  bind_check_stock<FlatSidedPart, BlockStock>(
      module, "A flat-sided part out of a plate, its least size through the plate; mm.");
}

}  // namespace spotblue::python
