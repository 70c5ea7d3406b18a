#include "spotblue/report/materials_text.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <string_view>
#include <vector>

#include "report/measure_text.hpp"
#include "report/text_paint.hpp"
#include "report/text_table.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {
namespace {

std::string other_names(const Material& material) {
  std::vector<std::string_view> others;
  for (const std::string_view name : material_names()) {
    if (name != material.name && find_material(name) == &material) {
      others.push_back(name);
    }
  }
  return fmt::format("{}", fmt::join(others, ", "));
}

// 1 um/(m K) is 1/1.8 uin/(in deg F).
std::string expansion(double um_per_m_k, LengthUnit unit) {
  return unit == LengthUnit::mm ? fmt::format("{:.1f} um/(m K)", um_per_m_k)
                                : fmt::format("{:.2f} uin/(in F)", um_per_m_k / 1.8);
}

std::string strength(const Material& material, LengthUnit unit) {
  return material.yield_mpa
             ? "yields at " + measure_text(megapascals(*material.yield_mpa), unit)
             : "breaks at " +
                   measure_text(megapascals(material.tensile_strength_mpa.value_or(0.0)), unit);
}

std::string source(const Material& material) {
  return material.source == "memory"                           ? "from memory"
         : material.source.find("memory") != std::string::npos ? "partly from memory"
                                                               : "seen";
}

}  // namespace

std::string materials_text(const TextStyle& style) {
  TextTable table({{"material"},
                   {"kind"},
                   {"also called"},
                   {"condition"},
                   {"stiffness"},
                   {"expansion"},
                   {"strength"},
                   {"values"}});
  for (const Material& material : materials()) {
    table.add({std::string(material.name), std::string(word_of(material.kind)),
               other_names(material), std::string(material.condition),
               measure_text(megapascals(1000.0 * material.youngs_modulus_gpa), style.unit),
               expansion(material.expansion_per_mk, style.unit), strength(material, style.unit),
               source(material)});
  }
  const Paint paint(style.colour);
  return fitted_text(
      paint.heading("Materials that a job may name") + '\n' +
          table.text(kTableIndent, style.width) +
          fmt::format("\nSoft ones, known by name only: {}\n", fmt::join(soft_materials(), ", ")) +
          "Values serve to compare and to warn, not to prove strength; old castings and unmarked "
          "bar may be far below them. One of your own goes into [[materials]] of the job.\n",
      style.width);
}

}  // namespace spotblue
