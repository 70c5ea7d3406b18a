// The generator's truth against Open CASCADE's generic algorithms: every pair of parts shares
// exactly the volume that the listed press fits, threads, tapers, keys and fouls account for.

#include "support/assembly_generator.hpp"

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Common.hxx>
#include <BRepBndLib.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepGProp.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <set>
#include <string>

#include "support/families/family.hpp"

namespace spotblue::test {

void PrintTo(const Family& family, std::ostream* out) { *out << family.name; }

namespace assembly_generator_test {

double volume(const TopoDS_Shape& shape) {
  GProp_GProps properties;
  BRepGProp::VolumeProperties(shape, properties);
  return properties.Mass();
}

TopoDS_Shape placed(const TrueOccurrence& occurrence) {
  return moved(occurrence.shape, occurrence.at);
}

Bnd_Box box(const TopoDS_Shape& shape) {
  Bnd_Box bounds;
  BRepBndLib::Add(shape, bounds);
  return bounds;
}

struct Overlap {
  double volume = 0.0;
  double slack = 1e-3;  // what presses and threads add in chamfers, which the truth leaves out
};

// What the two share by the truth, or nothing where it knows no closed form.
std::optional<Overlap> expected_overlap(const Truth& truth, std::size_t a, std::size_t b) {
  const auto is = [&](std::size_t x, std::size_t y) {
    return (x == a && y == b) || (x == b && y == a);
  };
  Overlap sum;
  for (const TrueRadial& seat : truth.radial) {
    if (is(seat.hole, seat.shaft) && seat.hole_diameter < seat.shaft_diameter) {
      if (seat.offset > 0.0) {
        return std::nullopt;
      }
      const double ring = ring_area(seat.hole_diameter, seat.shaft_diameter);
      sum.volume += ring * seat.engaged * seat.coverage / kFullTurn;
      sum.slack += ring * (seat.shaft_diameter - seat.hole_diameter);
    }
  }
  for (const TrueThread& thread : truth.threads) {
    if (is(thread.hole, thread.screw)) {
      const double ring = ring_area(thread.hole_diameter, thread.screw_diameter);
      sum.volume += ring * thread.engaged;
      sum.slack += ring * (thread.screw_diameter - thread.hole_diameter) / 2;
    }
  }
  for (const TrueWidth& seat : truth.width) {
    if (is(seat.slot, seat.key) && seat.key_width > seat.slot_width) {
      sum.volume += (seat.key_width - seat.slot_width) * seat.area;
    }
  }
  for (const TrueTaper& seat : truth.taper) {
    if (is(seat.hole, seat.shaft) && seat.gap < 0.0) {
      return std::nullopt;
    }
  }
  for (const TrueFoul& foul : truth.fouls) {
    if (is(foul.a, foul.b)) {
      if (!foul.volume) {
        return std::nullopt;
      }
      sum.volume += *foul.volume;
    }
  }
  return sum;
}

enum class Booleans { asked, left_out };

void expect_sound(const Assembly& assembly, Booleans booleans) {
  SCOPED_TRACE(assembly.description());
  std::vector<TopoDS_Shape> shapes;
  for (const TrueOccurrence& occurrence : assembly.occurrences) {
    shapes.push_back(placed(occurrence));
    EXPECT_TRUE(BRepCheck_Analyzer(shapes.back()).IsValid()) << occurrence.product;
    EXPECT_GT(volume(shapes.back()), 0.0) << occurrence.product;
  }
  for (std::size_t a = 0; booleans == Booleans::asked && a < shapes.size(); ++a) {
    for (std::size_t b = a + 1; b < shapes.size(); ++b) {
      const std::optional<Overlap> expected = expected_overlap(assembly.truth, a, b);
      if (!expected || box(shapes[a]).IsOut(box(shapes[b]))) {
        continue;
      }
      const double found = volume(BRepAlgoAPI_Common(shapes[a], shapes[b]).Shape());
      EXPECT_NEAR(found, expected->volume, expected->slack + 2e-3 * expected->volume)
          << assembly.occurrences[a].product << " and " << assembly.occurrences[b].product;
    }
  }
}

class Generated : public testing::TestWithParam<std::uint64_t> {};

TEST_P(Generated, PartsAreSoundSolidsThatShareWhatTheTruthSays) {
  Wrapping wrapping = wrapping_of(GetParam());
  wrapping.faces = FaceStyle::split;
  expect_sound(generate_assembly(GetParam(), wrapping), Booleans::asked);
}

INSTANTIATE_TEST_SUITE_P(Seeds, Generated, testing::Range<std::uint64_t>(1, 25));

class GeneratedFamily : public testing::TestWithParam<Family> {};

TEST_P(GeneratedFamily, PartsAreSoundSolidsThatShareWhatTheTruthSays) {
  // Open CASCADE's boolean gives nothing, or a whole part, or runs long, on a torus or a ball in
  // its race, on flanks that all but touch and on threads swept along a helix.
  const std::set<std::string> hard{"o_ring", "ball_bearing", "involute_gears", "true_thread"};
  const std::string name = GetParam().name;
  Shop shop{Chance(77), Chance(1'000'080), FaceStyle::split};
  std::vector<Station> stations;
  for (int i = 0; i < 3; ++i) {
    stations.push_back(GetParam().make(shop));
  }
  Wrapping wrapping = wrapping_of(77);
  expect_sound(assemble(77, stations, wrapping),
               hard.contains(name) ? Booleans::left_out : Booleans::asked);
}

INSTANTIATE_TEST_SUITE_P(Of, GeneratedFamily, testing::ValuesIn(families()),
                         [](const auto& one) { return std::string(one.param.name); });

}  // namespace assembly_generator_test
}  // namespace spotblue::test
