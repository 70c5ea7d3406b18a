// Prints press fits and chains of rings with what spotblue makes of them, as JSON, for
// press_fit_judge.py to solve again by other means.

#include <cstddef>
#include <iostream>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "spotblue/mechanics/press_fit.hpp"
#include "spotblue/mechanics/sleeve_chain.hpp"

namespace {

using nlohmann::json;
using spotblue::ChainRing;
using spotblue::Elastic;

const Elastic kSteel{"steel", 205000.0, 0.29, 11.7e-6, 530.0, {}, spotblue::GivesWay::ductile};
const Elastic kBronze{"bronze", 100000.0, 0.34, 18e-6, 138.0, {}, spotblue::GivesWay::ductile};
const Elastic kIron{"iron", 84000.0, 0.22, 10.8e-6, {}, 138.0, spotblue::GivesWay::brittle};
const Elastic kAluminium{"al", 69000.0, 0.33, 23.6e-6, 276.0, {}, spotblue::GivesWay::ductile};

json ring(const ChainRing& given) {
  return {{"inner", given.free.inner_mm},
          {"outer", given.free.outer_mm},
          {"modulus", given.free.material.youngs_modulus_mpa},
          {"poisson", given.free.material.poisson_ratio},
          {"expansion", given.free.material.expansion_per_k},
          {"temperature", given.temperature_c}};
}

json chain(const std::string& name, const std::vector<ChainRing>& rings) {
  const spotblue::ChainState state = spotblue::sleeve_chain(rings);
  json out{{"name", name}, {"rings", json::array()}, {"pressures", json::array()}};
  for (std::size_t i = 0; i < rings.size(); ++i) {
    json one = ring(rings[i]);
    one["bore"] = state.rings[i].bore_mm;
    one["outside"] = state.rings[i].outside_mm;
    one["bore_hoop"] = state.rings[i].loaded.bore.hoop_mpa;
    one["outside_hoop"] = state.rings[i].loaded.outside.hoop_mpa;
    out["rings"].push_back(one);
  }
  for (const spotblue::InterfaceState& interface : state.interfaces) {
    out["pressures"].push_back(interface.pressure_mpa);
  }
  return out;
}

// The press fit of two rings, told as free sizes that overlap by its interference.
json press() {
  spotblue::PressFit fit;
  fit.joint_mm = 44.0;
  fit.interference_mm = 0.05;
  fit.hub = kIron;
  fit.inner = kBronze;
  fit.stretches = {{20.0, 80.0, 30.0}};
  const spotblue::StretchState state = spotblue::press_fit(fit).stretches.front();
  json inner = ring({{30.0, 44.025, kBronze}, 20.0});
  inner["bore"] = 30.0 + state.inner.bore_change_mm;
  inner["outside"] = 44.025 + state.inner.outside_change_mm;
  inner["bore_hoop"] = state.inner.bore.hoop_mpa;
  inner["outside_hoop"] = state.inner.outside.hoop_mpa;
  json hub = ring({{43.975, 80.0, kIron}, 20.0});
  hub["bore"] = 43.975 + state.hub.bore_change_mm;
  hub["outside"] = 80.0 + state.hub.outside_change_mm;
  hub["bore_hoop"] = state.hub.bore.hoop_mpa;
  hub["outside_hoop"] = state.hub.outside.hoop_mpa;
  return {{"name", "press fit, bronze bush in grey iron"},
          {"rings", {inner, hub}},
          {"pressures", {state.pressure_mpa}}};
}

}  // namespace

int main() {
  json all = json::array();
  all.push_back(press());
  all.push_back(chain("hollow shaft, bush and hub, all pressed", {{{10.0, 30.02, kSteel}, 20.0},
                                                                  {{30.0, 44.05, kBronze}, 20.0},
                                                                  {{44.0, 90.0, kSteel}, 20.0}}));
  all.push_back(chain("solid shaft free in a pressed bush, cold", {{{0.0, 29.93, kSteel}, 20.0},
                                                                   {{30.0, 44.05, kBronze}, 20.0},
                                                                   {{44.0, 90.0, kSteel}, 20.0}}));
  all.push_back(
      chain("the same warm: the bush closes on the shaft", {{{0.0, 29.97, kSteel}, 150.0},
                                                            {{30.0, 44.05, kBronze}, 150.0},
                                                            {{44.0, 90.0, kSteel}, 120.0}}));
  all.push_back(chain("an aluminium hub that lets go when warm",
                      {{{30.0, 44.03, kSteel}, 120.0}, {{44.0, 90.0, kAluminium}, 120.0}}));
  all.push_back(chain("thin bush in a thin ring",
                      {{{40.0, 44.02, kBronze}, 20.0}, {{44.0, 48.0, kSteel}, 20.0}}));
  std::cout << all.dump(2) << '\n';
  return 0;
}
