#include "python/bind.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/geometry/foul.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::python {
void bind_settings(py::module_& module) {
  choice<Completeness>(module);
  choice<ReadIn>(module);
  bind_records<SeatSettings, ReadLimits>(module);
}

void bind_seats(py::module_& module) {
  bind_record<FeatureRef>(module);
  bind_views<ClearanceRange, RadialSeat, TaperSeat, Thread, AxialSeat, WidthSeat>(module);
  bind_views<Foul, UnnamedScrew, Contact, FoulEffort>(module);
  bind_view<FoulReport, std::shared_ptr<FoulReport>>(module);
  bind_view<CentreLine>(module);
  bind_view<Seats, std::shared_ptr<Seats>>(module);
}

}  // namespace spotblue::python
