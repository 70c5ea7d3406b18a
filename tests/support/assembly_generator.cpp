#include "support/assembly_generator.hpp"

#include <BRep_Builder.hxx>
#include <TopoDS_Compound.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Ax2.hxx>
#include <gp_Quaternion.hxx>

namespace spotblue::test {
namespace {

gp_Trsf random_pose(Chance& chance, double reach) {
  gp_Trsf pose;
  const gp_Quaternion turn(chance.between(-1, 1), chance.between(-1, 1), chance.between(-1, 1),
                           chance.between(-1, 1));
  pose.SetRotation(turn.Normalized());
  pose.SetTranslationPart(gp_Vec(chance.between(-reach, reach), chance.between(-reach, reach),
                                 chance.between(-reach, reach)));
  return pose;
}

gp_Trsf looking_glass() {
  gp_Trsf mirror;
  mirror.SetMirror(gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(1, 0, 0)));
  return mirror;
}

// The placement seen in the looking-glass: a proper one again.
gp_Trsf seen(const gp_Trsf& at, bool mirrored) {
  return mirrored ? looking_glass() * at * looking_glass() : at;
}

constexpr double kFar = 1e6;  // mm: a kilometre

gp_Trsf far_shift(Chance& chance) {
  const double angle = chance.between(0.0, kFullTurn);
  const double up = chance.between(-0.9, 0.9);
  const double level = std::sqrt(1.0 - up * up);
  return shift(kFar * level * std::cos(angle), kFar * level * std::sin(angle), kFar * up);
}

template <class Seat>
void append(std::vector<Seat>& all, const std::vector<Seat>& some, std::size_t by,
            std::size_t Seat::*first, std::size_t Seat::*second) {
  for (const Seat& seat : some) {
    all.push_back(seat);
    all.back().*first += by;
    all.back().*second += by;
  }
}

void append(Truth& all, const Truth& some, std::size_t by) {
  append(all.radial, some.radial, by, &TrueRadial::hole, &TrueRadial::shaft);
  append(all.axial, some.axial, by, &TrueAxial::a, &TrueAxial::b);
  append(all.taper, some.taper, by, &TrueTaper::hole, &TrueTaper::shaft);
  append(all.width, some.width, by, &TrueWidth::slot, &TrueWidth::key);
  append(all.threads, some.threads, by, &TrueThread::hole, &TrueThread::screw);
  append(all.fouls, some.fouls, by, &TrueFoul::a, &TrueFoul::b);
}

// Adds what holds the components; its place among the nodes.
std::size_t add_holder(std::vector<Node>& nodes, const std::string& name,
                       const std::vector<Node::Component>& components) {
  nodes.push_back({name, {}, components});
  return nodes.size() - 1;
}

class Tree {
 public:
  Tree(Assembly& assembly, const Wrapping& wrapping, const gp_Trsf& drawn_at)
      : out_(assembly), wrapping_(wrapping), drawn_at_(drawn_at) {}

  // Adds the station's parts; what it needs to be placed any number of times.
  void add_parts(const Station& station, std::size_t number) {
    first_open_ = out_.nodes.size();
    for (const TopoDS_Shape& shape : station.open) {
      Node node;
      node.name = "Loose faces " + std::to_string(out_.nodes.size() + 1);
      node.shape = drawn(shape);
      out_.nodes.push_back(node);
      ++out_.open_products;
    }
    first_node_ = out_.nodes.size();
    if (wrapping_.one_product) {
      add_product(station, number);
      return;
    }
    for (const Part& part : station.parts) {
      Node node;
      node.name = wrapping_.repeated_names ? part.name : part.name + " " + std::to_string(number);
      node.shape = drawn(part.shape);
      out_.nodes.push_back(node);
      ++out_.products;
    }
  }

  void place(const Station& station, const gp_Trsf& at, std::vector<Node::Component>& into,
             const gp_Trsf& frame) {
    const std::size_t by = out_.occurrences.size();
    if (wrapping_.one_product) {
      place_product(station, at, into, frame);
    } else {
      place_parts(station, at, into, frame);
    }
    for (std::size_t i = 0; i < station.open.size(); ++i) {
      into.push_back({first_open_ + i, frame.Inverted() * at * drawn_at_.Inverted()});
    }
    append(out_.truth, station.truth, by);
  }

 private:
  // As it is written: in the looking-glass, and where it is drawn.
  [[nodiscard]] TopoDS_Shape drawn(const TopoDS_Shape& shape) const {
    const gp_Trsf by = wrapping_.mirrored ? drawn_at_ * looking_glass() : drawn_at_;
    return wrapping_.mirrored || wrapping_.far == Far::drawn ? moved(shape, by) : shape;
  }
  [[nodiscard]] gp_Trsf own_place(const gp_Trsf& at) const {
    return seen(at, wrapping_.mirrored) * drawn_at_.Inverted();
  }

  void add_product(const Station& station, std::size_t number) {
    TopoDS_Compound all;
    const BRep_Builder builder;
    builder.MakeCompound(all);
    bodies_.clear();
    for (const Placed& placed : station.placed) {
      bodies_.push_back(drawn(moved(station.parts[placed.part].shape, placed.at)));
      builder.Add(all, bodies_.back());
      ++out_.products;
    }
    Node node;
    node.name = "Product " + std::to_string(number);
    node.shape = all;
    out_.nodes.push_back(node);
  }

  void place_product(const Station& station, const gp_Trsf& at, std::vector<Node::Component>& into,
                     const gp_Trsf& frame) {
    const gp_Trsf own = at * drawn_at_.Inverted();
    for (std::size_t i = 0; i < bodies_.size(); ++i) {
      const auto body = bodies_.size() > 1 ? std::optional(static_cast<int>(i) + 1) : std::nullopt;
      out_.occurrences.push_back({out_.nodes[first_node_].name, body, own, bodies_[i],
                                  station.parts[station.placed[i].part].fitted});
    }
    into.push_back({first_node_, frame.Inverted() * own});
  }

  void place_parts(const Station& station, const gp_Trsf& at, std::vector<Node::Component>& into,
                   const gp_Trsf& frame) {
    for (const Placed& placed : station.placed) {
      const std::size_t node = first_node_ + placed.part;
      const gp_Trsf own = own_place(placed.at);
      out_.occurrences.push_back({out_.nodes[node].name, std::nullopt, at * own,
                                  out_.nodes[node].shape, station.parts[placed.part].fitted});
      if (!wrapping_.nested) {
        into.push_back({node, at * own});
      }
    }
    if (wrapping_.nested) {
      if (sub_assembly_ < first_node_ || sub_assembly_ >= out_.nodes.size()) {
        sub_assembly_ = add_sub_assembly(station);
      }
      into.push_back({sub_assembly_, frame.Inverted() * at});
    }
  }

  std::size_t add_sub_assembly(const Station& station) {
    std::vector<Node::Component> components;
    for (const Placed& placed : station.placed) {
      components.push_back({first_node_ + placed.part, own_place(placed.at)});
    }
    return add_holder(out_.nodes, "Station " + std::to_string(out_.nodes.size()), components);
  }

  Assembly& out_;
  const Wrapping& wrapping_;
  gp_Trsf drawn_at_;
  std::vector<TopoDS_Shape> bodies_;
  std::size_t first_node_ = 0;
  std::size_t first_open_ = 0;
  std::size_t sub_assembly_ = static_cast<std::size_t>(-1);
};

// How far apart stations stand so that none comes near another.
double grid_pitch(const std::vector<Station>& stations) {
  double pitch = 0.0;
  for (const Station& station : stations) {
    pitch = std::max(pitch, 2.0 * station.reach + 10.0);
  }
  return pitch;
}

}  // namespace

std::string Assembly::description() const {
  constexpr std::array<const char*, 3> kSchemas{"AP203", "AP214", "AP242"};
  constexpr std::array<const char*, 3> kUnits{"mm", "inch", "metre"};
  std::string text = "seed " + std::to_string(seed) + ":";
  for (const std::string& kind : kinds) {
    text += " " + kind + ",";
  }
  text += std::string(" ") + kSchemas.at(static_cast<std::size_t>(wrapping.schema)) + ", " +
          kUnits.at(static_cast<std::size_t>(wrapping.unit));
  text += wrapping.nested ? ", nested" : ", flat";
  text += wrapping.mirrored ? ", mirrored" : "";
  text += wrapping.repeated_names ? ", repeated names" : "";
  text += wrapping.far == Far::placed ? ", placed far off" : "";
  text += wrapping.far == Far::drawn ? ", drawn far off" : "";
  text += wrapping.one_product ? ", one product" : "";
  text += wrapping.curves == SurfaceCurves::written ? ", with PCURVEs" : ", without PCURVEs";
  return text;
}

Wrapping wrapping_of(std::uint64_t seed) {
  Chance chance(seed * 7919 + 17);
  Wrapping wrapping;
  wrapping.seed = seed;
  wrapping.nested = chance.in(0.6);
  wrapping.mirrored = chance.in(0.3);
  wrapping.repeated_names = chance.in(0.25);
  wrapping.schema = static_cast<Schema>(chance.below(3));
  wrapping.unit = static_cast<FileUnit>(chance.below(3));
  return wrapping;
}

Wrapping any_wrapping_of(std::uint64_t seed) {
  Wrapping wrapping = wrapping_of(seed);
  Chance chance(seed * 6'700'417 + 29);
  wrapping.far = chance.in(0.3) ? Far::placed : chance.in(0.15) ? Far::drawn : Far::no;
  wrapping.one_product = chance.in(0.3);
  wrapping.curves = chance.in(0.5) ? SurfaceCurves::written : SurfaceCurves::left_out;
  return wrapping;
}

void write_assembly(const Assembly& assembly, const std::filesystem::path& file) {
  const Wrapping& wrapping = assembly.wrapping;
  write_step(assembly.nodes, wrapping.schema, wrapping.unit, file, wrapping.curves);
}

std::vector<Station> generate_stations(std::uint64_t seed, FaceStyle faces) {
  using Make = Station (*)(Shop&);
  constexpr std::array<Make, 17> kMakes{running, running, sleeve,   sleeve, cross_pin,      taper,
                                        flanged, flanged, shoulder, plates, ring_in_groove, keyed,
                                        screwed, fork,    tongue,   decoy,  block_foul};
  Shop shop{Chance(seed), Chance(seed + 1'000'003), faces};
  std::vector<Station> stations;
  const std::size_t count = 4 + shop.sizes.below(3);
  for (std::size_t i = 0; i < count; ++i) {
    stations.push_back(kMakes.at(shop.sizes.below(kMakes.size()))(shop));
  }
  return stations;
}

Assembly assemble(std::uint64_t seed, const std::vector<Station>& stations,
                  const Wrapping& wrapping) {
  Assembly assembly;
  assembly.seed = seed;
  assembly.wrapping = wrapping;
  Chance chance(wrapping.seed * 104'729 + 5);
  gp_Trsf pose = wrapping.posed ? random_pose(chance, 100.0) : gp_Trsf();
  Chance far(wrapping.seed * 15'485'863 + 3);
  pose = wrapping.far == Far::placed ? far_shift(far) * pose : pose;
  const double pitch = grid_pitch(stations);
  const gp_Trsf group_frame = random_pose(chance, 50.0);
  std::vector<Node::Component> at_root;
  std::vector<Node::Component> in_group;
  Tree tree(assembly, wrapping, wrapping.far == Far::drawn ? far_shift(far) : gp_Trsf());
  std::size_t cell = 0;
  const auto next_place = [&] {
    gp_Trsf at = wrapping.posed ? random_pose(chance, 0.0) : gp_Trsf();
    const std::size_t row = cell / 3;
    at.SetTranslationPart(gp_Vec(pitch * static_cast<double>(cell % 3) - pitch,
                                 pitch * static_cast<double>(row) - pitch, 0.0));
    ++cell;
    return seen(pose * at, wrapping.mirrored);
  };
  for (std::size_t i = 0; i < stations.size(); ++i) {
    const Station& station = stations[i];
    assembly.kinds.push_back(station.kind);
    tree.add_parts(station, i + 1);
    const bool in_root = chance.in(0.4);
    const std::size_t times = i + 1 < stations.size() || !chance.in(0.5) ? 1 : 2;
    for (std::size_t again = 0; again < times; ++again) {
      tree.place(station, next_place(), in_root || !wrapping.nested ? at_root : in_group,
                 in_root || !wrapping.nested ? gp_Trsf() : group_frame);
    }
  }
  if (!in_group.empty()) {
    at_root.push_back({add_holder(assembly.nodes, "Group", in_group), group_frame});
  }
  add_holder(assembly.nodes, "Assembly", at_root);
  return assembly;
}

Assembly generate_assembly(std::uint64_t seed, const Wrapping& wrapping) {
  return assemble(seed, generate_stations(seed, wrapping.faces), wrapping);
}

}  // namespace spotblue::test
