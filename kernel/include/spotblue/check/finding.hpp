#pragma once
/// @file
/// One judged statement about the job, and the lot of them.

#include <string>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/outcome.hpp"
#include "spotblue/group/sentence.hpp"

namespace spotblue {

struct Finding {
  std::string id;
  std::string kind;
  std::vector<Reference> about;
  Outcome outcome = Outcome::undecided;
  std::vector<Quantity> wanted;
  std::vector<Quantity> found;
  std::vector<Quantity> margin;
  Saying basis;
  Saying advice;
  Saying caution;
};
constexpr void describe(auto& fields, const Finding*) {
  fields.value("Finding", "One judged statement about the job.")
      .member("id", &Finding::id,
              "\"radial-1\", \"axial-3\", \"foul-2\": stable for one model and job")
      .member("kind", &Finding::kind,
              "\"radial fit\", \"axial gap\", \"width fit\", \"taper\", \"thread\", \"foul\", "
              "\"size\", \"plain bearing\", \"thrust face\", \"keep off\", \"make to suit\", "
              "\"unseen\", \"not judged\"")
      .member("about", &Finding::about, "feature or occurrence ids, hole before shaft")
      .member("outcome", &Finding::outcome, "conforming, nonconforming or undecided (ISO 14253-1)")
      .member("wanted", &Finding::wanted, "numbers with their unit in the key, and texts")
      .member("found", &Finding::found, "numbers with their unit in the key, and texts")
      .member("margin", &Finding::margin, "positive inside the limits")
      .member("basis", &Finding::basis,
              "clause or formula: \"ISO 286-1:2010, 44 H7/s6; ISO 14253-1\"")
      .member("advice", &Finding::advice, "one line a machinist would give")
      .member("caution", &Finding::caution, "where the work can hurt someone; else empty");
}

struct OutcomeCount {
  int conforming = 0, nonconforming = 0, undecided = 0;
};
constexpr void describe(auto& fields, const OutcomeCount*) {
  fields.value("OutcomeCount", "How many findings of each outcome.")
      .member("conforming", &OutcomeCount::conforming, "number")
      .range(kFrom0)
      .member("nonconforming", &OutcomeCount::nonconforming, "number")
      .range(kFrom0)
      .member("undecided", &OutcomeCount::undecided, "number")
      .range(kFrom0);
}

[[nodiscard]] SPOTBLUE_EXPORT OutcomeCount count_outcomes(const std::vector<Finding>& findings);

}  // namespace spotblue
