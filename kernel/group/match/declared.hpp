#pragma once
// What the job says of each part, feature, seat and foul of the model, names already matched.

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "group/match/lost_names.hpp"
#include "group/match/names.hpp"
#include "group/match/pair_book.hpp"
#include "group/match/screw_threads.hpp"
#include "group/match/semantic_wants.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// Null pointers where the job says nothing. Points into the job and the look it was made from.
struct DeclaredJob {
  const Job* job = nullptr;  ///< without the entries that `lost` tells of
  const Look* look = nullptr;
  Names names;
  std::vector<const JobPart*> parts;  ///< by occurrence
  std::map<Subject, const MeasuredSize*> measured;
  std::map<Subject, const SizeWant*> sizes;
  // By number of the seat, thread or foul in the look.
  std::vector<const FitWant*> radial_fits, thread_fits, width_fits;
  std::vector<const AxialWant*> axial_wants;
  std::vector<const MeasuredGap*> axial_gaps;
  std::vector<const AllowedOverlap*> axial_allowed;
  std::vector<const TaperWant*> taper_wants;
  std::vector<const AllowedOverlap*> foul_allowed;
  std::vector<bool> contact_told;  ///< an allowance or a mesh speaks of the two parts
  /// Allowances that meshes of plain gear blanks imply; what foul_allowed may point into.
  std::shared_ptr<const std::vector<AllowedOverlap>> mesh_overlaps;
  /// What the model's stated sizes want where the job is silent; radial_fits and width_fits point
  /// into it too. Never null.
  std::shared_ptr<const SemanticWants> semantic;
  std::vector<const ThreadWant*> thread_wants = {};  ///< by number of the thread in the look
  std::vector<ScrewThread> screw_threads = {};       ///< the same
  std::vector<LostName> lost = {};                   ///< of a partial model
  std::shared_ptr<const Job> kept = {};              ///< what `job` points to where any are lost
};

/// @throws Error bad_input, naming job file and line, for a name that matches nothing or too much,
///         and for two entries that speak of the same thing.
[[nodiscard]] DeclaredJob declare(const Job& job, const Look& look);

/// The line of the job file as an error's place: "line 12, fits".
[[nodiscard]] Error::Where entry_place(const Job& job, std::string_view list,
                                       const std::optional<JobLine>& line);
/// Two entries of a list that speak of the same, by where they stand.
/// @throws Error bad_input at the later one.
/// "the entry in line 12", "the entry in common.toml, line 12", "an earlier entry".
[[nodiscard]] std::string line_text(const std::optional<JobLine>& line);
[[noreturn]] void refuse_second(const Job& job, std::string_view list,
                                const std::optional<JobLine>& first,
                                const std::optional<JobLine>& second);

[[nodiscard]] PartState state_of(const DeclaredJob& declared, OccurrenceId occurrence);
[[nodiscard]] Drawn drawn_at(const DeclaredJob& declared, OccurrenceId occurrence);

}  // namespace spotblue
