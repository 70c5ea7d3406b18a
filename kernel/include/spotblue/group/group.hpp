#pragma once
/// @file
/// What the parts of a job do to each other, worked out once: what holds what, what is one body,
/// what turns on what, every size in each state, and every stop along a line.

#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/group/joint.hpp"
#include "spotblue/group/pressing.hpp"
#include "spotblue/group/size_states.hpp"
#include "spotblue/group/stops.hpp"
#include "spotblue/group/turning.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// Parts that turn together.
struct Body {
  std::vector<OccurrenceId> parts;
  std::optional<double> rpm;
};
constexpr void describe(auto& fields, const Body*) {
  fields.value("Body", "Parts that turn together.")
      .member("parts", &Body::parts, "occurrences, ascending")
      .member("rpm", &Body::rpm, "how fast it turns; None: it stands still as far as is declared");
}

/// The two surfaces of a radial seat in each state.
struct SeatStates {
  FeatureRef hole, shaft;
  Pressing pressing = Pressing::none;
  SizeStates hole_size, shaft_size;
};
constexpr void describe(auto& fields, const SeatStates*) {
  fields.value("SeatStates", "The two surfaces of a radial seat in each state.")
      .member("hole", &SeatStates::hole, "feature of the hole")
      .member("shaft", &SeatStates::shaft, "feature of the shaft")
      .member("pressing", &SeatStates::pressing, "whether the two are pressed")
      .member("hole_size", &SeatStates::hole_size,
              "its diameter; of a pressed pair as the other part meets it")
      .member("shaft_size", &SeatStates::shaft_size, "the same of the shaft");
}

struct Group {
  std::vector<Body> bodies;
  std::vector<Joint> joints;
  std::vector<TurningBody> turning;
  std::vector<Bearing> bearings;
  std::vector<ThrustFace> thrust_faces;
  std::vector<SeatStates> seats;
  std::vector<GroupStop> stops;
};
constexpr void describe(auto& fields, const Group*) {
  fields.value("Group", "What the parts of a job do to each other.")
      .member("bodies", &Group::bodies, "each part in one, in the order of their first parts")
      .member("joints", &Group::joints,
              "what each pair of parts that meets is to each other, ascending; bodies are made of "
              "those that hold")
      .member("turning", &Group::turning, "bodies that turn, in the order of their first parts")
      .member("bearings", &Group::bearings, "on what they run, in the order of the radial seats")
      .member("thrust_faces", &Group::thrust_faces, "which faces rub, in the order of axial seats")
      .member("seats", &Group::seats, "one a radial seat, in the order of the look")
      .member("stops", &Group::stops,
              "what stops what along each centre line, by line; empty where not all of the model "
              "was looked at");
}

/// Works out the group of a job and what was found in its model.
/// @throws Error bad_input, naming job file and line, for names that mean nothing or too much, and
///         for entries that contradict each other.
[[nodiscard]] SPOTBLUE_EXPORT Group make_group(const Job& job, const Look& look);

}  // namespace spotblue
