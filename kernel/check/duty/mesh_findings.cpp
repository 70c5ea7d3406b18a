#include "check/duty/mesh_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "check/fits/fit_verdict.hpp"
#include "check/gears/gear_pairs.hpp"
#include "check/words/words.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/geometry/seat_limits.hpp"
#include "spotblue/mechanics/tooth_thickness.hpp"

namespace spotblue {
namespace {

// Two teeth in contact for a fifth of the time: the least that textbooks ask for; common practice,
// no source.
constexpr double kContactWanted = 1.2;

std::string thickness_text(ThicknessFrom from) {
  switch (from) {
    case ThicknessFrom::given:
      return "given";
    case ThicknessFrom::span:
      return "from the span";
    case ThicknessFrom::pins:
      return "from the size over pins";
    case ThicknessFrom::assumed:
      break;
  }
  return "standard, assumed";
}

Limits backlash_of(const MeshPositions& at) {
  return {Length::mm(at.closest.backlash_mm), Length::mm(at.farthest.backlash_mm)};
}

Limits normal_backlash_of(const MeshPositions& at) {
  return {Length::mm(at.closest.normal_backlash_mm), Length::mm(at.farthest.normal_backlash_mm)};
}

double narrower_face(const GearPair& pair) {
  return std::min(pair.a.blank.face.length(), pair.b.blank.face.length());
}

// Wherever end play and setting take the two; as they are placed where that is not known.
Verdict verdict_on_faces(const GearPair& pair, LengthUnit unit) {
  if (pair.face_in_play.high <= 0.0) {
    return {Outcome::nonconforming, "the faces of the two gears do not overlap: move one along"};
  }
  const double narrower = narrower_face(pair);
  const double wanted = pair.mesh->face_share * narrower;
  const auto text = [unit](double mm) { return length_text(Length::mm(mm), unit); };
  if (pair.face_in_play.high < wanted) {
    return {Outcome::nonconforming,
            fmt::format("the faces overlap by only {} of {}, wanted {}: line them up",
                        text(pair.face_in_play.high), text(narrower), text(wanted))};
  }
  if (pair.face_in_play.low < wanted) {
    return {Outcome::undecided,
            fmt::format("end play takes the faces to {} of {}, wanted {}: take up end play, or "
                        "line them up in the middle of it",
                        text(pair.face_in_play.low), text(narrower), text(wanted))};
  }
  return {};
}

Verdict verdict_on_placing(const DeclaredJob& declared, const GearPair& pair) {
  const SeatSettings& settings = declared.look->settings.seats;
  if (pair.tilt > most_tilt(settings.coaxial_tilt_deg, settings)) {
    return {Outcome::nonconforming,
            fmt::format("the two axes are {:.3f} deg out of parallel: true them up",
                        degrees(pair.tilt))};
  }
  if (!pair.faces_known()) {
    return {Outcome::undecided,
            "no outside near the tip diameter in the model: face overlap not known; check module, "
            "teeth and tip_diameter"};
  }
  return verdict_on_faces(pair, declared.job->unit);
}

Verdict verdict_on_teeth(const MeshPositions& at, LengthUnit unit) {
  const double clear = std::min(at.closest.tip_clearance_a_mm, at.closest.tip_clearance_b_mm);
  if (clear < 0.0) {
    return {Outcome::nonconforming,
            fmt::format("tips bottom in the roots by {}: move the centres apart, or turn the tips "
                        "down",
                        length_text(Length::mm(-clear), unit))};
  }
  if (at.farthest.contact_ratio < 1.0) {
    return {Outcome::nonconforming,
            fmt::format("contact ratio {:.2f}: one pair lets go before the next takes hold; move "
                        "the centres together",
                        at.farthest.contact_ratio)};
  }
  if (at.placed.past_base_of_a_mm > 0.0 || at.placed.past_base_of_b_mm > 0.0) {
    return {Outcome::undecided,
            "a tip reaches past the mate's base circle: the roots must be undercut for it; roll "
            "the pair by hand with blue on the teeth"};
  }
  if (at.farthest.contact_ratio < kContactWanted) {
    return {Outcome::undecided,
            fmt::format("contact ratio only {:.2f}: expect it to be noisy (1.2 or more: common "
                        "practice)",
                        at.farthest.contact_ratio)};
  }
  return {};
}

std::string span_advice(const GearPair& pair, LengthUnit unit) {
  std::string text = "tooth thickness not known, standard assumed: measure";
  for (const PairedGear* gear : {&pair.a, &pair.b}) {
    if (gear->from == ThicknessFrom::assumed) {
      const int spanned = teeth_to_span(pair.form, gear->teeth.teeth);
      const double over =
          span_mm(pair.form, gear->teeth.teeth, spanned, standard_thickness_mm(pair.form));
      text += fmt::format(" {}over {} teeth of {} ({} without backlash)",
                          gear == &pair.b && pair.a.from == ThicknessFrom::assumed ? "and " : "",
                          spanned, gear->job->part, length_text(Length::mm(over), unit));
    }
  }
  return text + ", or over pins";
}

Verdict verdict_on_backlash(const GearPair& pair, const MeshPositions& at, LengthUnit unit) {
  if (pair.a.from == ThicknessFrom::assumed || pair.b.from == ThicknessFrom::assumed) {
    return {Outcome::undecided, span_advice(pair, unit)};
  }
  // What tilt takes over the face, all of it in the direction that closes the backlash.
  const Length lost = Length::mm(pair.face_mm * std::tan(pair.tilt));
  const bool wanted = pair.mesh->backlash.has_value();
  Limits found = wanted ? backlash_of(at) : normal_backlash_of(at);
  found.lower = found.lower - lost;
  const std::string range = range_text(found, unit);
  if (found.lower < Length()) {
    return {Outcome::nonconforming,
            at.closest.tight_centre_mm
                ? fmt::format("the teeth bind: no backlash is left at a centre distance of {}; "
                              "move the centres apart or thin the teeth",
                              length_text(Length::mm(*at.closest.tight_centre_mm), unit))
                : "the teeth bind: true up the axes"};
  }
  if (wanted) {
    const Outcome outcome = judge(found, *pair.mesh->backlash);
    return {outcome, outcome == Outcome::conforming
                         ? fmt::format("backlash {}: as wanted", range)
                         : fmt::format("backlash {}, wanted {}: shift the centre distance, {:.2f} "
                                       "of backlash for 1 of centre",
                                       range, range_text(*pair.mesh->backlash, unit),
                                       at.placed.backlash_per_centre)};
  }
  const Length least = Length::mm(least_backlash(pair.form.module_mm, pair.centre_mm).iso_mm);
  if (found.lower >= least) {
    return {Outcome::conforming,
            fmt::format("feeler between the flanks: {}; the least recommended is {}", range,
                        length_text(least, unit))};
  }
  const double per_centre = at.placed.backlash_per_centre * std::cos(at.placed.working_angle_rad) *
                            std::cos(transverse_form(pair.form).base_helix_rad);
  return {found.upper < least ? Outcome::nonconforming : Outcome::undecided,
          fmt::format("feeler between the flanks: {}, less than the {} recommended: open the "
                      "centres by {}, or say in [[meshes]] what backlash is wanted",
                      range, length_text(least, unit),
                      length_text((least - found.lower) / per_centre, unit))};
}

// Where the narrower face has no mate it does not wear, and leaves a ridge.
std::string face_remark(const GearPair& pair, LengthUnit unit) {
  if (!pair.faces_known() || verdict_on_faces(pair, unit).outcome != Outcome::conforming) {
    return {};
  }
  const double narrower = narrower_face(pair);
  return pair.face_mm < narrower - 0.05 * narrower
             ? fmt::format("; the faces overlap by only {} of {}: line them up",
                           length_text(Length::mm(pair.face_mm), unit),
                           length_text(Length::mm(narrower), unit))
             : std::string();
}

void add_gear(std::vector<Quantity>& found, const std::string& which, const PairedGear& gear,
              double tip_clearance_mm) {
  found.push_back({which + "_thickness", millimetres(gear.teeth.thickness_mm)});
  found.push_back({which + "_thickness", thickness_text(gear.from)});
  found.push_back({which + "_tip_clearance", millimetres(tip_clearance_mm)});
  if (gear.blank.teeth) {
    found.push_back({which + "_face", millimetres(gear.blank.face.length())});
  }
}

std::vector<Quantity> found_quantities(const GearPair& pair, const MeshPositions& at) {
  std::vector<Quantity> found{{"centre_distance", millimetres(pair.centre_mm)},
                              {"reference_centre", millimetres(at.placed.reference_centre_mm)},
                              {"axes_tilt", angle(pair.tilt)},
                              {"working_angle", angle(at.placed.working_angle_rad)},
                              {"backlash_as_placed", millimetres(at.placed.backlash_mm)}};
  add_range(found, "backlash", backlash_of(at));
  add_range(found, "normal_backlash", normal_backlash_of(at));
  found.push_back({"backlash_per_centre_ratio", plain_number(at.placed.backlash_per_centre)});
  found.push_back({"bearing_play", millimetres(pair.shift_mm())});
  if (at.placed.tight_centre_mm) {
    found.push_back({"tight_centre", millimetres(*at.placed.tight_centre_mm)});
  }
  found.push_back({"contact_ratio", plain_number(at.farthest.contact_ratio)});
  if (pair.form.helix_angle_deg > 0.0) {
    found.push_back({"overlap_ratio", plain_number(at.placed.overlap_ratio)});
  }
  if (pair.faces_known()) {
    found.push_back({"face_overlap", millimetres(pair.face_mm)});
    if (pair.drift) {
      add_range(found, "face_overlap_in_play",
                {Length::mm(pair.face_in_play.low), Length::mm(pair.face_in_play.high)});
    } else {
      found.push_back({"end_play", "not known: the faces are judged as they are placed"});
    }
  }
  add_gear(found, "first", pair.a, at.closest.tip_clearance_a_mm);
  add_gear(found, "second", pair.b, at.closest.tip_clearance_b_mm);
  return found;
}

void add_wanted(Finding& finding, const GearPair& pair, const MeshPositions& at) {
  if (pair.faces_known()) {
    finding.wanted.push_back(
        {"face_overlap_least", millimetres(pair.mesh->face_share * narrower_face(pair))});
  }
  if (pair.mesh->backlash) {
    add_range(finding.wanted, "backlash", *pair.mesh->backlash);
    finding.margin = {{"backlash", measure(margin(backlash_of(at), *pair.mesh->backlash))}};
  } else {
    const LeastBacklash least = least_backlash(pair.form.module_mm, pair.centre_mm);
    finding.wanted.push_back({"normal_backlash_least", millimetres(least.iso_mm)});
    finding.wanted.push_back({"normal_backlash_agma", millimetres(least.agma_mm)});
    finding.margin = {
        {"normal_backlash", millimetres(at.closest.normal_backlash_mm - least.iso_mm)}};
  }
  finding.margin.push_back({"tip_clearance", millimetres(std::min(at.closest.tip_clearance_a_mm,
                                                                  at.closest.tip_clearance_b_mm))});
}

Finding judge_pair(const DeclaredJob& declared, const GearPair& pair) {
  const LengthUnit unit = declared.job->unit;
  Finding finding;
  finding.kind = "gear mesh";
  finding.about = {declared.names.reference(pair.a.occurrence),
                   declared.names.reference(pair.b.occurrence)};
  finding.caution = said::kGearCaution;
  const auto at = mesh_positions(pair);
  if (!at) {
    finding.outcome = Outcome::nonconforming;
    finding.found = {{"centre_distance", millimetres(pair.centre_mm)},
                     {"bearing_play", millimetres(pair.shift_mm())}};
    finding.basis = "the base circles of the two gears overlap there";
    finding.advice =
        "no such pair meshes at this centre distance: check module, numbers of teeth "
        "and where the parts are placed";
    return finding;
  }
  finding.found = found_quantities(pair, *at);
  add_wanted(finding, pair, *at);
  const Verdict verdict =
      worse(worse(verdict_on_placing(declared, pair), verdict_on_teeth(*at, unit)),
            verdict_on_backlash(pair, *at, unit));
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice + face_remark(pair, unit);
  finding.basis = fmt::format(
      "involute geometry of ISO 21771, exact; bearing play {} each way; least backlash {}; {:g} of "
      "the narrower face in mesh{}; pitch error and runout of the teeth not known",
      length_text(Length::mm(pair.shift_mm()), unit),
      pair.mesh->backlash ? "as wanted" + from_line(pair.mesh->line)
                          : "by ISO/TR 10064-2 annex A (from memory)",
      pair.mesh->face_share,
      pair.mesh->face_share == Mesh{}.face_share ? " (common practice, no source)" : "");
  return finding;
}

Finding without_gear(const Mesh& mesh) {
  Finding finding;
  finding.kind = "gear mesh";
  finding.about = {mesh.a.part, mesh.b.part};
  finding.basis = "no outside cylinder in the model" + from_line(mesh.line);
  finding.advice = "a gear has an outside to turn about: check the names of the two parts";
  return finding;
}

}  // namespace

std::vector<Finding> mesh_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const Mesh& mesh : declared.job->meshes) {
    const std::vector<GearPair> pairs = gear_pairs(worked, mesh);
    if (pairs.empty()) {
      findings.push_back(without_gear(mesh));
    }
    for (const GearPair& pair : pairs) {
      findings.push_back(judge_pair(declared, pair));
    }
  }
  return findings;
}

}  // namespace spotblue
