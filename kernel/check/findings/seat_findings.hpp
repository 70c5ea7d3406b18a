#pragma once
// One function for each kind of thing the look found; each gives a finding for every one, in order,
// without ids.

#include <cstddef>
#include <string_view>
#include <vector>

#include "check/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

[[nodiscard]] std::vector<Finding> radial_findings(const DeclaredJob& declared);
[[nodiscard]] std::vector<Finding> thread_findings(const DeclaredJob& declared);
[[nodiscard]] std::vector<Finding> width_findings(const DeclaredJob& declared);
[[nodiscard]] std::vector<Finding> taper_findings(const DeclaredJob& declared);
[[nodiscard]] std::vector<Finding> axial_findings(const DeclaredJob& declared);
[[nodiscard]] std::vector<Finding> clash_findings(const DeclaredJob& declared);
/// One for each radial seat that is pressed or may come out so.
[[nodiscard]] std::vector<Finding> press_findings(const DeclaredJob& declared);
/// One for each seat that runs in the bore of a pressed part: the clearance that pressing leaves.
[[nodiscard]] std::vector<Finding> sleeve_findings(const DeclaredJob& declared);
/// One for each pair of gears of a [[meshes]] entry.
[[nodiscard]] std::vector<Finding> mesh_findings(const DeclaredJob& declared);
/// One for each [[cuts]] entry that names an outside: what the shaft loses.
[[nodiscard]] std::vector<Finding> cut_findings(const DeclaredJob& declared);
/// One for each part to make that has stock.
[[nodiscard]] std::vector<Finding> stock_findings(const DeclaredJob& declared);
/// One for each wanted size, and one for each measured size that no fit and no want uses.
[[nodiscard]] std::vector<Finding> size_findings(const DeclaredJob& declared);
/// Seats with clearance whose parts turn against each other, by what is declared in [[turning]].
[[nodiscard]] std::vector<Finding> bearing_findings(const DeclaredJob& declared);
/// Faces that rub under end thrust.
[[nodiscard]] std::vector<Finding> thrust_findings(const DeclaredJob& declared);
/// One for each [[keep_off]].
[[nodiscard]] std::vector<Finding> keep_off_findings(const DeclaredJob& declared);
/// One for each wanted end play, and one for each group of parts that can move between its stops.
[[nodiscard]] std::vector<Finding> end_play_findings(const DeclaredJob& declared);
/// The limits that sizes still to be made must hold now, and wants that contradict each other.
[[nodiscard]] std::vector<Finding> suit_findings(const DeclaredJob& declared);
/// One for each group of centre lines: an order in which its parts go together, or what blocks
/// them.
[[nodiscard]] std::vector<Finding> way_in_findings(const DeclaredJob& declared);
/// Fits, wants and allowances that matched nothing in the model.
[[nodiscard]] std::vector<Finding> unmatched_findings(const DeclaredJob& declared);
/// One for whatever of the model is set against nothing, or not judged: open shells, surfaces, and
/// parts that touch at no seat.
[[nodiscard]] std::vector<Finding> unseen_findings(const DeclaredJob& declared);
/// One for each thing that there was no time or memory to look at.
[[nodiscard]] std::vector<Finding> not_looked_at_findings(const Look& look);
/// Whether parts were not read or not measured, so that the job's names can't be held against them.
[[nodiscard]] bool lacks_parts(const Look& look);
/// In place of all findings that need every pair to be looked at.
[[nodiscard]] Finding rest_not_judged(const DeclaredJob& declared);
/// Kind of the finding that stands for those which a limit on time or memory ended.
inline constexpr std::string_view kUnseen = "unseen";
inline constexpr std::string_view kNotJudged = "not judged";
[[nodiscard]] Finding not_all_judged(const Look& look, std::size_t judged);
/// Whether time and memory are left for one more finding.
[[nodiscard]] bool may_judge_more();
/// Where there is nothing else to say.
[[nodiscard]] Finding nothing_to_judge(const DeclaredJob& declared);

}  // namespace spotblue
