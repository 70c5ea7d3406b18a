#pragma once
// What was not looked at, not judged or is set against nothing, as findings.

#include <cstddef>
#include <string_view>
#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for whatever of the model is set against nothing, or not judged: open shells, surfaces, and
/// parts that touch at no seat.
[[nodiscard]] std::vector<Finding> unseen_findings(const DeclaredJob& declared);
/// One for each entry of the job that names what a partial model lacks.
[[nodiscard]] std::vector<Finding> lost_findings(const DeclaredJob& declared);
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
