#include "spotblue/geometry/look.hpp"

#include <chrono>
#include <utility>

#include "base/logger.hpp"
#include "geometry/read_timed.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

double seconds_since(std::chrono::steady_clock::time_point start) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace

Look look_at(Model model, const LookSettings& settings) {
  const auto start = std::chrono::steady_clock::now();
  Look result;
  result.settings = settings;
  result.model = std::move(model);
  result.seats = find_seats(result.model, settings.seats);
  result.seconds.seats = seconds_since(start);
  stop_if_asked();
  const auto clash_start = std::chrono::steady_clock::now();
  result.clash = find_clashes(result.model, result.seats, settings.seats, settings.limits);
  result.seconds.clash = seconds_since(clash_start);
  result.seconds.total = seconds_since(start);
  return result;
}

Look look(const std::filesystem::path& file, const LookSettings& settings) {
  const auto start = std::chrono::steady_clock::now();
  TimedModel timed = read_model_timed(file, settings.limits, settings.completeness);
  Look result = look_at(std::move(timed.model), settings);
  result.seconds.read = timed.read_seconds;
  result.seconds.features = timed.features_seconds;
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
