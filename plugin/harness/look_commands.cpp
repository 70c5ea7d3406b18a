// Commands that say what is there.

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/json_value.hpp"
#include "plugin/harness/session.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/look_text.hpp"
#include "spotblue/report/values.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

// One name, or several that make a list of shapes.
std::string joined(const std::vector<std::string>& words) {
  std::string name;
  for (const std::string& word : words) {
    name += (name.empty() ? "" : " ") + word;
  }
  return name;
}

Json counts_of(const Look& look) {
  Json notes = Json::array();
  const auto add = [](Json& list, const std::vector<Note>& all) {
    for (const Note& note : all) {
      list.push_back(note.about + ": " + note.text);
    }
  };
  add(notes, look.model.notes);
  add(notes, look.fouls.notes);
  Json not_looked_at = Json::array();
  add(not_looked_at, look.not_looked_at);
  return {{"parts", look.model.products.size()},
          {"places", look.model.occurrences.size()},
          {"radial", look.seats.radial.size()},
          {"axial", look.seats.axial.size()},
          {"taper", look.seats.taper.size()},
          {"width", look.seats.width.size()},
          {"threads", look.seats.threads.size()},
          {"fouls", look.fouls.found.size()},
          {"centre_lines", look.seats.centre_lines.size()},
          {"notes", notes},
          {"not_looked_at", not_looked_at}};
}

}  // namespace

Json look_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 10000);
  const std::string unit = arguments.value("-unit");
  const TextStyle style{unit.empty() ? LengthUnit::mm : parse_unit(unit), Colour::never};
  const Subject& found =
      session.look_anew(joined(arguments.words()), bounded({}, bounds_in(arguments)));
  if (arguments.has("-json")) {
    return look_json(found.result.look);
  }
  return arguments.has("-text") ? Json(look_text(found.result.look, style))
                                : counts_of(found.result.look);
}

Json features_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 2);
  const Subject& found = session.subject(arguments.words()[0]);
  const Json look = json_of(look_values(found.result.look));
  Json features = Json::array();
  bool known = arguments.words().size() < 2;
  for (const Json& product : look["products"]) {
    const bool wanted = arguments.words().size() < 2 || product["id"] == arguments.words()[1];
    known = known || wanted;
    if (wanted && product.contains("features")) {
      features.insert(features.end(), product["features"].begin(), product["features"].end());
    }
  }
  if (!known) {
    throw mistake(fmt::format("'{}'", arguments.words()[1]), "is no part of it",
                  "sblook with -text lists the parts");
  }
  return features;
}

Json seats_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 1);
  const Json look = json_of(look_values(session.subject(arguments.words()[0]).result.look));
  Json seats = Json::array();
  for (const auto& [list, kind] : {std::pair{"radial_seats", "radial"},
                                   {"axial_seats", "axial"},
                                   {"taper_seats", "taper"},
                                   {"width_seats", "width"},
                                   {"threads", "thread"}}) {
    for (const Json& seat : look.value(list, Json::array())) {
      Json entry{{"kind", kind}};
      entry.update(seat);
      seats.push_back(entry);
    }
  }
  return seats;
}

Json fouls_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 1);
  return json_of(look_values(session.subject(arguments.words()[0]).result.look))
      .value("fouls", Json::array());
}

}  // namespace spotblue::plugin
