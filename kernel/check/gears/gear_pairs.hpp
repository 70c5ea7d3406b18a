#pragma once
// The gear pairs of a job as the model places them: centre distance, faces, bearing play and teeth.

#include <cstddef>
#include <optional>
#include <vector>

#include "check/gears/gear_blank.hpp"
#include "spotblue/mechanics/gear_mesh.hpp"

namespace spotblue {

/// Where the thickness of a gear's teeth is from.
enum class ThicknessFrom { given, span, pins, assumed };

struct PairedGear {
  const MeshGear* job = nullptr;
  OccurrenceId occurrence{};
  GearBlank blank;
  MeshedGear teeth;
  ThicknessFrom from = ThicknessFrom::assumed;
};

/// Two gears as they stand.
struct GearPair {
  const Mesh* mesh = nullptr;
  ToothForm form;
  PairedGear a, b;
  double centre_mm = 0.0;
  double tilt = 0.0;     ///< rad
  double face_mm = 0.0;  ///< shared by both faces; 0 also when a face was not found
  /// How far the first gear may be along its line from where it is placed, the second in its place;
  /// nothing where that is not known.
  std::optional<Interval> drift;
  Interval face_in_play{};     ///< shared by both faces, anywhere in that; as placed without it
  BearingPlay play_a, play_b;  ///< across each line
  [[nodiscard]] bool faces_known() const {
    return a.blank.teeth.has_value() && b.blank.teeth.has_value();
  }
  [[nodiscard]] double shift_mm() const { return play_a.greatest_mm + play_b.greatest_mm; }
};

/// Each gear of the more numerous part with the one of the other that it stands nearest to meshing.
/// @throws Error bad_input naming the job's file and line for a measured size that no such gear
/// has.
[[nodiscard]] std::vector<GearPair> gear_pairs(const WorkedGroup& worked, const Mesh& mesh);

/// The mesh with the bearings' play taken up towards each other, not at all, and apart.
struct MeshPositions {
  GearMesh closest, placed, farthest;
};
/// Nothing when the base circles overlap at the closest.
[[nodiscard]] std::optional<MeshPositions> mesh_positions(const GearPair& pair);

}  // namespace spotblue
