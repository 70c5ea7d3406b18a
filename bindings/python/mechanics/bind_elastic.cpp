#include "python/values/numbers.hpp"
#include "spotblue/mechanics/elastic.hpp"
#include "spotblue/mechanics/sleeve_chain.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue::python {
namespace {

void bind_ring(py::module_& module) {
  Record<Ring>(module, "Ring", "A thick ring, or a solid disc where inner is 0, mm.")
      .field("inner_mm", &Ring::inner_mm, "Diameter, mm, 0 or more.")
      .field("outer_mm", &Ring::outer_mm, "Diameter, mm, > inner.")
      .field("material", &Ring::material, "Its elastic values.")
      .done();
  Record<RingLoad>(module, "RingLoad", "Pressures on a ring's surfaces, MPa, 0 or more.")
      .field("inside_mpa", &RingLoad::inside_mpa, "MPa; 0 for a solid disc.")
      .field("outside_mpa", &RingLoad::outside_mpa, "MPa.")
      .done();
  Record<SurfaceStress>(module, "SurfaceStress", "Stresses at a surface, MPa, tension positive.")
      .field("hoop_mpa", &SurfaceStress::hoop_mpa, "MPa.")
      .field("radial_mpa", &SurfaceStress::radial_mpa, "MPa.")
      .field("equivalent_mpa", &SurfaceStress::equivalent_mpa, "Von Mises, MPa.")
      .done();
  Record<RingState>(module, "RingState", "Stresses and growth of a loaded ring.")
      .field("bore", &RingState::bore, "Stress at the bore; the centre of a solid disc, MPa.")
      .field("outside", &RingState::outside, "Stress at the outside, MPa.")
      .field("bore_change_mm", &RingState::bore_change_mm, "Of the diameter, mm, growth positive.")
      .field("outside_change_mm", &RingState::outside_change_mm,
             "Of the diameter, mm, growth positive.")
      .done();
  module.def("loaded_ring", &loaded_ring, py::arg("ring"), py::arg("load"),
             R"(Stresses and growth of one ring under even pressure, Lame in plane stress.

Args:
    ring: diameters in mm.
    load: pressures in MPa, 0 or more.
Raises: BadInputError naming the argument out of range.)");
  module.def("utilisation", &utilisation, py::arg("stress"), py::arg("material"),
             R"(Share of its strength that a surface uses, 1 at the limit.

Args:
    stress: MPa.
    material: ductile ones by von Mises and yield, brittle ones by the greatest tension.
Returns: None where the strength is not known.)");
}

void bind_chain(py::module_& module) {
  Record<ChainRing>(module, "ChainRing", "A ring with its free sizes at 20 C and its temperature.")
      .field("free", &ChainRing::free, "Free sizes at 20 C, mm.")
      .field("temperature_c", &ChainRing::temperature_c, "Degrees C, > -273.15.")
      .done();
  Record<ChainRingState>(module, "ChainRingState", "A ring of the chain, unloaded and loaded.")
      .field("free_bore_mm", &ChainRingState::free_bore_mm, "At its temperature, unloaded, mm.")
      .field("free_outside_mm", &ChainRingState::free_outside_mm, "The same of its outside, mm.")
      .field("bore_mm", &ChainRingState::bore_mm, "At its temperature, loaded, mm.")
      .field("outside_mm", &ChainRingState::outside_mm, "The same of its outside, mm.")
      .field("loaded", &ChainRingState::loaded, "Its stresses, MPa.")
      .done();
  Record<InterfaceState>(module, "InterfaceState", "Between one ring and the next outward.")
      .field("interference_mm", &InterfaceState::interference_mm,
             "Of free sizes at temperature, diametral, mm; negative is clearance.")
      .field("pressure_mpa", &InterfaceState::pressure_mpa, "MPa, 0 where open.")
      .field("gap_mm", &InterfaceState::gap_mm, "Diametral, mm, 0 where they touch.")
      .done();
  Record<ChainState>(module, "ChainState", "Rings one in another, solved together.")
      .field("rings", &ChainState::rings, "As given, from the innermost out.")
      .field("interfaces", &ChainState::interfaces, "One less than rings.")
      .done();
  module.def(
      "sleeve_chain", [](const std::vector<ChainRing>& rings) { return sleeve_chain(rings); },
      py::arg("rings"), R"(Solves rings one in another: which touch, at what pressure, what sizes.

Args:
    rings: from the innermost out, at least one; only the innermost may be solid.
Raises: BadInputError naming the ring and value out of range.)");
}

}  // namespace

void bind_elastic(py::module_& module) {
  choice<GivesWay>(module, "GivesWay", "How a material gives way.", {"ductile", "brittle"});
  Record<Elastic>(module, "Elastic", "Elastic, thermal and strength values of one part.")
      .field("name", &Elastic::name, "As a finding shows it.")
      .field("youngs_modulus_mpa", &Elastic::youngs_modulus_mpa, "MPa, > 0.")
      .field("poisson_ratio", &Elastic::poisson_ratio, "Over 0, under 0.5.")
      .field("expansion_per_k", &Elastic::expansion_per_k, "Linear, 1/K: 11.7e-6 for steel.")
      .field("yield_mpa", &Elastic::yield_mpa, "MPa or None.")
      .field("tensile_mpa", &Elastic::tensile_mpa, "Of brittle materials, MPa or None.")
      .field("gives_way", &Elastic::gives_way, "Ductile or brittle.")
      .done();
  module.def("elastic_of", &elastic_of, py::arg("material"),
             "The values of a material of the table, in MPa and 1/K; brittle when it has a tensile "
             "strength and no yield.");
  module.def("require_elastic", &require_elastic, py::arg("elastic"), py::arg("argument"),
             R"(Refuses values that break their rule.

Args:
    elastic: MPa and 1/K.
    argument: its name in the error's text.
Raises: BadInputError naming `argument`.)");
  bind_ring(module);
  bind_chain(module);
}

}  // namespace spotblue::python
