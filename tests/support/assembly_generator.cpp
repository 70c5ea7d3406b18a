#include "support/assembly_generator.hpp"

#include <algorithm>
#include <array>
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
  append(all.clashes, some.clashes, by, &TrueClash::a, &TrueClash::b);
}

class Tree {
 public:
  Tree(Assembly& assembly, const Wrapping& wrapping) : out_(assembly), wrapping_(wrapping) {}

  // Adds the station's parts; what it needs to be placed any number of times.
  void add_parts(const Station& station, std::size_t number) {
    first_node_ = out_.nodes.size();
    for (const Part& part : station.parts) {
      Node node;
      node.name = wrapping_.repeated_names ? part.name : part.name + " " + std::to_string(number);
      node.shape = wrapping_.mirrored ? moved(part.shape, looking_glass()) : part.shape;
      out_.nodes.push_back(node);
      ++out_.products;
    }
  }

  void place(const Station& station, const gp_Trsf& at, std::vector<Node::Component>& into,
             const gp_Trsf& frame) {
    const std::size_t by = out_.occurrences.size();
    for (const Placed& placed : station.placed) {
      const std::size_t node = first_node_ + placed.part;
      const gp_Trsf own = seen(placed.at, wrapping_.mirrored);
      out_.occurrences.push_back({out_.nodes[node].name, at * own, out_.nodes[node].shape,
                                  station.parts[placed.part].fitted});
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
    append(out_.truth, station.truth, by);
  }

 private:
  std::size_t add_sub_assembly(const Station& station) {
    Node node;
    node.name = "Station " + std::to_string(out_.nodes.size());
    for (const Placed& placed : station.placed) {
      node.components.push_back({first_node_ + placed.part, seen(placed.at, wrapping_.mirrored)});
    }
    out_.nodes.push_back(node);
    return out_.nodes.size() - 1;
  }

  Assembly& out_;
  const Wrapping& wrapping_;
  std::size_t first_node_ = 0;
  std::size_t sub_assembly_ = static_cast<std::size_t>(-1);
};

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

std::vector<Station> generate_stations(std::uint64_t seed, FaceStyle faces) {
  using Make = Station (*)(Shop&);
  constexpr std::array<Make, 17> kMakes{running, running, sleeve,   sleeve, cross_pin,      taper,
                                        flanged, flanged, shoulder, plates, ring_in_groove, keyed,
                                        screwed, fork,    tongue,   decoy,  block_clash};
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
  const gp_Trsf pose = wrapping.posed ? random_pose(chance, 100.0) : gp_Trsf();
  const gp_Trsf group_frame = random_pose(chance, 50.0);
  std::vector<Node::Component> at_root;
  std::vector<Node::Component> in_group;
  Tree tree(assembly, wrapping);
  std::size_t cell = 0;
  const auto next_place = [&] {
    gp_Trsf at = wrapping.posed ? random_pose(chance, 0.0) : gp_Trsf();
    const std::size_t row = cell / 3;
    at.SetTranslationPart(gp_Vec(170.0 * static_cast<double>(cell % 3) - 170.0,
                                 170.0 * static_cast<double>(row) - 170.0, 0.0));
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
    Node group;
    group.name = "Group";
    group.components = in_group;
    assembly.nodes.push_back(group);
    at_root.push_back({assembly.nodes.size() - 1, group_frame});
  }
  Node root;
  root.name = "Assembly";
  root.components = at_root;
  assembly.nodes.push_back(root);
  return assembly;
}

Assembly generate_assembly(std::uint64_t seed, const Wrapping& wrapping) {
  return assemble(seed, generate_stations(seed, wrapping.faces), wrapping);
}

}  // namespace spotblue::test
