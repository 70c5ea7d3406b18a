#pragma once
/// @file
/// What a job knows of its parts: what they are of and what was measured of them.

#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/job/job_line.hpp"

namespace spotblue {

/// Whether a part exists and is measured, or is still to be cut.
enum class PartState { as_found, to_make };
constexpr auto describe(const PartState*) {
  return words("Whether a part exists.", "as found", "to make");
}

/// Whether 44 in the model means "44, and a class makes the limits" or that very size: the one
/// wanted of a part to make, the one that a part has.
enum class Drawn { at_nominal, at_the_size_wanted };
constexpr auto describe(const Drawn*) {
  return words("What the sizes in the model are.", "at nominal", "at the size wanted");
}

enum class StockForm { bar, tube, slug, plate };
constexpr auto describe(const StockForm*) {
  return words("The form of a piece of stock.", "bar", "tube", "slug", "plate");
}

struct Stock {
  StockForm form = StockForm::bar;
  std::optional<Length> diameter;
  std::optional<Length> inner_diameter;
  std::optional<Length> length;
  std::optional<Length> width;
  std::optional<Length> thickness;
};
constexpr void describe(auto& fields, const Stock*) {
  fields
      .value("StockPiece",
             "What a part is to be cut from; the sizes that a form does not have are absent.")
      .member("form", &Stock::form, "bar, tube, slug or plate")
      .member("diameter_mm", &Stock::diameter, "bar, tube, slug: outside")
      .member("inner_diameter_mm", &Stock::inner_diameter, "of a tube")
      .member("length_mm", &Stock::length, "mm")
      .member("width_mm", &Stock::width, "of a plate")
      .member("thickness_mm", &Stock::thickness, "of a plate");
}

struct SharedStock {
  Stock piece;
  std::vector<std::string> parts;
  Length parting, stub;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const SharedStock*) {
  fields.value("SharedStock", "One piece of stock that several parts are cut from.")
      .member("piece", &SharedStock::piece, "StockPiece")
      .member("parts", &SharedStock::parts,
              "product ids in the order they are cut; a part stands once for each piece of it")
      .member("parting_mm", &SharedStock::parting, "that each cut takes, 0 or more")
      .member("stub_mm", &SharedStock::stub, "that stays in the chuck, 0 or more")
      .member("line", &SharedStock::line, "of the job file, or of one it includes; None in code");
}

struct JobPart {
  std::string part;
  std::string material;
  PartState state = PartState::as_found;
  Drawn drawn = Drawn::at_the_size_wanted;
  bool irreplaceable = false;
  std::optional<Stock> stock;
  std::optional<double> running_c;
  bool springs = false;
  bool split = false;
  std::optional<Length> thickness;
  std::optional<Limits> squeeze;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const JobPart*) {
  fields.value("JobPart", "What is known of a part.")
      .member("part", &JobPart::part, "product id, or an occurrence path for that one only")
      .member("material", &JobPart::material, "empty when not known")
      .member("state", &JobPart::state, "\"as found\" or \"to make\"")
      .member("drawn", &JobPart::drawn, "\"at nominal\" or \"at the size wanted\"")
      .member("irreplaceable", &JobPart::irreplaceable, "there is no second")
      .member("stock", &JobPart::stock, "StockPiece or None")
      .member("running_c", &JobPart::running_c,
              "its temperature when running; the job's when absent")
      .member("springs", &JobPart::springs,
              "is sprung in by hand: a shoulder or bore smaller than it lets it pass")
      .member("split", &JobPart::split, "is put round its mates in halves")
      .member("thickness_mm", &JobPart::thickness, "of a soft part before it is squeezed, or None")
      .pair("squeeze_mm", &JobPart::squeeze,
            "least and greatest by which it is thinner in its place; of a soft part, or None")
      .member("line", &JobPart::line, "of the job file, 1-based; None for jobs made in code");
}

struct MeasuredSize {
  std::string feature;
  Length value;
  std::optional<Length> uncertainty;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const MeasuredSize*) {
  fields.value("MeasuredSize", "A size taken with an instrument; it replaces the model's.")
      .member("feature", &MeasuredSize::feature, "\"Wheel: bore 44\"")
      .member("value_mm", &MeasuredSize::value, "mm")
      .member("uncertainty_mm", &MeasuredSize::uncertainty,
              "expanded, k = 2; the default one when absent")
      .member("line", &MeasuredSize::line, "of the job file, or of one it includes; None in code");
}

struct MeasuredGap {
  std::string a, b;
  Length value;
  std::optional<Length> uncertainty;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const MeasuredGap*) {
  fields
      .value(
          "MeasuredGap",
          "A gap between two faces taken with a feeler or an indicator; it replaces the model's.")
      .member("a", &MeasuredGap::a, "name of a face")
      .member("b", &MeasuredGap::b, "name of a face")
      .member("value_mm", &MeasuredGap::value, "mm")
      .member("uncertainty_mm", &MeasuredGap::uncertainty, "expanded, k = 2, or None")
      .member("line", &MeasuredGap::line, "of the job file, or of one it includes; None in code");
}

struct OwnMaterial {
  std::string name;
  double youngs_modulus_gpa = 0.0;
  double poisson_ratio = 0.0;
  double expansion_um_per_m_k = 0.0;
  std::optional<double> yield_mpa;
  std::optional<double> tensile_mpa;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const OwnMaterial*) {
  fields
      .value("OwnMaterial",
             "A material of the job's own; the missing numbers are unknown, not zero.")
      .member("name", &OwnMaterial::name, "as parts call it")
      .member("youngs_modulus_gpa", &OwnMaterial::youngs_modulus_gpa, "GPa")
      .member("poisson_ratio", &OwnMaterial::poisson_ratio, "0 to 0.5")
      .member("expansion_um_per_m_k", &OwnMaterial::expansion_um_per_m_k, "um/(m K)")
      .member("yield_mpa", &OwnMaterial::yield_mpa, "or None")
      .member("tensile_mpa", &OwnMaterial::tensile_mpa,
              "of a brittle material, in place of a yield")
      .member("line", &OwnMaterial::line, "of the job file, or of one it includes; None in code");
}

struct Surface {
  std::string feature;
  double rz_um = 0.0;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const Surface*) {
  fields.value("Surface", "The roughness of one feature, as peak-to-valley height Rz.")
      .member("feature", &Surface::feature, "its name")
      .member("rz_um", &Surface::rz_um, "0 or more")
      .member("line", &Surface::line, "of the job file, or of one it includes; None in code");
}

struct PartLength {
  std::string a, b;
  std::optional<Length> measured;
  std::optional<Length> uncertainty;
  std::optional<Limits> limits;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const PartLength*) {
  fields
      .value("PartLength",
             "The distance between two faces of one part, or how far it may be off: measured, or "
             "toleranced.")
      .member("a", &PartLength::a, "name of a face; both of one part")
      .member("b", &PartLength::b, "name of a face; both of one part")
      .member("measured_mm", &PartLength::measured, "replaces the model's")
      .member("uncertainty_mm", &PartLength::uncertainty, "expanded, k = 2, or None")
      .pair("limits_mm", &PartLength::limits, "limit sizes of a length still to be made")
      .member("line", &PartLength::line, "of the job file, or of one it includes; None in code");
}

}  // namespace spotblue
