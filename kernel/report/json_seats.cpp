#include "report/json_parts.hpp"

namespace spotblue {
namespace {

void quoted_field(JsonWriter& out, std::string_view key, std::string_view quoted) {
  out.key(key);
  out.quoted(quoted);
}

void place_field(JsonWriter& out, std::string_view key, OccurrenceId occurrence,
                 const ModelNames& names) {
  out.key(key);
  out.open_object();
  quoted_field(out, "occurrence", names.occurrence(occurrence));
  quoted_field(out, "product", names.product_of(occurrence));
  out.close_object();
}

void feature_field(JsonWriter& out, std::string_view key, const FeatureRef& ref,
                   const ModelNames& names) {
  out.key(key);
  out.open_object();
  quoted_field(out, "occurrence", names.occurrence(ref.occurrence));
  quoted_field(out, "product", names.product_of(ref.occurrence));
  quoted_field(out, "feature", names.feature(ref));
  out.close_object();
}

void fouls_by_field(JsonWriter& out, double past) {
  if (past > 0.0) {
    field(out, "fouls_by_mm", past);
  }
}

// An array under `key` with one object a line; `fill` writes the fields of each item.
template <typename Items, typename Fill>
void write_list(JsonWriter& out, std::string_view key, const Items& items, const Fill& fill) {
  out.key(key);
  out.open_array(JsonWriter::Layout::line_each);
  for (const auto& item : items) {
    out.open_object();
    fill(item);
    out.close_object();
  }
  out.close_array();
}

}  // namespace

void write_centre_lines(JsonWriter& out, const Seats& seats, const ModelNames& names) {
  write_list(out, "centre_lines", seats.centre_lines, [&](const CentreLine& line) {
    field(out, "id", line.id);
    point_field(out, "at", line.line.at);
    point_field(out, "along", line.line.along);
    out.key("occurrences");
    out.open_array();
    for (const OccurrenceId occurrence : line.occurrences) {
      out.quoted(names.occurrence(occurrence));
    }
    out.close_array();
  });
}

void write_radial_seats(JsonWriter& out, const Seats& seats, const ModelNames& names) {
  write_list(out, "radial_seats", seats.radial, [&](const RadialSeat& seat) {
    feature_field(out, "hole", seat.hole, names);
    feature_field(out, "shaft", seat.shaft, names);
    field(out, "hole_mm", seat.hole_diameter);
    field(out, "shaft_mm", seat.shaft_diameter);
    field(out, "clearance_mm", seat.clearance);
    field(out, "offset_mm", seat.offset);
    angle_field(out, "tilt_deg", seat.tilt);
    if (seat.worn) {
      field(out, "clearance_least_mm", seat.worn->least);
      field(out, "clearance_most_mm", seat.worn->most);
    }
    field(out, "least_gap_mm", seat.least_gap);
    fouls_by_field(out, seat.fouls_by);
    field(out, "engaged_mm", seat.engaged);
    angle_field(out, "coverage_deg", seat.coverage);
  });
}

void write_axial_seats(JsonWriter& out, const Seats& seats, const ModelNames& names) {
  write_list(out, "axial_seats", seats.axial, [&](const AxialSeat& seat) {
    feature_field(out, "a", seat.a, names);
    feature_field(out, "b", seat.b, names);
    field(out, "gap_mm", seat.gap);
    if (seat.centre_line && seat.inner && seat.outer) {
      field(out, "inner_mm", *seat.inner);
      field(out, "outer_mm", *seat.outer);
    }
    field(out, "area_mm2", seat.area);
    if (seat.centre_line) {
      field(out, "centre_line", seats.centre_lines[*seat.centre_line].id);
    }
  });
}

void write_taper_seats(JsonWriter& out, const Seats& seats, const ModelNames& names) {
  write_list(out, "taper_seats", seats.taper, [&](const TaperSeat& seat) {
    feature_field(out, "hole", seat.hole, names);
    feature_field(out, "shaft", seat.shaft, names);
    angle_field(out, "hole_half_angle_deg", seat.hole_half_angle);
    angle_field(out, "shaft_half_angle_deg", seat.shaft_half_angle);
    field(out, "gap_mm", seat.gap);
    field(out, "offset_mm", seat.offset);
    angle_field(out, "tilt_deg", seat.tilt);
    field(out, "least_gap_mm", seat.least_gap);
    fouls_by_field(out, seat.fouls_by);
    field(out, "engaged_mm", seat.engaged);
    field(out, "diameter_mm", seat.diameter);
  });
}

void write_width_seats(JsonWriter& out, const Seats& seats, const ModelNames& names) {
  write_list(out, "width_seats", seats.width, [&](const WidthSeat& seat) {
    feature_field(out, "slot", seat.slot, names);
    feature_field(out, "key", seat.key, names);
    field(out, "slot_mm", seat.slot_width);
    field(out, "key_mm", seat.key_width);
    field(out, "clearance_mm", seat.clearance);
    field(out, "offset_mm", seat.offset);
    angle_field(out, "tilt_deg", seat.tilt);
    field(out, "least_gap_mm", seat.least_gap);
    if (seat.ends_apart) {
      field(out, "ends_apart_mm", *seat.ends_apart);
    }
    field(out, "area_mm2", seat.area);
  });
}

void write_threads(JsonWriter& out, const Seats& seats, const ModelNames& names) {
  write_list(out, "threads", seats.threads, [&](const Thread& thread) {
    feature_field(out, "hole", thread.hole, names);
    feature_field(out, "screw", thread.screw, names);
    field(out, "size", thread.size);
    field(out, "hole_mm", thread.hole_diameter);
    field(out, "screw_mm", thread.screw_diameter);
    field(out, "engaged_mm", thread.engaged);
  });
}

void write_clashes(JsonWriter& out, const ClashReport& report, const ModelNames& names) {
  write_list(out, "clashes", report.clashes, [&](const Clash& clash) {
    place_field(out, "a", clash.a, names);
    place_field(out, "b", clash.b, names);
    field(out, "volume_mm3", clash.volume);
    field(out, "depth_mm", clash.depth);
    if (clash.length) {
      field(out, "length_mm", *clash.length);
    }
    if (clash.at) {
      point_field(out, "at", *clash.at);
    }
    out.key("exact");
    out.truth(clash.exact);
  });
}

void write_contacts(JsonWriter& out, const ClashReport& report, const ModelNames& names) {
  write_list(out, "contacts", report.contacts, [&](const Contact& contact) {
    place_field(out, "a", contact.a, names);
    place_field(out, "b", contact.b, names);
    if (contact.gap) {
      field(out, "gap_mm", *contact.gap);
      field(out, "a_face", contact.a_face);
      field(out, "b_face", contact.b_face);
    }
    if (contact.at) {
      point_field(out, "at", *contact.at);
    }
    if (!contact.why.empty()) {
      field(out, "why", contact.why);
    }
  });
}

void write_stated_sizes(JsonWriter& out, const Model& model, const ModelNames& names) {
  write_list(out, "semantic_sizes", model.semantic_sizes, [&](const SemanticSize& size) {
    if (size.entity > 0) {
      out.key("entity");
      out.whole(size.entity);
    }
    field(out, "name", size.name);
    field(out, "of", size_characteristic_name(size.characteristic));
    if (size.product) {
      quoted_field(out, "product", names.product(*size.product));
    }
    out.key("features");
    out.open_array();
    for (const ProductFeatureRef& feature : size.features) {
      out.quoted(names.feature(*size.product, feature.kind, feature.index));
    }
    out.close_array();
    if (size.nominal_mm) {
      field(out, "nominal_mm", *size.nominal_mm);
    }
    if (size.deviations) {
      field(out, "lower_deviation_mm", size.deviations->lower_mm);
      field(out, "upper_deviation_mm", size.deviations->upper_mm);
    }
    if (size.limits) {
      field(out, "limit_min_mm", size.limits->lower_mm);
      field(out, "limit_max_mm", size.limits->upper_mm);
    }
    field(out, "tolerance_class", size.tolerance_class);
    field(out, "doubt", size.doubt);
  });
}

}  // namespace spotblue
