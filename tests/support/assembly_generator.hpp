#pragma once
/// @file
/// Random assemblies with known truth, for tests of whatever reads and measures them.

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "support/station.hpp"
#include "support/step_out.hpp"
#include "support/truth.hpp"

namespace spotblue::test {

/// Where the assembly lies: near the origin, placed a kilometre off, or with every part drawn a
/// kilometre from its own origin and brought back by its place.
enum class Far { no, placed, drawn };

/// How the same stations are wrapped into a file; none of it changes a seat.
struct Wrapping {
  std::uint64_t seed = 0;  ///< of the pose and of the tree
  bool posed = true;       ///< the whole turned and moved at random
  bool nested = true;      ///< stations as shared sub-assemblies in groups, else one flat level
  bool mirrored = false;   ///< every part and place in a looking-glass
  bool repeated_names = false;  ///< products that share a name
  Far far = Far::no;
  bool one_product = false;  ///< the parts of a station as solids of one product
  SurfaceCurves curves = SurfaceCurves::written;
  Schema schema = Schema::ap214;
  FileUnit unit = FileUnit::mm;
  FaceStyle faces = FaceStyle::mixed;
};

/// Where a part ended up.
struct TrueOccurrence {
  std::string product;
  std::optional<int> body;  ///< which of its product's solids, from 1; none: the only one
  gp_Trsf at;               ///< in the assembly
  TopoDS_Shape shape;       ///< of the product, in its own frame
  bool fitted = false;      ///< B-spline surfaces: 1e-4 mm instead of 1e-6
};

struct Assembly {
  std::uint64_t seed = 0;
  Wrapping wrapping;
  std::vector<std::string> kinds;  ///< of its stations, for the failure message
  std::vector<TrueOccurrence> occurrences;
  std::size_t products = 0;
  std::size_t open_products = 0;  ///< of faces only: named as set against nothing
  Truth truth;
  std::vector<Node> nodes;

  /// "seed 12: running, keyed (AP242, inch, nested, mirrored)".
  [[nodiscard]] std::string description() const;
};

/// The wrapping that goes with a seed when nothing else is asked for.
Wrapping wrapping_of(std::uint64_t seed);

/// Any wrapping, far off, in one product and without curves too, at its turn.
Wrapping any_wrapping_of(std::uint64_t seed);

/// Writes the assembly as its wrapping says.
void write_assembly(const Assembly& assembly, const std::filesystem::path& file);

/// Four to six stations of random kinds on a grid, `seed` choosing kinds and sizes.
Assembly generate_assembly(std::uint64_t seed, const Wrapping& wrapping);
/// One assembly of the given stations.
Assembly assemble(std::uint64_t seed, const std::vector<Station>& stations,
                  const Wrapping& wrapping);
/// The stations generate_assembly would put in.
std::vector<Station> generate_stations(std::uint64_t seed, FaceStyle faces);

}  // namespace spotblue::test
