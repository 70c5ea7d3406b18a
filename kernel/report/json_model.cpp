#include <cmath>

#include "report/json_members.hpp"

namespace spotblue {
namespace {

void open_feature(JsonWriter& out, const std::string& quoted_id, std::string_view kind) {
  out.open_object();
  out.key("id");
  out.quoted(quoted_id);
  field(out, "kind", kind);
}

// Of a surface that the file holds as something else.
void deviation_field(JsonWriter& out, SurfaceSource source, double deviation_mm) {
  if (source == SurfaceSource::bspline || source == SurfaceSource::revolution ||
      source == SurfaceSource::extrusion) {
    field(out, "deviation_mm", deviation_mm);
  }
}

void write_cylinder(JsonWriter& out, const Cylinder& cylinder, const std::string& id) {
  open_feature(out, id, cylinder.side == Side::internal ? "hole" : "shaft");
  write_members(out, cylinder);
  deviation_field(out, cylinder.source, cylinder.deviation);
  out.close_object();
}

void write_cone(JsonWriter& out, const Cone& cone, const std::string& id) {
  open_feature(out, id, cone.side == Side::internal ? "cone_hole" : "cone_shaft");
  if (!cone.intervals.empty()) {
    const auto diameter_at = [&cone](double at) {
      return 2.0 * (cone.radius + at * std::tan(cone.half_angle));
    };
    field(out, "small_mm", diameter_at(cone.intervals.front().low));
    field(out, "large_mm", diameter_at(cone.intervals.back().high));
  }
  angle_field(out, "half_angle_deg", cone.half_angle);
  write_members(out, cone);
  deviation_field(out, cone.source, cone.deviation);
  out.close_object();
}

void write_plane(JsonWriter& out, const Plane& plane, const std::string& id) {
  open_feature(out, id, "plane");
  field(out, "area_mm2", area(plane.outline));
  axis_field(out, "axis", {plane.at, plane.normal});
  write_members(out, plane);
  deviation_field(out, plane.source, plane.deviation);
  out.close_object();
}

void write_width(JsonWriter& out, const Product& product, const Width& width,
                 const std::string& id) {
  open_feature(out, id, width.side == Side::internal ? "slot" : "key");
  write_members(out, width);
  const Plane& first = product.planes[width.first];
  axis_field(out, "axis", {first.at, first.normal});
  out.close_object();
}

void write_features(JsonWriter& out, const Model& model, ProductId index, const ModelNames& names) {
  const Product& product = model.products[index];
  out.key("features");
  out.open_array(JsonWriter::Layout::line_each);
  for (std::size_t i = 0; i < product.cylinders.size(); ++i) {
    write_cylinder(out, product.cylinders[i], names.feature(index, FeatureKind::cylinder, i));
  }
  for (std::size_t i = 0; i < product.cones.size(); ++i) {
    write_cone(out, product.cones[i], names.feature(index, FeatureKind::cone, i));
  }
  for (std::size_t i = 0; i < product.planes.size(); ++i) {
    write_plane(out, product.planes[i], names.feature(index, FeatureKind::plane, i));
  }
  for (std::size_t i = 0; i < product.widths.size(); ++i) {
    write_width(out, product, product.widths[i], names.feature(index, FeatureKind::width, i));
  }
  out.close_array();
}

}  // namespace

void angle_field(JsonWriter& out, std::string_view key, double rad) {
  field(out, key, degrees(rad));
}

void point_field(JsonWriter& out, std::string_view key, const Point& point) {
  out.key(key);
  out.open_array();
  out.number(point.x);
  out.number(point.y);
  out.number(point.z);
  out.close_array();
}

void axis_field(JsonWriter& out, std::string_view key, const Line& axis) {
  out.key(key);
  out.open_object();
  write_members(out, axis);
  out.close_object();
}

void frame_field(JsonWriter& out, std::string_view key, const Frame& frame) {
  out.key(key);
  out.open_array();
  for (const auto& row : frame.rows) {
    out.open_array();
    for (const double value : row) {
      out.number(value);
    }
    out.close_array();
  }
  out.close_array();
}

void write_settings(JsonWriter& out, const LookSettings& settings) {
  out.key("settings");
  out.open_object();
  write_members(out, settings.seats);
  write_object(out, "limits", settings.limits);
  out.key("accept_partial");
  out.truth(settings.completeness == Completeness::accept_partial);
  out.close_object();
}

void write_products(JsonWriter& out, const Model& model, const ModelNames& names) {
  out.key("products");
  out.open_array(JsonWriter::Layout::line_each);
  for (ProductId i; i < model.products.size(); ++i) {
    out.open_object();
    write_members(out, model.products[i]);
    write_features(out, model, i, names);
    out.close_object();
  }
  out.close_array();
}

}  // namespace spotblue
