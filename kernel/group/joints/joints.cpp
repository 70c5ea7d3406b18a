#include "group/joints/joints.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "group/joints/clamps.hpp"
#include "group/joints/keys.hpp"
#include "group/joints/pins.hpp"
#include "group/joints/pressing.hpp"
#include "group/joints/rings_in_grooves.hpp"
#include "group/joints/tapers.hpp"

namespace spotblue {
namespace {

Joint radial_joint(const DeclaredJob& declared, const PairBook& squeezed, std::size_t number) {
  const RadialSeat& seat = declared.look->seats.radial[number];
  Joint joint{seat.hole.occurrence, seat.shaft.occurrence};
  joint.by = {seat.hole, seat.shaft};
  const SeatSizes sizes = seat_sizes(declared, number);
  const Pressing pressing = pressing_of(sizes);
  const std::string fit =
      sizes.wanted && !sizes.wanted->text.empty() ? ", " + sizes.wanted->text : "";
  const std::vector<std::size_t> allowed =
      squeezed.find(seat.hole.occurrence, seat.shaft.occurrence);
  if (!allowed.empty()) {
    joint.why = "loose, squeezed: " + declared.job->allowed[allowed.front()].reason;
  } else if (pressing == Pressing::none) {
    joint.why = "loose" + fit;
  } else {
    joint.kind = JointKind::press;
    joint.turning = joint.along = pressing == Pressing::always;
    joint.certainty = joint.along ? Certainty::certain : Certainty::perhaps;
    joint.why =
        std::string(word_of(pressing)) + (sizes.wanted ? fit : " by their sizes, no fit declared");
  }
  return joint;
}

void add_radial_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  const PairBook squeezed = allowed_squeezes(declared);
  for (std::size_t i = 0; i < declared.look->seats.radial.size(); ++i) {
    joints.push_back(radial_joint(declared, squeezed, i));
  }
}

void add_declared_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  for (const Fixing& join : declared.job->fixed) {
    const Entry entry{"fixed", "between", join.line};
    const auto [a, b] = declared.names.two_parts(join.a, join.b, entry);
    for (const OccurrenceId first : a.occurrences) {
      for (const OccurrenceId second : b.occurrences) {
        if (first != second) {
          joints.push_back({first,
                            second,
                            JointKind::declared,
                            Certainty::certain,
                            true,
                            true,
                            {},
                            join.line,
                            join.by});
        }
      }
    }
  }
}

auto firmness(const Joint& joint) {
  return std::tuple(joint.certainty, joint.kind, std::string_view(joint.why));
}

// All that holds two parts as one joint: the firmest names it.
Joint merged(std::vector<Joint> of_pair) {
  std::stable_sort(of_pair.begin(), of_pair.end(),
                   [](const Joint& x, const Joint& y) { return firmness(x) < firmness(y); });
  const bool held = std::any_of(of_pair.begin(), of_pair.end(),
                                [](const Joint& joint) { return joint.turning || joint.along; });
  Joint whole = of_pair.front();
  std::string last = whole.why;
  for (const Joint& joint : of_pair) {
    whole.turning = whole.turning || joint.turning;
    whole.along = whole.along || joint.along;
    const bool says_more = !held || joint.kind != JointKind::loose;
    if (joint.why != last && says_more) {
      whole.why += "; " + joint.why;
      last = joint.why;
    }
  }
  return whole;
}

// One for each pair, ascending.
std::vector<Joint> by_pair(std::vector<Joint> joints) {
  std::map<std::pair<OccurrenceId, OccurrenceId>, std::vector<Joint>> pairs;
  for (Joint& joint : joints) {
    if (joint.b < joint.a) {
      std::swap(joint.a, joint.b);
    }
    pairs[{joint.a, joint.b}].push_back(std::move(joint));
  }
  std::vector<Joint> merged_joints;
  merged_joints.reserve(pairs.size());
  for (auto& [pair, of_pair] : pairs) {
    merged_joints.push_back(merged(std::move(of_pair)));
  }
  return merged_joints;
}

}  // namespace

PairBook allowed_squeezes(const DeclaredJob& declared) {
  PairBook book(Order::either);
  for (const AllowedOverlap& allowed : declared.job->allowed) {
    const auto [a, b] =
        declared.names.two_parts(allowed.a, allowed.b, {"allow", "parts", allowed.line});
    book.add(subjects_of(a), subjects_of(b));
  }
  return book;
}

bool touches(const DeclaredJob& declared, std::size_t axial_seat) {
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  const Length gap = Length::mm(declared.look->seats.axial[axial_seat].gap);
  const AxialWant* want = declared.axial_wants.at(axial_seat);
  if (want != nullptr && want->kind == AxialWantKind::touch) {
    return gap >= want->least - same && gap <= want->greatest + same;
  }
  return gap >= -same && gap <= same;
}

std::vector<Joint> joints_of(const DeclaredJob& declared) {
  std::vector<Joint> joints;
  add_radial_joints(declared, joints);
  add_key_joints(declared, joints);
  for (std::size_t i = 0; i < declared.look->seats.threads.size(); ++i) {
    const Thread& thread = declared.look->seats.threads[i];
    joints.push_back({thread.hole.occurrence,
                      thread.screw.occurrence,
                      JointKind::screw,
                      Certainty::certain,
                      true,
                      true,
                      {thread.hole, thread.screw},
                      {},
                      "screwed, " + declared.screw_threads[i].size});
  }
  add_clamp_joints(declared, joints);
  add_side_screw_joints(declared, joints);
  add_taper_joints(declared, joints);
  add_ring_joints(declared, joints);
  add_declared_joints(declared, joints);
  add_pin_joints(declared, joints);
  return by_pair(std::move(joints));
}

}  // namespace spotblue
