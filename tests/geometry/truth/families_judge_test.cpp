// Open CASCADE's boolean and minimum distance, each in a child, on random pairs of the generator's
// families, against what look() says of the pair; random points where the boolean fails. And second
// readings of one assembly: as Open CASCADE heals it and writes it anew.

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Common.hxx>
#include <BRepBndLib.hxx>
#include <BRepClass3d_SolidClassifier.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepGProp.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <limits>
#include <set>

#include "geometry/occt/contained.hpp"
#include "geometry/truth/truth_match.hpp"
#include "support/families/family.hpp"
#include "support/shape_out.hpp"

namespace spotblue::test::families_judge_test {

/// How many pairs or assemblies: few at every build, more by the variable.
std::uint64_t wanted_count(const char* variable, std::uint64_t usual) {
  const char* wanted = std::getenv(variable);
  return wanted != nullptr ? std::strtoull(wanted, nullptr, 10) : usual;
}

double volume_of(const TopoDS_Shape& shape) {
  GProp_GProps properties;
  BRepGProp::VolumeProperties(shape, properties, 1e-6);
  return properties.Mass();
}

Bnd_Box box_of(const TopoDS_Shape& shape) {
  Bnd_Box box;
  BRepBndLib::AddOptimal(shape, box, false, false);
  return box;
}

/// What a child found out, or nothing: it crashed, hung or threw.
std::optional<double> in_a_child(const std::function<double()>& work) {
  ReadLimits limits;
  limits.seconds = 4.0;
  const Contained run = run_contained(
      [&] {
        const double value = work();
        std::string bytes(sizeof value, '\0');
        std::memcpy(bytes.data(), &value, sizeof value);
        return bytes;
      },
      limits);
  double value = 0.0;
  if (run.end != Contained::End::finished || run.bytes.size() != sizeof value) {
    return std::nullopt;
  }
  std::memcpy(&value, run.bytes.data(), sizeof value);
  return value;
}

struct Guess {
  double volume = 0.0;
  double spread = 0.0;  ///< three standard deviations, and what no point has hit
};

/// mm3 that both share, by random points in what their boxes share.
Guess by_random_points(const TopoDS_Shape& a, const TopoDS_Shape& b, Chance& chance) {
  const Bnd_Box one = box_of(a);
  const Bnd_Box two = box_of(b);
  const auto low = [&](double x, double y) { return std::max(x, y); };
  const gp_Pnt from(low(one.CornerMin().X(), two.CornerMin().X()),
                    low(one.CornerMin().Y(), two.CornerMin().Y()),
                    low(one.CornerMin().Z(), two.CornerMin().Z()));
  const gp_Pnt to(std::min(one.CornerMax().X(), two.CornerMax().X()),
                  std::min(one.CornerMax().Y(), two.CornerMax().Y()),
                  std::min(one.CornerMax().Z(), two.CornerMax().Z()));
  const double room = (to.X() - from.X()) * (to.Y() - from.Y()) * (to.Z() - from.Z());
  BRepClass3d_SolidClassifier in_a(a);
  BRepClass3d_SolidClassifier in_b(b);
  constexpr int kPoints = 3000;
  int hits = 0;
  for (int i = 0; i < kPoints; ++i) {
    const gp_Pnt p(chance.between(from.X(), to.X()), chance.between(from.Y(), to.Y()),
                   chance.between(from.Z(), to.Z()));
    in_a.Perform(p, 1e-7);
    if (in_a.State() == TopAbs_IN) {
      in_b.Perform(p, 1e-7);
      hits += in_b.State() == TopAbs_IN ? 1 : 0;
    }
  }
  const double share = static_cast<double>(hits) / kPoints;
  return {room * share, room * (3.0 * std::sqrt(share * (1.0 - share) / kPoints) + 3.0 / kPoints)};
}

struct Pair {
  Assembly assembly;
  Look seen;
  std::size_t a = 0, b = 0;    ///< true occurrences
  std::size_t la = 0, lb = 0;  ///< of the look, la < lb
  TopoDS_Shape one, two;

  [[nodiscard]] bool is(const FeatureRef& x, const FeatureRef& y) const {
    return std::minmax<std::size_t>(x.occurrence, y.occurrence) == std::minmax(la, lb);
  }
};

/// One station of a random family, and two of its parts whose boxes meet; nothing where none do.
std::optional<Pair> random_pair(std::uint64_t seed) {
  Chance chance(seed * 31 + 7);
  Shop shop{Chance(seed), Chance(seed + 1'000'003), FaceStyle::split};
  const std::vector<Family>& sound = families();
  const Family& family = sound.at(chance.below(sound.size()));
  Wrapping wrapping = wrapping_of(seed);
  Pair pair;
  pair.assembly = assemble(seed, {family.make(shop)}, wrapping);
  std::vector<TopoDS_Shape> solids;
  for (const TrueOccurrence& one : pair.assembly.occurrences) {
    solids.push_back(moved(one.shape, one.at));
  }
  std::vector<std::pair<std::size_t, std::size_t>> meeting;
  for (std::size_t a = 0; a < solids.size(); ++a) {
    for (std::size_t b = a + 1; b < solids.size(); ++b) {
      if (!box_of(solids[a]).IsOut(box_of(solids[b]))) {
        meeting.emplace_back(a, b);
      }
    }
  }
  if (meeting.empty()) {
    return std::nullopt;
  }
  std::tie(pair.a, pair.b) = meeting[chance.below(meeting.size())];
  pair.one = solids[pair.a];
  pair.two = solids[pair.b];
  const auto file = temp_step("pair-" + std::to_string(seed));
  write_assembly(pair.assembly, file);
  pair.seen = look(file, {});
  std::filesystem::remove(file);
  const auto found = match_occurrences(pair.seen, pair.assembly);
  std::tie(pair.la, pair.lb) = std::minmax(found[pair.a], found[pair.b]);
  return pair;
}

/// Whether something of the pair is pressed, screwed or sunk: then the solids share what no foul
/// tells.
bool accounted_for(const Pair& pair) {
  const Seats& seats = pair.seen.seats;
  const auto any = [](const auto& list, const auto& is) { return std::ranges::any_of(list, is); };
  return any(seats.radial,
             [&](const RadialSeat& s) { return pair.is(s.hole, s.shaft) && s.least_gap < 1e-9; }) ||
         any(seats.threads, [&](const Thread& t) { return pair.is(t.hole, t.screw); }) ||
         any(seats.taper,
             [&](const TaperSeat& s) { return pair.is(s.hole, s.shaft) && s.gap < 1e-9; }) ||
         any(seats.width,
             [&](const WidthSeat& s) { return pair.is(s.slot, s.key) && s.clearance < 1e-9; });
}

double reported_volume(const Pair& pair) {
  double sum = 0.0;
  for (const Foul& foul : pair.seen.fouls.found) {
    sum += foul.a == pair.la && foul.b == pair.lb ? foul.volume : 0.0;
  }
  return sum;
}

void judge_volume(const Pair& pair, std::uint64_t seed) {
  const double most = std::min(volume_of(pair.one), volume_of(pair.two));
  const double reported = reported_volume(pair);
  const auto boolean =
      in_a_child([&] { return volume_of(BRepAlgoAPI_Common(pair.one, pair.two).Shape()); });
  const bool believed = boolean && *boolean > 1e-9 && *boolean < most * 1.000001;
  if (believed) {
    // Of thin lenses, as of a torus sunk 0.01 mm, the boolean's own edges lie up to a hundredth
    // off.
    const double edges = 1e-2 * *boolean + 1e-3;
    if (accounted_for(pair)) {
      EXPECT_LT(reported, *boolean + edges);
    } else {
      EXPECT_NEAR(reported, *boolean, edges);
    }
    return;
  }
  // Nothing, or nothing to be believed: random points know better.
  Chance chance(seed);
  const Guess guess = by_random_points(pair.one, pair.two, chance);
  EXPECT_LT(reported, guess.volume + guess.spread);
  if (!accounted_for(pair)) {
    EXPECT_GT(reported, guess.volume - guess.spread);
  }
}

void judge_distance(const Pair& pair) {
  const auto distance = in_a_child([&] {
    const BRepExtrema_DistShapeShape nearest(pair.one, pair.two);
    return nearest.IsDone() ? nearest.Value() : -1.0;
  });
  if (!distance || *distance < 0.0) {
    return;
  }
  // No seat has less room than the two are apart; Open CASCADE's distance is good to about 1e-6 mm.
  constexpr double kSlack = 3e-6;
  for (const RadialSeat& seat : pair.seen.seats.radial) {
    if (pair.is(seat.hole, seat.shaft)) {
      EXPECT_GT(std::max(0.0, seat.least_gap), *distance - kSlack);
    }
  }
  for (const AxialSeat& seat : pair.seen.seats.axial) {
    if (pair.is(seat.a, seat.b)) {
      EXPECT_GT(std::max(0.0, seat.gap), *distance - kSlack);
    }
  }
  if (*distance > kSlack) {
    EXPECT_EQ(reported_volume(pair), 0.0);
    for (const Thread& thread : pair.seen.seats.threads) {
      EXPECT_FALSE(pair.is(thread.hole, thread.screw)) << "a thread, " << *distance << " apart";
    }
  }
}

constexpr std::uint64_t kPairsAtOnce = 10;

class FamilyJudge : public testing::TestWithParam<std::uint64_t> {};

TEST_P(FamilyJudge, BooleanAndDistanceOfTwoSolidsBearLookOut) {
  std::uint64_t judged = 0;
  for (std::uint64_t seed = GetParam(); seed < GetParam() + kPairsAtOnce; ++seed) {
    const std::optional<Pair> pair = random_pair(seed);
    if (pair) {
      ++judged;
      SCOPED_TRACE(pair->assembly.description() + "; " +
                   pair->assembly.occurrences[pair->a].product + " and " +
                   pair->assembly.occurrences[pair->b].product);
      judge_volume(*pair, seed);
      judge_distance(*pair);
    }
  }
  EXPECT_GT(judged, kPairsAtOnce / 2);
}

INSTANTIATE_TEST_SUITE_P(FromSeed, FamilyJudge,
                         testing::Range<std::uint64_t>(
                             7001, 7001 + wanted_count("SPOTBLUE_RANDOM_PAIRS", 60), kPairsAtOnce));

class SecondReading : public testing::TestWithParam<std::uint64_t> {};

// Read and healed by Open CASCADE, and written anew with its own settings, the assembly is the
// same.
TEST_P(SecondReading, OfTheHealedAssemblyAgrees) {
  Wrapping wrapping = any_wrapping_of(GetParam());
  wrapping.one_product = false;
  wrapping.far = Far::no;
  const Assembly assembly =
      assemble(GetParam(), generate_families(GetParam(), wrapping.faces, families()), wrapping);
  SCOPED_TRACE(assembly.description());
  const auto first = temp_step("first-" + std::to_string(GetParam()));
  const auto again = temp_step("again-" + std::to_string(GetParam()));
  write_assembly(assembly, first);
  step_to_step(first, again);
  const Look seen = look(again, {});
  std::filesystem::remove(first);
  std::filesystem::remove(again);
  for (const std::string& line : disagreements(seen, assembly, {})) {
    ADD_FAILURE() << line;
  }
}

INSTANTIATE_TEST_SUITE_P(
    FromSeed, SecondReading,
    testing::Range<std::uint64_t>(8001, 8001 + wanted_count("SPOTBLUE_RANDOM_READINGS", 12)));

}  // namespace spotblue::test::families_judge_test
