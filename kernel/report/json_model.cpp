#include <cmath>

#include "report/json_parts.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue {
namespace {

std::string_view source_name(SurfaceSource source) {
  switch (source) {
    case SurfaceSource::cylinder:
      return "cylinder";
    case SurfaceSource::cone:
      return "cone";
    case SurfaceSource::plane:
      return "plane";
    case SurfaceSource::bspline:
      return "bspline";
    case SurfaceSource::revolution:
      return "revolution";
    case SurfaceSource::extrusion:
      break;
  }
  return "extrusion";
}

void axis_field(JsonWriter& out, const Point& at, const Direction& along) {
  out.key("axis");
  out.open_object();
  point_field(out, "at", at);
  point_field(out, "along", along);
  out.close_object();
}

void intervals_field(JsonWriter& out, const std::vector<std::pair<double, double>>& intervals) {
  out.key("intervals_mm");
  out.open_array();
  for (const auto& [from, to] : intervals) {
    out.open_array();
    out.number(from);
    out.number(to);
    out.close_array();
  }
  out.close_array();
}

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
  field(out, "diameter_mm", cylinder.diameter);
  if (!cylinder.sizes.empty()) {
    out.key("sizes_mm");
    out.open_array();
    for (const DiameterAt& size : cylinder.sizes) {
      out.open_array();
      out.number(size.at);
      out.number(size.least);
      out.number(size.greatest);
      out.close_array();
    }
    out.close_array();
  }
  axis_field(out, cylinder.axis.at, cylinder.axis.along);
  intervals_field(out, cylinder.intervals);
  angle_field(out, "coverage_deg", cylinder.coverage);
  field(out, "recognised_from", source_name(cylinder.source));
  deviation_field(out, cylinder.source, cylinder.deviation);
  out.close_object();
}

void write_cone(JsonWriter& out, const Cone& cone, const std::string& id) {
  open_feature(out, id, cone.side == Side::internal ? "cone_hole" : "cone_shaft");
  if (!cone.intervals.empty()) {
    const auto diameter_at = [&cone](double at) {
      return 2.0 * (cone.radius + at * std::tan(cone.half_angle));
    };
    field(out, "small_mm", diameter_at(cone.intervals.front().first));
    field(out, "large_mm", diameter_at(cone.intervals.back().second));
  }
  angle_field(out, "half_angle_deg", cone.half_angle);
  axis_field(out, cone.axis.at, cone.axis.along);
  intervals_field(out, cone.intervals);
  angle_field(out, "coverage_deg", cone.coverage);
  field(out, "recognised_from", source_name(cone.source));
  deviation_field(out, cone.source, cone.deviation);
  out.close_object();
}

void write_plane(JsonWriter& out, const Plane& plane, const std::string& id) {
  open_feature(out, id, "plane");
  field(out, "area_mm2", area(plane.outline));
  axis_field(out, plane.at, plane.normal);
  field(out, "recognised_from", source_name(plane.source));
  deviation_field(out, plane.source, plane.deviation);
  out.close_object();
}

void write_width(JsonWriter& out, const Product& product, const Width& width,
                 const std::string& id) {
  open_feature(out, id, width.side == Side::internal ? "slot" : "key");
  field(out, "width_mm", width.width);
  axis_field(out, product.planes[width.first].at, product.planes[width.first].normal);
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

void write_file(JsonWriter& out, const FileInfo& file) {
  out.key("file");
  out.open_object();
  field(out, "name", file.name);
  // A model that was made in memory has none of these.
  const auto field_if_any = [&out](std::string_view key, const std::string& text) {
    if (!text.empty()) {
      field(out, key, text);
    }
  };
  field_if_any("sha256", file.sha256);
  field_if_any("protocol", file.protocol);
  field_if_any("unit", file.unit);
  out.close_object();
}

void write_settings(JsonWriter& out, const LookSettings& settings) {
  const SeatSettings& seats = settings.seats;
  out.key("settings");
  out.open_object();
  field(out, "coaxial_offset_mm", seats.coaxial_offset_mm);
  field(out, "coaxial_offset_per_diameter", seats.coaxial_offset_per_diameter);
  field(out, "coaxial_tilt_deg", seats.coaxial_tilt_deg);
  field(out, "radial_gap_mm", seats.radial_gap_mm);
  field(out, "radial_gap_per_diameter", seats.radial_gap_per_diameter);
  field(out, "radial_overlap_mm", seats.radial_overlap_mm);
  field(out, "radial_overlap_per_diameter", seats.radial_overlap_per_diameter);
  field(out, "facing_tilt_deg", seats.facing_tilt_deg);
  field(out, "axial_gap_least_mm", seats.axial_gap_least_mm);
  field(out, "axial_gap_most_mm", seats.axial_gap_most_mm);
  field(out, "same_length_mm", seats.same_length_mm);
  out.key("limits");
  out.open_object();
  field(out, "seconds", settings.limits.seconds);
  field(out, "memory_mb", settings.limits.memory_mb);
  field(out, "file_mb", settings.limits.file_mb);
  field(out, "nesting_depth", static_cast<double>(settings.limits.nesting_depth));
  field(out, "occurrences", settings.limits.occurrences);
  field(out, "token_kb", static_cast<double>(settings.limits.token_kb));
  out.close_object();
  out.key("accept_partial");
  out.truth(settings.completeness == Completeness::accept_partial);
  out.close_object();
}

void write_products(JsonWriter& out, const Model& model, const ModelNames& names) {
  out.key("products");
  out.open_array(JsonWriter::Layout::line_each);
  for (ProductId i; i < model.products.size(); ++i) {
    const Product& product = model.products[i];
    out.open_object();
    out.key("id");
    out.quoted(names.product(i));
    field(out, "name", product.name);
    if (product.body > 0) {
      field(out, "part", product.part);
      field(out, "body", static_cast<double>(product.body));
    }
    if (!product.body_name.empty()) {
      field(out, "body_name", product.body_name);
    }
    out.key("solids");
    out.whole(product.solids);
    field(out, "volume_mm3", product.volume);
    field(out, "volume_error_mm3", product.volume_error);
    out.key("closed");
    out.truth(product.closed);
    if (!product.unsound.empty()) {
      field(out, "unsound", product.unsound);
    }
    if (product.drawn_at != Point{}) {
      point_field(out, "drawn_at", product.drawn_at);
    }
    write_features(out, model, i, names);
    out.close_object();
  }
  out.close_array();
}

void write_occurrences(JsonWriter& out, const Model& model, const ModelNames& names) {
  out.key("occurrences");
  out.open_array(JsonWriter::Layout::line_each);
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    const Occurrence& occurrence = model.occurrences[i];
    out.open_object();
    out.key("id");
    out.quoted(names.occurrence(i));
    field(out, "path", occurrence.path);
    out.key("product");
    out.quoted(names.product(occurrence.product));
    out.key("frame");
    out.open_array();
    for (const auto& row : occurrence.frame.rows) {
      out.open_array();
      for (const double value : row) {
        out.number(value);
      }
      out.close_array();
    }
    out.close_array();
    out.key("mirrored");
    out.truth(occurrence.mirrored);
    out.close_object();
  }
  out.close_array();
}

}  // namespace spotblue
