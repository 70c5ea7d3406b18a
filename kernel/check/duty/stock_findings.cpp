#include "check/duty/stock_findings.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "check/fits/fit_verdict.hpp"
#include "group/words/said_stock.hpp"
#include "spotblue/mechanics/stock.hpp"

namespace spotblue {
namespace {

constexpr double kSameAxis_mm = 1e-3;
constexpr double kSameDirection = 1e-6;  // rad
// A bore may stop short of the faces by its chamfers and still go through.
constexpr double kThrough = 0.9;

// A part as it would be turned: about the axis of its largest whole outside cylinder.
struct Turned {
  RoundPart size;
  bool measured_whole = true;  // false: a free-form face was left out
};

bool on_axis(const Line& axis, const Line& other) {
  return angle_between_lines(axis.along, other.along) < kSameDirection &&
         distance(axis, other.at) < kSameAxis_mm;
}

std::optional<Line> main_axis(const Product& product) {
  const Cylinder* largest = nullptr;
  for (const Cylinder& cylinder : product.cylinders) {
    if (cylinder.side == Side::external && cylinder.coverage > std::numbers::pi &&
        (largest == nullptr || cylinder.diameter > largest->diameter)) {
      largest = &cylinder;
    }
  }
  return largest == nullptr ? std::nullopt : std::optional(largest->axis);
}

// The farthest point from the axis, and the ends along it, of everything that is added.
class Envelope {
 public:
  explicit Envelope(const Line& axis) : axis_(axis) {}

  void add(Point p, double around = 0.0) {
    radius_ = std::max(radius_, distance(axis_, p) + around);
    const double s = station(axis_, p);
    from_ = std::min(from_, s);
    to_ = std::max(to_, s);
  }
  // An arc is taken with its whole circle: the stock must hold what is round about it anyway.
  void add(const Plane& plane) {
    const Direction v = third(plane.normal, plane.u);
    for (const Edge2& edge : plane.outline.edges) {
      add(plane.at + edge.from.u * plane.u + edge.from.v * v);
      if (edge.sweep != 0.0 && angle_between_lines(plane.normal, axis_.along) < kSameDirection) {
        add(plane.at + edge.centre.u * plane.u + edge.centre.v * v, edge.radius);
      }
    }
  }
  [[nodiscard]] double diameter() const { return 2.0 * radius_; }
  [[nodiscard]] bool holds(const Box& box) const {
    constexpr double same = 1e-6;
    for (int corner = 0; corner < 8; ++corner) {
      const Point p{(corner & 1) != 0 ? box.high.x : box.low.x,
                    (corner & 2) != 0 ? box.high.y : box.low.y,
                    (corner & 4) != 0 ? box.high.z : box.low.z};
      const double s = station(axis_, p);
      if (distance(axis_, p) > radius_ + same || s < from_ - same || s > to_ + same) {
        return false;
      }
    }
    return true;
  }
  [[nodiscard]] double length() const { return std::max(0.0, to_ - from_); }

 private:
  Line axis_;
  double radius_ = 0.0;
  double from_ = std::numeric_limits<double>::infinity();
  double to_ = -std::numeric_limits<double>::infinity();
};

// What is least or greatest of a cylinder, worn or not.
double least_diameter(const Cylinder& cylinder) {
  double least = cylinder.diameter;
  for (const DiameterAt& size : cylinder.sizes) {
    least = std::min(least, size.least);
  }
  return least;
}

double greatest_diameter(const Cylinder& cylinder) {
  double greatest = cylinder.diameter;
  for (const DiameterAt& size : cylinder.sizes) {
    greatest = std::max(greatest, size.greatest);
  }
  return greatest;
}

// The least hole about the axis when holes reach through nearly the whole length, else 0.
double through_bore(const Product& product, const Line& axis, double length) {
  double least = 0.0;
  double open = 0.0;
  const auto take = [&](double diameter, double from, double to) {
    least = least == 0.0 ? diameter : std::min(least, diameter);
    open += to - from;
  };
  for (const Cylinder& cylinder : product.cylinders) {
    for (const auto& [from, to] : cylinder.intervals) {
      if (cylinder.side == Side::internal && on_axis(axis, cylinder.axis)) {
        take(least_diameter(cylinder), from, to);
      }
    }
  }
  for (const Cone& cone : product.cones) {
    for (const auto& [from, to] : cone.intervals) {
      if (cone.side == Side::internal && on_axis(axis, cone.axis)) {
        take(2.0 * (cone.radius + from * std::tan(cone.half_angle)), from, to);
      }
    }
  }
  return open >= kThrough * length ? least : 0.0;
}

std::optional<Turned> as_turned(const Product& product) {
  const auto axis = main_axis(product);
  if (!axis) {
    return std::nullopt;
  }
  Envelope envelope(*axis);
  Turned turned;
  for (const Cylinder& cylinder : product.cylinders) {
    for (const auto& [from, to] : cylinder.intervals) {
      if (cylinder.side == Side::external && on_axis(*axis, cylinder.axis)) {
        envelope.add(at_station(cylinder.axis, from), 0.5 * greatest_diameter(cylinder));
        envelope.add(at_station(cylinder.axis, to), 0.5 * greatest_diameter(cylinder));
      }
    }
  }
  for (const Cone& cone : product.cones) {
    for (const auto& [from, to] : cone.intervals) {
      if (cone.side == Side::external && on_axis(*axis, cone.axis)) {
        envelope.add(at_station(cone.axis, to), cone.radius + to * std::tan(cone.half_angle));
      }
    }
  }
  for (const Plane& plane : product.planes) {
    envelope.add(plane);
  }
  for (const OtherFace& face : product.others) {
    if (face.revolved && on_axis(*axis, face.axis)) {
      envelope.add(at_station(face.axis, face.from), face.outer);
      envelope.add(at_station(face.axis, face.to), face.outer);
    }
  }
  for (const OtherFace& face : product.others) {
    const bool ring = face.revolved && on_axis(*axis, face.axis);
    turned.measured_whole = turned.measured_whole && (ring || envelope.holds(face.box));
  }
  const double length = envelope.length();
  turned.size = {envelope.diameter(), through_bore(product, *axis, length), length};
  return turned;
}

std::optional<double> in_mm(const std::optional<Length>& length) {
  return length ? std::optional(length->in_mm()) : std::nullopt;
}

RoundStock round_stock(const Stock& stock) {
  return {stock.diameter.value_or(Length()).in_mm(),
          stock.inner_diameter.value_or(Length()).in_mm(), in_mm(stock.length)};
}

BlockStock block_stock(const Stock& stock) {
  return {in_mm(stock.length), in_mm(stock.width), in_mm(stock.thickness)};
}

FlatSidedPart as_block(const Product& product) {
  const Point size = product.box.high - product.box.low;
  return {size.x, size.y, size.z};
}

StockCheck checked(const Product& product, const std::optional<Turned>& turned, const Stock& stock,
                   double cleaning_mm) {
  if (stock.form == StockForm::plate) {
    return turned ? check_stock(turned->size, block_stock(stock), cleaning_mm)
                  : check_stock(as_block(product), block_stock(stock), cleaning_mm);
  }
  return turned ? check_stock(turned->size, round_stock(stock), cleaning_mm)
                : check_stock(as_block(product), round_stock(stock), cleaning_mm);
}

Verdict verdict_on(const StockCheck& check, bool measured_whole, const Stock& stock) {
  if (!check.fits()) {
    Saying by;
    for (const StockMargin& margin : check.margins) {
      if (margin.margin_mm < 0.0) {
        by += say(said::kStockShort, margin.size, Length::mm(-margin.margin_mm));
      }
    }
    return {Outcome::nonconforming,
            say(said::kStockTooSmall, word_of(stock.form), by) + said::kFindLargerStock};
  }
  const bool plate = stock.form == StockForm::plate;
  if (!stock.length || (plate && !stock.width)) {
    return {Outcome::undecided, plate ? said::kPlateSizes : said::kStockLength};
  }
  if (!measured_whole) {
    return {Outcome::undecided, said::kFreeFormLeftOut};
  }
  return {Outcome::conforming,
          say(said::kStockFits, word_of(stock.form), Length::mm(check.least_margin_mm()))};
}

Finding judge_stock(const DeclaredJob& declared, const JobPart& part) {
  const Model& model = declared.look->model;
  const NamedPart named = declared.names.part(part.part, {"parts", "part", part.line});
  const Product& product =
      model.products.at(model.occurrences.at(named.occurrences.front()).product);
  const Stock& stock = *part.stock;
  const double cleaning = declared.job->conditions.cleaning.in_mm();
  const std::optional<Turned> turned = as_turned(product);
  const StockCheck check = checked(product, turned, stock, cleaning);
  Finding finding;
  finding.kind = "stock";
  finding.about = {{part.part, named.occurrences.front()}};
  if (turned) {
    finding.found = {{"outside", millimetres(turned->size.outside_mm)},
                     {"length", millimetres(turned->size.length_mm)}};
    if (turned->size.bore_mm > 0.0) {
      finding.found.push_back({"bore", millimetres(turned->size.bore_mm)});
    }
  } else {
    const FlatSidedPart block = as_block(product);
    finding.found = {{"box_x", millimetres(block.length_mm)},
                     {"box_y", millimetres(block.width_mm)},
                     {"box_z", millimetres(block.thickness_mm)}};
  }
  if (check.volume_mm3 && product.volume > 0.0 && *check.volume_mm3 > product.volume) {
    finding.found.push_back({"removed", cubic_millimetres(*check.volume_mm3 - product.volume)});
    finding.found.push_back(
        {"removed", percent(100.0 * (1.0 - product.volume / *check.volume_mm3))});
  }
  finding.wanted = {{"stock", std::string(word_of(stock.form))},
                    {"cleaning", millimetres(cleaning)}};
  for (const StockMargin& margin : check.margins) {
    finding.margin.push_back({margin.size, millimetres(margin.margin_mm)});
  }
  const Verdict verdict = verdict_on(check, !turned || turned->measured_whole, stock);
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice;
  finding.basis = say(turned ? said::kAboutItsAxis : said::kBoxRoundIt, Length::mm(cleaning)) +
                  say(said::kCleaning, DrawnSize{Conditions{}.cleaning}) + said::kNoSaw;
  return finding;
}

}  // namespace

std::vector<Finding> stock_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const JobPart& part : declared.job->parts) {
    if (part.stock && part.state == PartState::to_make) {
      findings.push_back(judge_stock(declared, part));
    }
  }
  return findings;
}

}  // namespace spotblue
