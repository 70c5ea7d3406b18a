#include "python/values/numbers.hpp"
#include "spotblue/mechanics/stock.hpp"

namespace spotblue::python {
namespace {

void bind_stock_values(py::module_& module) {
  bind_records<RoundStock, BlockStock, RoundPart, FlatSidedPart, StockMargin, StockCheck>(module);
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
