#include "group/turning/load_place.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "group/words/said_turning.hpp"

namespace spotblue {
namespace {

Point middle_of(const Line& axis, const std::vector<Interval>& intervals) {
  return intervals.empty()
             ? axis.at
             : at_station(axis, 0.5 * (intervals.front().low + intervals.back().high));
}

// In the product's frame.
Point middle_of(const Product& product, const FeatureRef& feature) {
  switch (feature.kind) {
    case FeatureKind::cylinder: {
      const Cylinder& cylinder = product.cylinders[feature.index];
      return middle_of(cylinder.axis, cylinder.intervals);
    }
    case FeatureKind::cone: {
      const Cone& cone = product.cones[feature.index];
      return middle_of(cone.axis, cone.intervals);
    }
    case FeatureKind::width: {
      const Width& width = product.widths[feature.index];
      return 0.5 * (product.planes[width.first].at + product.planes[width.second].at);
    }
    case FeatureKind::plane:
      break;
  }
  return product.planes[feature.index].at;
}

// The place of a feature that stands once, or once in the body that turns.
FeatureRef one_place(const DeclaredJob& declared, const Groups& groups, const Turn& turn) {
  const Turning& entry = *turn.loaded;
  const NamedFeature named = declared.names.feature(entry.at, {"turning", "at", entry.line});
  const std::size_t body = groups.turns_with.at(turn.named.front());
  std::vector<FeatureRef> own;
  for (const FeatureRef& ref : named.refs) {
    if (groups.turns_with.at(ref.occurrence) == body) {
      own.push_back(ref);
    }
  }
  const std::vector<FeatureRef>& all = own.empty() ? named.refs : own;
  if (all.size() != 1) {
    throw Error(
        ErrorCode::bad_input, entry_place(*declared.job, "turning", entry.line),
        fmt::format("\"{}\" stands at {} places, the load acts at one", entry.at, all.size()),
        "name the feature of one occurrence: \"Group/Part: feature\"");
  }
  return all.front();
}

LoadPlace named_place(const DeclaredJob& declared, const Groups& groups, const Turn& turn) {
  const FeatureRef feature = one_place(declared, groups, turn);
  const Model& model = declared.look->model;
  const Occurrence& occurrence = model.occurrences[feature.occurrence];
  const Product& product = model.products[occurrence.product];
  const Turning& entry = *turn.loaded;
  Point at = place_point(occurrence.frame, middle_of(product, feature));
  Saying words = say(said::kLoadAt, declared.names.reference(feature));
  if (entry.out) {
    if (feature.kind != FeatureKind::plane) {
      throw Error(ErrorCode::bad_input, entry_place(*declared.job, "turning", entry.line),
                  fmt::format("\"{}\" is no face to go past", entry.at),
                  "name a face, or leave out = away: the middle of the feature is meant then");
    }
    const Point normal = place_direction(occurrence.frame, product.planes[feature.index].normal);
    at = at + entry.out->in_mm() * normal;
    words = say(said::kLoadPast, *entry.out, declared.names.reference(feature));
  }
  return {at, words, {feature.occurrence}};
}

// By its box; nothing where it has none.
std::optional<Point> middle_of_part(const Model& model, OccurrenceId part) {
  const Occurrence& occurrence = model.occurrences[part];
  const Box& own = model.products[occurrence.product].box;
  if (!is_empty(own)) {
    return place_point(occurrence.frame, 0.5 * (own.low + own.high));
  }
  return is_empty(occurrence.box) ? std::nullopt
                                  : std::optional(0.5 * (occurrence.box.low + occurrence.box.high));
}

}  // namespace

LoadPlace load_place(const DeclaredJob& declared, const Groups& groups, const Turn& turn) {
  if (turn.loaded == nullptr || turn.named.empty()) {
    return {std::nullopt, said::kNoLoadGiven, {}};
  }
  if (!turn.loaded->at.empty()) {
    return named_place(declared, groups, turn);
  }
  Point sum;
  for (const OccurrenceId part : turn.named) {
    const std::optional<Point> middle = middle_of_part(declared.look->model, part);
    if (!middle) {
      return {std::nullopt, said::kNoPlaceGiven, {}};
    }
    sum = sum + *middle;
  }
  return {(1.0 / static_cast<double>(turn.named.size())) * sum,
          say(said::kLoadAtMiddle, Reference(turn.loaded->part)),
          {}};
}

}  // namespace spotblue
