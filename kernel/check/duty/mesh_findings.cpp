#include "check/duty/mesh_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "check/fits/fit_verdict.hpp"
#include "check/gears/gear_pairs.hpp"
#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_gears.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/geometry/seat_limits.hpp"
#include "spotblue/mechanics/tooth_thickness.hpp"

namespace spotblue {
namespace {

// Two teeth in contact for a fifth of the time: the least that textbooks ask for; common practice,
// no source.
constexpr double kContactWanted = 1.2;

const Said& thickness_said(ThicknessFrom from) {
  switch (from) {
    case ThicknessFrom::given:
      return said::kThicknessGiven;
    case ThicknessFrom::span:
      return said::kThicknessFromSpan;
    case ThicknessFrom::pins:
      return said::kThicknessFromPins;
    case ThicknessFrom::assumed:
      break;
  }
  return said::kThicknessAssumed;
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
Verdict verdict_on_faces(const GearPair& pair) {
  if (pair.face_in_play.high <= 0.0) {
    return {Outcome::nonconforming, said::kFacesDoNotMeet};
  }
  const double narrower = narrower_face(pair);
  const double wanted = pair.mesh->face_share * narrower;
  const Length of = Length::mm(narrower);
  if (pair.face_in_play.high < wanted) {
    return {
        Outcome::nonconforming,
        say(said::kFacesMeetTooLittle, Length::mm(pair.face_in_play.high), of, Length::mm(wanted))};
  }
  if (pair.face_in_play.low < wanted) {
    return {Outcome::undecided, say(said::kEndPlayTakesFaces, Length::mm(pair.face_in_play.low), of,
                                    Length::mm(wanted))};
  }
  return {};
}

Verdict verdict_on_placing(const DeclaredJob& declared, const GearPair& pair) {
  const SeatSettings& settings = declared.look->settings.seats;
  if (pair.tilt > most_tilt(settings.coaxial_tilt_deg, settings)) {
    return {Outcome::nonconforming, say(said::kAxesNotParallel, angle(pair.tilt))};
  }
  if (!pair.faces_known()) {
    return {Outcome::undecided, said::kFacesNotKnown};
  }
  return verdict_on_faces(pair);
}

Verdict verdict_on_teeth(const MeshPositions& at) {
  const double clear = std::min(at.closest.tip_clearance_a_mm, at.closest.tip_clearance_b_mm);
  if (clear < 0.0) {
    return {Outcome::nonconforming, say(said::kTipsBottom, Length::mm(-clear))};
  }
  if (at.farthest.contact_ratio < 1.0) {
    return {Outcome::nonconforming, say(said::kLetsGo, Figure{at.farthest.contact_ratio, 2})};
  }
  if (at.placed.past_base_of_a_mm > 0.0 || at.placed.past_base_of_b_mm > 0.0) {
    return {Outcome::undecided, said::kUndercut};
  }
  if (at.farthest.contact_ratio < kContactWanted) {
    return {Outcome::undecided, say(said::kNoisy, Figure{at.farthest.contact_ratio, 2})};
  }
  return {};
}

struct Span {
  int teeth = 0;
  Reference part;
  Length over;
};

Span span_of(const GearPair& pair, const PairedGear& gear) {
  const int spanned = teeth_to_span(pair.form, gear.teeth.teeth);
  return {
      spanned, Reference(gear.job->part),
      Length::mm(span_mm(pair.form, gear.teeth.teeth, spanned, standard_thickness_mm(pair.form)))};
}

Saying span_advice(const GearPair& pair) {
  const Span a = span_of(pair, pair.a);
  const Span b = span_of(pair, pair.b);
  if (pair.a.from == ThicknessFrom::assumed && pair.b.from == ThicknessFrom::assumed) {
    return say(said::kMeasureSpans, a.teeth, a.part, a.over, b.teeth, b.part, b.over);
  }
  const Span& one = pair.a.from == ThicknessFrom::assumed ? a : b;
  return say(said::kMeasureSpan, one.teeth, one.part, one.over);
}

Verdict verdict_on_backlash(const GearPair& pair, const MeshPositions& at) {
  if (pair.a.from == ThicknessFrom::assumed || pair.b.from == ThicknessFrom::assumed) {
    return {Outcome::undecided, span_advice(pair)};
  }
  // What tilt takes over the face, all of it in the direction that closes the backlash.
  const Length lost = Length::mm(pair.face_mm * std::tan(pair.tilt));
  const bool wanted = pair.mesh->backlash.has_value();
  Limits found = wanted ? backlash_of(at) : normal_backlash_of(at);
  found.lower = found.lower - lost;
  if (found.lower < Length()) {
    return {Outcome::nonconforming,
            at.closest.tight_centre_mm
                ? say(said::kTeethBind, Length::mm(*at.closest.tight_centre_mm))
                : Saying(said::kTeethBindAskew)};
  }
  if (wanted) {
    const Outcome outcome = judge(found, *pair.mesh->backlash);
    return {outcome, outcome == Outcome::conforming
                         ? say(said::kBacklashAsWanted, found)
                         : say(said::kBacklashNotAsWanted, found, *pair.mesh->backlash,
                               Figure{at.placed.backlash_per_centre, 2})};
  }
  const Length least = Length::mm(least_backlash(pair.form.module_mm, pair.centre_mm).iso_mm);
  if (found.lower >= least) {
    return {Outcome::conforming, say(said::kFeeler, found, least)};
  }
  const double per_centre = at.placed.backlash_per_centre * std::cos(at.placed.working_angle_rad) *
                            std::cos(transverse_form(pair.form).base_helix_rad);
  return {found.upper < least ? Outcome::nonconforming : Outcome::undecided,
          say(said::kFeelerTooLittle, found, least, (least - found.lower) / per_centre)};
}

// Where the narrower face has no mate it does not wear, and leaves a ridge.
Saying face_remark(const GearPair& pair) {
  if (!pair.faces_known() || verdict_on_faces(pair).outcome != Outcome::conforming) {
    return {};
  }
  const double narrower = narrower_face(pair);
  return pair.face_mm < narrower - 0.05 * narrower
             ? say(said::kFacesOverlapOnly, Length::mm(pair.face_mm), Length::mm(narrower))
             : Saying();
}

Saying mesh_basis(const GearPair& pair) {
  const Saying backlash = pair.mesh->backlash ? say(said::kBacklashByJob, at_line(pair.mesh->line))
                                              : Saying(said::kBacklashByStandard);
  const bool usual = pair.mesh->face_share == Mesh{}.face_share;
  return say(said::kMeshBasis, Length::mm(pair.shift_mm()), backlash,
             say(usual ? said::kFaceShareUsual : said::kFaceShare,
                 percent(100.0 * pair.mesh->face_share)));
}

void add_gear(std::vector<Quantity>& found, const std::string& which, const PairedGear& gear,
              double tip_clearance_mm) {
  found.push_back({which + "_thickness", millimetres(gear.teeth.thickness_mm)});
  found.push_back({which + "_thickness", thickness_said(gear.from)});
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
      found.push_back({"end_play", said::kFacesAsPlaced});
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
    finding.basis = said::kBaseCirclesOverlap;
    finding.advice = said::kNoSuchPair;
    return finding;
  }
  finding.found = found_quantities(pair, *at);
  add_wanted(finding, pair, *at);
  const Verdict verdict = worse(worse(verdict_on_placing(declared, pair), verdict_on_teeth(*at)),
                                verdict_on_backlash(pair, *at));
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice + face_remark(pair);
  finding.basis = mesh_basis(pair);
  return finding;
}

Finding without_gear(const Mesh& mesh) {
  Finding finding;
  finding.kind = "gear mesh";
  finding.about = {mesh.a.part, mesh.b.part};
  finding.basis = say(said::kNoOutside, at_line(mesh.line));
  finding.advice = said::kGearHasOutside;
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
