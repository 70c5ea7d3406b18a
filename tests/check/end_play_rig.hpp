#pragma once
// A wheel with a flanged bush pressed into it runs on a stud between the stud's flange and a keeper
// on its end, all plain values; worked by hand:
//   play = journal 42.8 - flange 2.5 - wheel 40 = 0.3.

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "spotblue/base/unit.hpp"
#include "spotblue/check/judge_job.hpp"
#include "support/bench.hpp"
#include "support/value_parts.hpp"

namespace spotblue::test {

// Round faces named as a reader of the model would name them: "face 40 @ 0".
inline Product named(Product part, const std::string& name, double volume) {
  part.id = part.name = name;
  part.volume = volume;
  for (Plane& plane : part.planes) {
    const double diameter = 2.0 * extent(plane.outline).high.u;
    plane.name = "face " + format_size(Length::mm(diameter), LengthUnit::mm) + " @ " +
                 format_size(Length::mm(plane.at.z), LengthUnit::mm);
  }
  for (std::size_t i = 0; i < part.cylinders.size(); ++i) {
    part.cylinders[i].name = "outside " + std::to_string(i + 1);
  }
  return part;
}

class Rig {
 public:
  Job job;
  Look look;

  Rig() { job.settings.default_uncertainty = Length::mm(0.002); }

  void add(const Product& part, double z) {
    look.model.occurrences.push_back({.id = "Group/" + part.name,
                                      .path = "Group/" + part.name,
                                      .product = ProductId(look.model.products.size()),
                                      .frame = shifted(0, 0, z),
                                      .mirrored = false,
                                      .box = place_box(shifted(0, 0, z), part.box)});
    look.model.products.push_back(part);
  }
  JobPart& declare(const std::string& part, const std::string& material = {}) {
    job.parts.push_back({.part = part,
                         .material = material,
                         .stock = {},
                         .running_c = {},
                         .thickness = {},
                         .squeeze = {}});
    return job.parts.back();
  }
  void want(double least, double greatest, const std::string& of = "Wheel") {
    job.end_play.push_back({of, {Length::mm(least), Length::mm(greatest)}, 7});
  }
  // The end play findings; seats are found anew.
  [[nodiscard]] std::vector<Finding> findings() {
    look.seats = find_seats(look.model, look.settings.seats);
    std::vector<Finding> all = judge_job(job, look);
    std::erase_if(all, [](const Finding& finding) { return finding.kind != "end play"; });
    return all;
  }
  [[nodiscard]] Finding only() {
    const std::vector<Finding> all = findings();
    EXPECT_EQ(all.size(), 1U);
    return all.empty() ? Finding{} : all.front();
  }
};

inline Product stud() {
  return named(turned_part({{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 42.8}, {0, 42.8}}), "Stud",
               9e4);
}
inline Product bush() {
  return named(
      turned_part({{10.02, 0}, {20, 0}, {20, 2.5}, {15.02, 2.5}, {15.02, 40}, {10.02, 40}}), "Bush",
      1e4);
}

inline Rig wheel_on_stud() {
  Rig rig;
  rig.add(stud(), 0.0);
  rig.add(bush(), 0.0);
  rig.add(named(ring_part(15, 25, 0, 40), "Wheel", 5e4), 2.5);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 42.8);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  return rig;
}

}  // namespace spotblue::test
