#include "bench/bench_models.hpp"

#include <string>
#include <vector>

#include "support/solids.hpp"
#include "support/step_out.hpp"

namespace spotblue::test {
namespace {

constexpr double kPitch = 92.0;  // between stations; the housings are 90 square
constexpr double kBolts = 33.0;  // half the side of the bolts' square

std::vector<Drilled> bolt_square(double diameter) {
  return {{kBolts, kBolts, diameter},
          {-kBolts, kBolts, diameter},
          {kBolts, -kBolts, diameter},
          {-kBolts, -kBolts, diameter}};
}

TopoDS_Shape housing(double bore, double length) {
  std::vector<Drilled> holes = bolt_square(6.8);
  holes.push_back({0.0, 0.0, bore});
  return block({.x = {-45, 45}, .y = {-45, 45}, .z = {0, length}}, holes, {});
}

// A square flange, so that the bolts find it; the sleeve goes down the housing's bore.
TopoDS_Shape flanged_bush(double outer, double inner, double length) {
  std::vector<Drilled> holes = bolt_square(9.0);
  holes.push_back({0.0, 0.0, inner});
  const TopoDS_Shape flange =
      block({.x = {-44, 44}, .y = {-44, 44}, .z = {length, length + 8}}, holes, {});
  return fuse(flange, turned(bar(inner, outer, 0.0, length), {}));
}

TopoDS_Shape stepped_shaft(double size, double shoulder, double length, double groove) {
  const double r = size / 2;
  const TopoDS_Shape blank = turned({{0, -20},
                                     {r - 1, -20},
                                     {r, -19},
                                     {r, -12},
                                     {groove / 2, -12},
                                     {groove / 2, -10},
                                     {r, -10},
                                     {r, length + 11},
                                     {shoulder / 2, length + 11},
                                     {shoulder / 2, length + 40},
                                     {0, length + 40}},
                                    {});
  const TopoDS_Shape keyseat = block(
      {.x = {-4, 4}, .y = {shoulder / 2 - 4, shoulder}, .z = {length + 18, length + 36}}, {}, {});
  return cut(blank, keyseat);
}

TopoDS_Shape bolt(double length) {
  const TopoDS_Shape shank = turned({{0, length - 16},
                                     {3.5, length - 16},
                                     {4, length - 15.5},
                                     {4, length + 13},
                                     {0, length + 13}},
                                    {});
  return fuse(shank, hexagon(13.0, length + 8, length + 13));
}

// Appends the station's parts and the assembly of them; sizes vary with `number`.
void add_station(std::vector<Node>& nodes, std::size_t number) {
  const double vary = 0.013 * static_cast<double>(number);
  const double bore = 40.0 + vary;
  const double size = 30.0 + vary;
  const double length = 30.0 + vary;
  const std::string mark = std::string(" ").append(std::to_string(number));
  const std::size_t first = nodes.size();
  nodes.push_back({"Housing" + mark, housing(bore, length), {}});
  nodes.push_back({"Bush" + mark, flanged_bush(bore + 0.03, size + 0.05, length), {}});
  nodes.push_back({"Shaft" + mark, stepped_shaft(size, size + 14, length, size - 3), {}});
  nodes.push_back({"Washer" + mark, turned(bar(size + 0.6, size + 16, 0.0, 2.9), {}), {}});
  nodes.push_back({"Ring" + mark, turned(bar(size - 2.8, size + 6, 0.0, 1.9), {}), {}});
  nodes.push_back({"Bolt" + mark, bolt(length), {}});
  Node station{"Station" + mark, {}, {}};
  station.components = {{first, {}},
                        {first + 1, {}},
                        {first + 2, {}},
                        {first + 3, shift(0, 0, length + 8.05)},
                        {first + 4, shift(0, 0, -11.95)}};
  for (const Drilled& at : bolt_square(0.0)) {
    station.components.push_back({first + 5, shift(at.x, at.y, 0)});
  }
  nodes.push_back(station);
}

gp_Trsf grid(std::size_t i, std::size_t wide) {
  const std::size_t row = i / wide;
  return shift(kPitch * static_cast<double>(i % wide), kPitch * static_cast<double>(row), 0);
}

}  // namespace

void write_unique_stations(std::size_t count, const std::filesystem::path& file) {
  std::vector<Node> nodes;
  Node root{"Unique stations", {}, {}};
  for (std::size_t i = 0; i < count; ++i) {
    add_station(nodes, i + 1);
    root.components.push_back({nodes.size() - 1, grid(i, 10)});
  }
  nodes.push_back(root);
  write_step(nodes, Schema::ap214, FileUnit::mm, file, SurfaceCurves::left_out);
}

void write_instanced_stations(std::size_t count, const std::filesystem::path& file) {
  std::vector<Node> nodes;
  add_station(nodes, 1);
  Node root{"Instanced stations", {}, {}};
  for (std::size_t i = 0; i < count; ++i) {
    root.components.push_back({nodes.size() - 1, grid(i, 100)});
  }
  nodes.push_back(root);
  write_step(nodes, Schema::ap214, FileUnit::mm, file, SurfaceCurves::left_out);
}

}  // namespace spotblue::test
