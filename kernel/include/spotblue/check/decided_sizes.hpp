#pragma once
/// @file
/// The sizes a job has decided for the features of its model, ready to be written onto it.

#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/geometry/semantic_write.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

struct DecidedSizes {
  std::vector<SizeToWrite> sizes;
  std::vector<Note> left_out;
};
constexpr void describe(auto& fields, const DecidedSizes*) {
  fields.value("DecidedSizes", "The sizes a job has decided for its model.")
      .member("sizes", &DecidedSizes::sizes,
              "SizeToWrite, one a feature of a product, in the model's order")
      .member("left_out", &DecidedSizes::left_out,
              "features the job speaks of whose size it leaves open, and why: a fit by clearance "
              "alone, or places of one part that are to have different sizes");
}

/// Classes and limits of the job's fits and [[sizes]], each on the feature it is for.
/// @throws Error as judge_job.
[[nodiscard]] SPOTBLUE_EXPORT DecidedSizes decided_sizes(const Job& job, const Look& look);

}  // namespace spotblue
