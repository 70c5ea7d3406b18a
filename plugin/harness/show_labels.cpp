#include "plugin/harness/show_labels.hpp"

#include <fmt/format.h>

#include <BRepBndLib.hxx>
#include <Bnd_Box.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <algorithm>
#include <cmath>

#include "spotblue/geometry/feature_faces.hpp"

namespace spotblue::plugin {
namespace {

struct Extent {
  Point low, high;
};

bool is_of(const FeatureFace& face, const FeatureRef& feature, const Product& product) {
  if (feature.kind == FeatureKind::width) {
    const Width& width = product.widths[feature.index];
    return face.kind == FeatureKind::plane &&
           (face.index == width.first || face.index == width.second);
  }
  return face.kind == feature.kind && face.index == feature.index;
}

// Of the feature's faces where they lie in the assembly.
Extent extent_of(const Subject& subject, const FeatureRef& feature) {
  const ProductId product = subject.result.look.model.occurrences[feature.occurrence].product;
  TopTools_IndexedMapOfShape faces;
  TopExp::MapShapes(subject.placed[feature.occurrence], TopAbs_FACE, faces);
  Bnd_Box box;
  const Product& part = subject.result.look.model.products[product];
  for (const FeatureFace& face : feature_faces(subject.product_shapes[product], part)) {
    if (is_of(face, feature, part)) {
      BRepBndLib::AddOptimal(faces(static_cast<int>(face.face)), box, Standard_False);
    }
  }
  if (box.IsVoid()) {
    return {};
  }
  const gp_Pnt low = box.CornerMin();
  const gp_Pnt high = box.CornerMax();
  return {{low.X(), low.Y(), low.Z()}, {high.X(), high.Y(), high.Z()}};
}

// The middle of what two features have in common of their extents.
Point middle_of(const Extent& a, const Extent& b) {
  const auto middle = [](double a_low, double a_high, double b_low, double b_high) {
    return 0.5 * (std::max(a_low, b_low) + std::min(a_high, b_high));
  };
  return {middle(a.low.x, a.high.x, b.low.x, b.high.x),
          middle(a.low.y, a.high.y, b.low.y, b.high.y),
          middle(a.low.z, a.high.z, b.low.z, b.high.z)};
}

// Off the centre line by the seat's mean radius, else the label would hide in the bore.
Point on_ring(const Look& look, const AxialSeat& seat, Point middle) {
  if (!seat.centre_line || !seat.inner || !seat.outer) {
    return middle;
  }
  const Line& line = look.seats.centre_lines[*seat.centre_line].line;
  const double radius = 0.25 * (*seat.inner + *seat.outer);
  const Point foot = at_station(line, station(line, middle));
  const Point other = std::abs(line.along.x()) < 0.9 ? Point{1.0, 0.0, 0.0} : Point{0.0, 1.0, 0.0};
  return foot + radius * unit(cross(line.along, other));
}

class Labels {
 public:
  Labels(const Subject& subject, const Marks& marks) : subject_(subject), marks_(marks) {}

  std::vector<SeatLabel> all() {
    const Seats& seats = subject_.result.look.seats;
    for (const RadialSeat& seat : seats.radial) {
      add(seat.hole, at_station(seat.axis, 0.5 * (seat.from + seat.to)), figure(seat.clearance));
    }
    for (const AxialSeat& seat : seats.axial) {
      add(seat.a, on_ring(subject_.result.look, seat, between(seat.a, seat.b)), figure(seat.gap));
    }
    for (const TaperSeat& seat : seats.taper) {
      add(seat.hole, seat.axis.at, figure(seat.gap));
    }
    for (const WidthSeat& seat : seats.width) {
      add(seat.slot, between(seat.slot, seat.key), figure(seat.clearance));
    }
    for (const Thread& thread : seats.threads) {
      add(thread.hole, at_station(thread.axis, 0.5 * (thread.from + thread.to)), thread.size);
    }
    for (const Foul& foul : subject_.result.look.fouls.found) {
      if (foul.at) {
        labels_.push_back({fmt::format("foul: {}", foul.cause), *foul.at, Mark::nonconforming});
      }
    }
    return std::move(labels_);
  }

 private:
  static std::string figure(double value_mm) {
    return format_length(Length::mm(value_mm), LengthUnit::mm, 4);
  }

  [[nodiscard]] Mark mark_of(const FeatureRef& feature) const {
    const ProductId product = subject_.result.look.model.occurrences[feature.occurrence].product;
    const auto found = marks_.features.find({product, feature.kind, feature.index});
    return found == marks_.features.end() ? Mark::seat : found->second;
  }

  [[nodiscard]] Point between(const FeatureRef& a, const FeatureRef& b) const {
    return middle_of(extent_of(subject_, a), extent_of(subject_, b));
  }

  void add(const FeatureRef& feature, Point at, const std::string& value) {
    const Mark mark = mark_of(feature);
    labels_.push_back({fmt::format("{}\n{}: {}", feature_id(subject_.result.look.model, feature),
                                   mark_name(mark), value),
                       at, mark});
  }

  const Subject& subject_;
  const Marks& marks_;
  std::vector<SeatLabel> labels_;
};

}  // namespace

std::vector<SeatLabel> labels_of(const Subject& subject, const Marks& marks) {
  return Labels(subject, marks).all();
}

}  // namespace spotblue::plugin
