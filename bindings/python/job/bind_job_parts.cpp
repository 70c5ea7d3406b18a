#include "python/job/bind_job_entries.hpp"
#include "python/values/record_fields.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue::python {
namespace {

void bind_part_entries(py::module_& module) {
  choice<PartState>(module, "PartState", "Whether a part exists.", {"as found", "to make"});
  choice<SizesMeant>(module, "SizesMeant", "Whether modelled sizes are nominal or as measured.",
                     {"basic", "actual"});
  choice<StockForm>(module, "StockForm", "The form of a piece of stock.",
                    {"bar", "tube", "slug", "plate"});
  Record<Stock> stock(module, "StockPiece",
                      "What a part is to be cut from; None where a form has "
                      "no such size.");
  stock.field("form", &Stock::form, "bar, tube, slug or plate");
  optional_length(stock, "diameter_mm", &Stock::diameter, "outside");
  optional_length(stock, "inner_diameter_mm", &Stock::inner_diameter, "of a tube");
  optional_length(stock, "length_mm", &Stock::length, "mm");
  optional_length(stock, "width_mm", &Stock::width, "of a plate");
  optional_length(stock, "thickness_mm", &Stock::thickness, "of a plate");
  stock.done();
  Record<JobPart> part(module, "JobPart", "What is known of a part.");
  part.field("part", &JobPart::part, "product id, or an occurrence path")
      .field("material", &JobPart::material, "empty when not known");
  part.field("state", &JobPart::state, "\"as found\" or \"to make\"");
  part.field("sizes", &JobPart::sizes, "\"basic\" or \"actual\"");
  part.field("irreplaceable", &JobPart::irreplaceable, "there is no second")
      .field("stock", &JobPart::stock, "StockPiece or None")
      .field("running_c", &JobPart::running_c, "temperature when running, or None")
      .field("springs", &JobPart::springs, "is sprung in by hand")
      .field("line", &JobPart::line, "of the job file; 0 in code")
      .done();
  Record<OwnMaterial>(module, "OwnMaterial", "A material of the job's own.")
      .field("name", &OwnMaterial::name, "as parts call it")
      .field("youngs_modulus_gpa", &OwnMaterial::youngs_modulus_gpa, "GPa")
      .field("poisson_ratio", &OwnMaterial::poisson_ratio, "0 to 0.5")
      .field("expansion_um_per_m_k", &OwnMaterial::expansion_um_per_m_k, "um/(m K)")
      .field("yield_mpa", &OwnMaterial::yield_mpa, "or None")
      .field("tensile_mpa", &OwnMaterial::tensile_mpa, "of a brittle material, or None")
      .field("line", &OwnMaterial::line, "of the job file; 0 in code")
      .done();
}

void bind_measured(py::module_& module) {
  Record<MeasuredSize> size(module, "MeasuredSize", "A size taken with an instrument.");
  size.field("feature", &MeasuredSize::feature, "\"Wheel: bore 44\"")
      .length("value_mm", &MeasuredSize::value, "mm");
  optional_length(size, "uncertainty_mm", &MeasuredSize::uncertainty, "expanded, k = 2, or None");
  size.field("line", &MeasuredSize::line, "of the job file; 0 in code").done();
  Record<MeasuredGap> gap(module, "MeasuredGap", "A gap between two faces taken with a feeler.");
  gap.field("a", &MeasuredGap::a, "a face's name")
      .field("b", &MeasuredGap::b, "a face's name")
      .length("value_mm", &MeasuredGap::value, "mm");
  optional_length(gap, "uncertainty_mm", &MeasuredGap::uncertainty, "expanded, k = 2, or None");
  gap.field("line", &MeasuredGap::line, "of the job file; 0 in code").done();
  Record<PartLength> length(module, "PartLength", "The distance between two faces of one part.");
  length.field("a", &PartLength::a, "a face's name").field("b", &PartLength::b, "a face's name");
  optional_length(length, "measured_mm", &PartLength::measured, "or None");
  optional_length(length, "uncertainty_mm", &PartLength::uncertainty, "expanded, k = 2, or None");
  maybe_limits(length, "limits_mm", &PartLength::limits, "(lower, upper) or None");
  length.field("line", &PartLength::line, "of the job file; 0 in code").done();
  Record<Surface>(module, "Surface", "The roughness of one feature.")
      .field("feature", &Surface::feature, "its name")
      .field("rz_um", &Surface::rz_um, "peak-to-valley height Rz")
      .field("line", &Surface::line, "of the job file; 0 in code")
      .done();
}

}  // namespace

void bind_job_parts(py::module_& module) {
  bind_part_entries(module);
  bind_measured(module);
}

}  // namespace spotblue::python
