#include "python/bind.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/geometry/clash.hpp"
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
  bind_views<Clash, UnnamedScrew, Contact, ClashEffort>(module);
  bind_view<ClashReport, std::shared_ptr<ClashReport>>(module);
  bind_view<CentreLine>(module);
  bind_view<Seats, std::shared_ptr<Seats>>(module);
}

}  // namespace spotblue::python
