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
  bind_check_stock<RoundPart, BlockStock>(module, "A turned part out of a plate, any way up; mm.");
  bind_check_stock<FlatSidedPart, RoundStock>(
      module, "A flat-sided part out of bar, its longest size along the bar; mm.");
  bind_check_stock<FlatSidedPart, BlockStock>(module,
                                              "A flat-sided part out of a plate, any way up; mm.");
  module.def(
      "left_over_mm",
      [](double stock_length_mm, const std::vector<double>& lengths_mm, double parting_mm,
         double stub_mm) { return left_over_mm(stock_length_mm, lengths_mm, parting_mm, stub_mm); },
      py::arg("stock_length_mm"), py::arg("lengths_mm"), py::kw_only(), py::arg("parting_mm"),
      py::arg("stub_mm"),
      R"(What is left over of a bar when parts are parted off it; negative: too short.

Args:
    stock_length_mm: more than 0.
    lengths_mm: of the parts with what is cleaned off their ends, each more than 0.
    parting_mm: that each cut takes, 0 or more; the last part needs none where no stub is held.
    stub_mm: that stays in the chuck, 0 or more.
Returns: mm.)");
}

}  // namespace spotblue::python
