#include "spotblue/report/json.hpp"

#include <string_view>
#include <variant>
#include <vector>

#include "report/json_parts.hpp"
#include "report/look_notes.hpp"
#include "report/value_tree.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"

namespace spotblue {
namespace {

constexpr int kSchema = 1;

void write_notes(JsonWriter& out, std::string_view key, const std::vector<Note>& notes) {
  out.key(key);
  out.open_array(JsonWriter::Layout::line_each);
  for (const Note& note : notes) {
    out.open_object();
    field(out, "about", note.about);
    field(out, "text", note.text);
    out.close_object();
  }
  out.close_array();
}

void write_seconds(JsonWriter& out, const LookSeconds& seconds) {
  out.key("seconds");
  out.open_object();
  field(out, "read", seconds.read);
  field(out, "features", seconds.features);
  field(out, "seats", seconds.seats);
  field(out, "clash", seconds.clash);
  field(out, "total", seconds.total);
  out.close_object();
}

void write_look(JsonWriter& out, const Look& look) {
  const ModelNames names(look.model, [&out](std::string_view text) { return out.quoting(text); });
  out.key("schema");
  out.whole(kSchema);
  field(out, "spotblue", std::string_view(kVersion));
  field(out, "kernel", open_cascade_version());
  write_file(out, look.model.file);
  write_settings(out, look.settings);
  write_products(out, look.model, names);
  write_occurrences(out, look.model, names);
  write_centre_lines(out, look.seats, names);
  write_radial_seats(out, look.seats, names);
  write_axial_seats(out, look.seats, names);
  write_taper_seats(out, look.seats, names);
  write_width_seats(out, look.seats, names);
  write_threads(out, look.seats, names);
  write_clashes(out, look.clash, names);
  write_contacts(out, look.clash, names);
  write_stated_sizes(out, look.model, names);
  write_notes(out, "notes", look_notes(look, LengthUnit::mm));
  write_notes(out, "not_looked_at", look.not_looked_at);
  write_seconds(out, look.seconds);
}

}  // namespace

std::string look_json(const Look& look) {
  JsonText out;
  out.open_object(JsonWriter::Layout::line_each);
  write_look(out, look);
  out.close_object();
  return out.take() + "\n";
}

std::string check_json(const CheckResult& result) {
  JsonText out;
  out.open_object(JsonWriter::Layout::line_each);
  write_look(out, result.look);
  write_job(out, result.job);
  out.key("findings");
  write_findings(out, result.findings);
  write_outcomes(out, result.findings);
  out.close_object();
  return out.take() + "\n";
}

Value look_values(const Look& look) {
  ValueTree out;
  out.open_object();
  write_look(out, look);
  out.close_object();
  return out.take();
}

Value::List finding_values(const std::vector<Finding>& findings) {
  ValueTree out;
  write_findings(out, findings);
  return std::get<Value::List>(out.take().held);
}

}  // namespace spotblue
