#pragma once
/// @file
/// A job as values: which model, what is known of its parts, what was measured and what is wanted.
/// Lengths are lengths whatever unit the job file was written in; names are kept as written and are
/// matched to the model by the check layer, which names `line` when one does not match.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/settings.hpp"
#include "spotblue/job/job_parts.hpp"
#include "spotblue/job/job_running.hpp"
#include "spotblue/job/job_wants.hpp"

namespace spotblue {

struct Conditions {
  double bench_c = 20.0;
  double running_c = 20.0;
  double friction_least = 0.08, friction_greatest = 0.2;
  double rz_um = 6.3;
  std::optional<Length> slip_clearance;
  std::string untoleranced = "m";
  Length cleaning = Length::mm(1.0);
};
constexpr void describe(auto& fields, const Conditions*) {
  fields
      .value("Conditions",
             "What holds for the whole job; the defaults are common practice, no source, and each "
             "finding that uses one says so.")
      .member("bench_c", &Conditions::bench_c, "temperature of the bench")
      .member("running_c", &Conditions::running_c, "of parts without one of their own")
      .member("friction_least", &Conditions::friction_least, "of pressed joints")
      .member("friction_greatest", &Conditions::friction_greatest, "of pressed joints")
      .member("rz_um", &Conditions::rz_um, "of features without a surface of their own")
      .member("slip_clearance_mm", &Conditions::slip_clearance,
              "for a slip-in assembly; None: 0.001 of the diameter")
      .member("untoleranced", &Conditions::untoleranced,
              "ISO 2768-1 class of lengths without limits")
      .member("cleaning_mm", &Conditions::cleaning, "metal to clean off each side of the stock");
}

/// How the model is read and seats are found.
struct JobSettings {
  LookSettings look;
  /// Of sizes that have none of their own: measured values, and actual sizes from the model.
  Length default_uncertainty;
};

struct Job {
  std::string file;
  std::filesystem::path model;
  std::vector<std::filesystem::path> read_from;
  LengthUnit unit = LengthUnit::mm;
  std::string title;
  std::vector<JobPart> parts;
  std::vector<SharedStock> stock;
  std::vector<FitWant> fits;
  std::vector<ThreadWant> threads;
  std::vector<SizeWant> sizes;
  std::vector<MeasuredSize> measured;
  std::vector<MeasuredGap> measured_gaps;
  std::vector<AxialWant> axial;
  std::vector<TaperWant> tapers;
  std::vector<AllowedOverlap> allowed;
  std::vector<OwnMaterial> materials;
  Conditions conditions;
  std::vector<Turning> turning;
  std::vector<Fixing> fixed;
  std::vector<Adjust> adjust;
  std::vector<KeepOff> keep_off;
  std::vector<Surface> surfaces;
  std::vector<PartLength> lengths;
  std::vector<EndPlayWant> end_play;
  std::vector<Mesh> meshes;
  std::vector<Cut> cuts;
  JobSettings settings;
};
constexpr void describe(auto& fields, const Job*) {
  fields
      .value("Job",
             "Which model, what is known of its parts, what was measured and what is wanted.")
      .member("file", &Job::file, "as the caller gave it; empty for jobs made in code")
      .member("model", &Job::model, "resolved against the job file's folder")
      .member("read_from", &Job::read_from, "the job file and those it includes")
      .member("unit", &Job::unit, "of reports: \"mm\" or \"inch\"")
      .member("title", &Job::title, "of the job")
      .member("parts", &Job::parts, "what is known of the parts")
      .member("stock", &Job::stock, "pieces that several parts are cut from")
      .member("fits", &Job::fits, "how holes and shafts shall fit")
      .member("threads", &Job::threads, "which threads screws have")
      .member("sizes", &Job::sizes, "what single features shall be")
      .member("measured", &Job::measured, "sizes taken with an instrument")
      .member("measured_gaps", &Job::measured_gaps, "gaps taken with a feeler")
      .member("axial", &Job::axial, "gaps wanted between faces")
      .member("tapers", &Job::tapers, "how cones must agree")
      .member("allowed", &Job::allowed, "overlaps that are meant")
      .member("materials", &Job::materials, "materials of the job's own")
      .member("conditions", &Job::conditions, "for the whole job")
      .member("turning", &Job::turning, "parts that turn")
      .member("fixed", &Job::fixed, "parts held by something no fit shows")
      .member("adjust", &Job::adjust, "nuts, collars and shims that are set")
      .member("keep_off", &Job::keep_off, "parts that must stay off each other")
      .member("surfaces", &Job::surfaces, "roughness of single features")
      .member("lengths", &Job::lengths, "distances of two faces of one part")
      .member("end_play", &Job::end_play, "how far captured parts shall travel")
      .member("meshes", &Job::meshes, "gears that run together")
      .member("cuts", &Job::cuts, "metal that comes off parts that exist")
      .member("settings", &Job::settings, "how the model is read");
}

}  // namespace spotblue
