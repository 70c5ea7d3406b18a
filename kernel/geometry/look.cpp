#include "spotblue/geometry/look.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <set>
#include <utility>

#include "base/logger.hpp"
#include "base/time_limit.hpp"
#include "geometry/read_timed.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

double seconds_since(std::chrono::steady_clock::time_point start) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

std::string pair_name(const Model& model, const std::pair<std::size_t, std::size_t>& pair) {
  return fmt::format("{} and {}", model.occurrences[pair.first].id,
                     model.occurrences[pair.second].id);
}

// Each pair once, by what was not looked for.
void tell_pairs(Look& look) {
  const auto& seats = look.seats.not_looked_at;
  const std::set<std::pair<std::size_t, std::size_t>> no_seats(seats.begin(), seats.end());
  for (const auto& pair : seats) {
    look.not_looked_at.push_back(
        {pair_name(look.model, pair), "whether they seat, screw or clash: the time given was up"});
  }
  for (const auto& pair : look.clash.not_looked_at) {
    if (!no_seats.contains(pair)) {
      look.not_looked_at.push_back(
          {pair_name(look.model, pair), "whether they clash: the time given was up"});
    }
  }
}

void look_for_all(Look& look) {
  const auto start = std::chrono::steady_clock::now();
  const LookSettings& settings = look.settings;
  bool done = done_in_time([&] { look.seats = find_seats(look.model, settings.seats); });
  look.seconds.seats = seconds_since(start);
  const auto clash_start = std::chrono::steady_clock::now();
  done = done && done_in_time([&] {
           look.clash = find_clashes(look.model, look.seats, settings.seats, settings.limits);
         });
  look.seconds.clash = seconds_since(clash_start);
  if (!done) {
    look.not_looked_at.push_back(
        {look.model.file.name, "which parts come near each other: the time given was up"});
  }
  tell_pairs(look);
}

}  // namespace

Look look_at(Model model, const LookSettings& settings) {
  const auto start = std::chrono::steady_clock::now();
  const TimeLimit limit(settings.seconds);
  Look result;
  result.settings = settings;
  result.model = std::move(model);
  look_for_all(result);
  result.seconds.total = seconds_since(start);
  return result;
}

Look look(const std::filesystem::path& file, const LookSettings& settings) {
  const auto start = std::chrono::steady_clock::now();
  const TimeLimit limit(settings.seconds);
  Look result;
  result.settings = settings;
  const bool read = done_in_time([&] {
    TimedModel timed = read_model_timed(file, settings.limits, settings.completeness);
    result.model = std::move(timed.model);
    result.seconds.read = timed.read_seconds;
    result.seconds.features = timed.features_seconds;
    result.not_looked_at = std::move(timed.not_looked_at);
  });
  if (read) {
    look_for_all(result);
  } else {
    result.seconds.read = seconds_since(start);
    result.model.file.name = shown_name(file);
    result.not_looked_at.push_back(
        {result.model.file.name,
         fmt::format("reading it was not done after {:.3g} s: nothing of it was looked at",
                     settings.seconds)});
  }
  result.seconds.total = seconds_since(start);
  logger().info("looked at {} in {:.2f} s: {} occurrences, {} radial seats, {} clashes",
                file.string(), result.seconds.total, result.model.occurrences.size(),
                result.seats.radial.size(), result.clash.clashes.size());
  return result;
}

std::string feature_id(const Model& model, const FeatureRef& feature) {
  const Product& product = model.products[model.occurrences[feature.occurrence].product];
  std::string name;
  switch (feature.kind) {
    case FeatureKind::cylinder:
      name = product.cylinders[feature.index].name;
      break;
    case FeatureKind::cone:
      name = product.cones[feature.index].name;
      break;
    case FeatureKind::plane:
      name = product.planes[feature.index].name;
      break;
    case FeatureKind::width:
      name = product.widths[feature.index].name;
      break;
  }
  return product.id + ": " + name;
}

}  // namespace spotblue
