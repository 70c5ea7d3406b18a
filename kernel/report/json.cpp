#include "spotblue/report/json.hpp"

#include <string_view>
#include <variant>
#include <vector>

#include "report/json_members.hpp"
#include "report/look_notes.hpp"
#include "report/value_tree.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"

namespace spotblue {
namespace {

constexpr int kSchema = 2;

void write_look(JsonWriter& out, const Look& look) {
  const ModelNames names(look.model, [&out](std::string_view text) { return out.quoting(text); });
  out.key("schema");
  out.whole(kSchema);
  field(out, "spotblue", std::string_view(kVersion));
  field(out, "kernel", open_cascade_version());
  write_object(out, "file", look.model.file);
  write_settings(out, look.settings);
  write_products(out, look.model, names);
  const LookNames numbered{names, look.seats.centre_lines};
  write_values(out, "occurrences", look.model.occurrences, &numbered);
  write_values(out, "centre_lines", look.seats.centre_lines, &numbered);
  write_values(out, "radial_seats", look.seats.radial, &numbered);
  write_values(out, "axial_seats", look.seats.axial, &numbered);
  write_values(out, "taper_seats", look.seats.taper, &numbered);
  write_values(out, "width_seats", look.seats.width, &numbered);
  write_values(out, "threads", look.seats.threads, &numbered);
  write_values(out, "fouls", look.fouls.found, &numbered);
  write_values(out, "contacts", look.fouls.contacts, &numbered);
  write_stated_sizes(out, look.model, names);
  write_values(out, "notes", look_notes(look, LengthUnit::mm));
  write_values(out, "not_looked_at", look.not_looked_at);
  write_object(out, "seconds", look.seconds);
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
  if (result.group) {
    const ModelNames names(result.look.model,
                           [&out](std::string_view text) { return out.quoting(text); });
    const LookNames numbered{names, result.look.seats.centre_lines};
    write_values(out, "bodies", result.group->bodies, &numbered);
    write_values(out, "joints", result.group->joints, &numbered);
    write_values(out, "turning", result.group->turning, &numbered);
    write_values(out, "bearings", result.group->bearings, &numbered);
    write_values(out, "thrust_faces", result.group->thrust_faces, &numbered);
    write_values(out, "seat_states", result.group->seats, &numbered);
    write_values(out, "stops", result.group->stops, &numbered);
  }
  write_values(out, "findings", result.findings);
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
  out.open_object();
  write_values(out, "findings", findings);
  out.close_object();
  return std::get<Value::List>(std::get<Value::Object>(out.take().held).front().value.held);
}

}  // namespace spotblue
