#pragma once
/// @file
/// What turns, on what it runs, what each bearing carries, and which faces rub.

#include <cstddef>
#include <optional>

#include "spotblue/base/words.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/group/joint.hpp"
#include "spotblue/group/sentence.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// A body that turns by what the job declares.
struct TurningBody {
  OccurrenceId part{};
  double rpm = 0.0;
  Duty duty = Duty::intermittent;
  std::optional<double> load_n, thrust_n;
  std::optional<CentreLineId> centre_line{};
  std::optional<double> load_at{};
  Saying load_place{};
  std::optional<double> span{};
};
constexpr void describe(auto& fields, const TurningBody*) {
  fields.value("TurningBody", "A body that turns by what the job declares.")
      .member("part", &TurningBody::part, "its first part")
      .member("rpm", &TurningBody::rpm, "1/min")
      .range(kOver0)
      .member("duty", &TurningBody::duty, "how hard it works")
      .member("load_n", &TurningBody::load_n, "across its axis, by the job; N or None")
      .range(kFrom0)
      .member("thrust_n", &TurningBody::thrust_n, "along its axis, by the job; N or None")
      .range(kFrom0)
      .member("centre_line", &TurningBody::centre_line,
              "on which its bearings lie; None where it has none")
      .member("load_at_mm", &TurningBody::load_at,
              "where on that line its load acts; None where that is not known")
      .member(
          "load_place", &TurningBody::load_place,
          "how that is known: \"at Crank: bore\", \"at the middle of Wheel, no place is given\"")
      .member("span_mm", &TurningBody::span,
              "between the middles of its two bearings; None where it has more or fewer");
}

/// A seat that carries a body that turns.
struct Bearing {
  FeatureRef hole, shaft;
  std::size_t seat = 0;
  OccurrenceId turning{};
  double rpm = 0.0;
  Duty duty = Duty::intermittent;
  bool both = false;
  Certainty certainty = Certainty::certain;
  CentreLineId centre_line{};
  double station = 0.0;
  double length = 0.0;
  double covered = 0.0;
  std::optional<double> load_n{};
  std::optional<double> moment_nm{};
  Saying how{};
  Saying doubt{};
};
constexpr void describe(auto& fields, const Bearing*) {
  fields.value("Bearing", "A seat that carries a body that turns.")
      .member("hole", &Bearing::hole, "what it runs in, or what runs")
      .member("shaft", &Bearing::shaft, "what it runs on, or what runs")
      .member("seat", &Bearing::seat, "number of the radial seat, from 0")
      .member("turning", &Bearing::turning, "the part that turns, of two that do the faster")
      .member(
          "rpm", &Bearing::rpm,
          "of the two against each other, 1/min; where both turn the sum, as against each other")
      .range(kOver0)
      .member("duty", &Bearing::duty, "the harder of the two")
      .member("both", &Bearing::both, "whether both parts turn")
      .member("certainty", &Bearing::certainty,
              "perhaps: its fit may also come out tight, or the others keep the shaft off it, and "
              "then it "
              "is none")
      .member("centre_line", &Bearing::centre_line, "number, from 0")
      .member("station_mm", &Bearing::station, "of the middle of its length on that line")
      .member("length_mm", &Bearing::length, "that hole and shaft share")
      .range(kFrom0)
      .degrees("covered_deg", &Bearing::covered, "how far round it bears")
      .range({0.0, 360})
      .member("load_n", &Bearing::load_n,
              "N; negative where it is lifted against the load; None where it is not known")
      .member("moment_nm", &Bearing::moment_nm,
              "N m that a lone bearing takes too; None with others or where it is not known")
      .member("how", &Bearing::how, "how the load is known, or why it is not")
      .member("doubt", &Bearing::doubt,
              "why it may not carry that load, or not that one; empty where nothing speaks against "
              "it");
}

/// Two faces that rub on each other under end thrust.
struct ThrustFace {
  FeatureRef a, b;
  std::size_t seat = 0;
  OccurrenceId turning{};
  double rpm = 0.0;
  Duty duty = Duty::intermittent;
  std::optional<double> thrust_n;
  double gap = 0.0;
  double short_by = 0.0;
  Certainty certainty = Certainty::certain;
  Saying why{};
};
constexpr void describe(auto& fields, const ThrustFace*) {
  fields.value("ThrustFace", "Two faces that rub on each other where an end play is closed.")
      .member("a", &ThrustFace::a, "where the one is")
      .member("b", &ThrustFace::b, "where the other is")
      .member("seat", &ThrustFace::seat, "number of the axial seat, from 0")
      .member("turning", &ThrustFace::turning, "the part that turns, of two that do the faster")
      .member("rpm", &ThrustFace::rpm, "of the two against each other, 1/min")
      .range(kOver0)
      .member("duty", &ThrustFace::duty, "the harder of the two")
      .member("thrust_n", &ThrustFace::thrust_n, "N, by the job, or None")
      .range(kFrom0)
      .member("gap_mm", &ThrustFace::gap, "between the two, as measured or modelled")
      .member("short_by_mm", &ThrustFace::short_by,
              "how much sooner other faces stop the two as drawn; 0 where none do")
      .range(kFrom0)
      .member("certainty", &ThrustFace::certainty,
              "perhaps: whether they meet goes by how the lengths of the parts come out, or is not "
              "known")
      .member("why", &ThrustFace::why, "what may stop them first; empty where nothing does");
}

}  // namespace spotblue
