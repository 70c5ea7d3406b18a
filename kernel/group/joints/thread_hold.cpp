#include "group/joints/thread_hold.hpp"

#include "group/joints/part_material.hpp"

namespace spotblue {
namespace {

// Less thread than half its diameter is not enough to hold by: common practice, no source.
constexpr double kLeastThread = 0.5;

std::optional<MaterialKind> kind_of(const DeclaredJob& declared, OccurrenceId part) {
  const Material* const known = find_material(material_name(declared, part));
  return known == nullptr ? std::nullopt : std::optional(known->kind);
}

}  // namespace

Length ThreadHold::usual(MaterialKind in) const { return diameter * usual_engagement(in); }

ThreadHold thread_hold(const DeclaredJob& declared, std::size_t number) {
  const Thread& thread = declared.look->seats.threads[number];
  const ScrewThread& screw = declared.screw_threads[number];
  ThreadHold hold;
  hold.engaged = Length::mm(thread.engaged);
  hold.diameter = screw.row ? screw.row->major_diameter : Length::mm(thread.screw_diameter);
  hold.least = screw.want != nullptr && screw.want->engaged ? *screw.want->engaged
                                                            : hold.diameter * kLeastThread;
  hold.enough = thread.engaged >= hold.least.in_mm() - declared.look->settings.seats.same_length_mm;
  hold.tapped = kind_of(declared, thread.hole.occurrence);
  return hold;
}

}  // namespace spotblue
