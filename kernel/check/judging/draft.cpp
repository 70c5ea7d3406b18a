#include "spotblue/check/draft.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <filesystem>
#include <map>
#include <string_view>
#include <utility>
#include <vector>

#include "base/utf8.hpp"
#include "check/words/common_fits.hpp"
#include "group/match/names.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

// A TOML basic string; also safe in a comment, as it never holds a line break.
std::string toml_text(std::string_view text) {
  std::string out = "\"";
  while (!text.empty()) {
    const std::string_view letter = text.substr(0, std::max<std::size_t>(utf8_length(text), 1));
    if (is_unshown(letter)) {
      out += fmt::format("\\u{:04X}", code_point(letter));
    } else {
      out += letter == "\"" || letter == "\\" ? "\\" : "";
      out += letter;
    }
    text.remove_prefix(letter.size());
  }
  return out + "\"";
}

std::string product_feature(const Model& model, const FeatureRef& feature) {
  return model.products.at(model.occurrences.at(feature.occurrence).product).id + ": " +
         feature_name(model, feature);
}

std::string occurrence_feature(const Model& model, const FeatureRef& feature) {
  return model.occurrences.at(feature.occurrence).id + ": " + feature_name(model, feature);
}

// The same two features of the same two products, however often they meet.
struct Meeting {
  std::string first, second;
  std::size_t times = 0;
  std::size_t seat = 0;  // the first of them
};

template <typename Seat, typename Ref>
std::vector<Meeting> meetings(const Model& model, const std::vector<Seat>& seats, Ref Seat::*first,
                              Ref Seat::*second) {
  std::vector<Meeting> found;
  std::map<std::pair<std::string, std::string>, std::size_t> known;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    Meeting meeting{product_feature(model, seats[i].*first),
                    product_feature(model, seats[i].*second), 1, i};
    const auto [place, fresh] =
        known.try_emplace(std::pair{meeting.first, meeting.second}, found.size());
    if (fresh) {
      found.push_back(std::move(meeting));
    } else {
      ++found[place->second].times;
    }
  }
  return found;
}

std::string times_text(const Meeting& meeting) {
  return meeting.times > 1 ? fmt::format(", {} times", meeting.times) : std::string();
}

std::string head(const std::string& model_path, LengthUnit unit) {
  const bool mm = unit == LengthUnit::mm;
  const std::filesystem::path path(model_path);
  const bool outside = path.is_absolute() || (!path.empty() && *path.begin() == "..");
  return fmt::format(
      "# Drafted by spotblue: all that was found, nothing assumed. Take the # off a line to use "
      "it.\n# Bare lengths are in {}; fractions and other units do as well: {}.\nschema = "
      "1\n{}model = {}\nunit = \"{}\"\n\n"
      "# [settings]\n# default_uncertainty = {}  # of sizes that have none of their own\n",
      mm ? "mm" : "inches", mm ? "\"1 5/16 in\"" : "\"1 5/16\"",
      outside ? "# Unless it lies below this file's folder, spotblue check needs --allow-outside.\n"
              : "",
      toml_text(shown_name(path)), mm ? "mm" : "inch", mm ? "0.005" : "0.0002");
}

// What the draft can hold nothing of.
std::string not_looked_at(const Look& look) {
  constexpr std::size_t kShown = 20;
  std::vector<Note> all = look.not_looked_at;
  all.insert(all.end(), look.model.not_compared.begin(), look.model.not_compared.end());
  if (all.empty()) {
    return {};
  }
  std::string text = "\n# Not whole: what follows was not looked at, and may seat or foul.\n";
  for (std::size_t i = 0; i < std::min(kShown, all.size()); ++i) {
    text += fmt::format("#   {}: {}\n", toml_text(all[i].about), shown_text(all[i].text));
  }
  return all.size() > kShown ? text + fmt::format("#   and {} more\n", all.size() - kShown) : text;
}

std::string parts(const Model& model) {
  std::string text =
      "\n# Parts. As found: the model shows measured sizes. To make: drawn at nominal, and a\n"
      "# class makes the limits.\n";
  for (const Product& product : model.products) {
    text += fmt::format(
        "\n[[parts]]\npart = {}\n# material = \"mild steel\"\n# state = \"as found\"  # or \"to "
        "make\"\n# drawn = \"at the size wanted\"  # or \"at nominal\"\n# irreplaceable = true\n",
        toml_text(product.id));
  }
  return text;
}

std::string measured(const std::string& feature, double size_mm, LengthUnit unit) {
  return fmt::format(
      "\n# Measured sizes replace the model's.\n# [[measured]]\n# feature = {}\n# size = {}\n"
      "# uncertainty = {}\n",
      toml_text(feature), format_size(Length::mm(size_mm), unit),
      unit == LengthUnit::mm ? "0.005" : "0.0002");
}

std::string fit_entry(const Meeting& meeting, double hole_mm, double shaft_mm, LengthUnit unit) {
  const Length clearance = Length::mm(hole_mm - shaft_mm);
  std::string text =
      fmt::format("\n# hole {}, shaft {}: clearance {}{}\n# [[fits]]\n# hole = {}\n# shaft = {}\n",
                  format_size(Length::mm(hole_mm), unit), format_size(Length::mm(shaft_mm), unit),
                  length_text(clearance, unit), times_text(meeting), toml_text(meeting.first),
                  toml_text(meeting.second));
  const std::vector<CommonFit> proposed =
      fits_for(Length::mm(0.5 * (hole_mm + shaft_mm)), clearance, unit);
  for (const CommonFit& known : proposed) {
    text += fmt::format("# class = \"{}\"  # {}\n", known.name, known.duty);
  }
  if (proposed.empty()) {
    text += "# clearance = [least, greatest]  # none of the usual fits has this clearance\n";
  }
  return text;
}

std::string fits(const Look& look, LengthUnit unit) {
  std::string text;
  const Seats& seats = look.seats;
  for (const Meeting& meeting :
       meetings(look.model, seats.radial, &RadialSeat::hole, &RadialSeat::shaft)) {
    const RadialSeat& seat = seats.radial[meeting.seat];
    text += fit_entry(meeting, seat.hole_diameter, seat.shaft_diameter, unit);
  }
  for (const Meeting& meeting :
       meetings(look.model, seats.width, &WidthSeat::slot, &WidthSeat::key)) {
    const WidthSeat& seat = seats.width[meeting.seat];
    text += fit_entry(meeting, seat.slot_width, seat.key_width, unit);
  }
  return text.empty() ? text
                      : "\n# Fits. Each class named here would have the clearance of the model; "
                        "choose by duty.\n" +
                            text;
}

std::string tapers(const Look& look) {
  std::string text;
  for (const Meeting& meeting :
       meetings(look.model, look.seats.taper, &TaperSeat::hole, &TaperSeat::shaft)) {
    text += fmt::format(
        "\n# a taper seat{}\n# [[tapers]]\n# hole = {}\n# shaft = {}\n# half_angle_within_deg = "
        "0.02\n",
        times_text(meeting), toml_text(meeting.first), toml_text(meeting.second));
  }
  return text;
}

std::string threads(const Look& look) {
  std::string text;
  for (const Meeting& meeting :
       meetings(look.model, look.seats.threads, &Thread::hole, &Thread::screw)) {
    const std::string& size = look.seats.threads[meeting.seat].size;
    text += fmt::format("\n# {} thread{}: {} in {}\n", size, times_text(meeting),
                        toml_text(meeting.second), toml_text(meeting.first));
    const auto row = find_thread(size);
    if (row && !row->usual) {
      text += fmt::format(
          "# a pitch that is seldom met: measure it\n# [[threads]]\n# hole = {}\n# screw = {}\n# "
          "size = {}\n",
          toml_text(meeting.first), toml_text(meeting.second), toml_text(size));
    }
  }
  return text;
}

std::string wants(const Look& look, LengthUnit unit) {
  std::string text;
  const auto size = [&](const FeatureRef& face) {
    return feature_size_text(sized_feature_name(look.model, face), unit);
  };
  for (const Meeting& meeting :
       meetings(look.model, look.seats.axial, &AxialSeat::a, &AxialSeat::b)) {
    const AxialSeat& seat = look.seats.axial[meeting.seat];
    // One product on both sides: only the occurrences tell the two faces apart.
    const bool alike = meeting.first == meeting.second;
    const std::string first = alike ? occurrence_feature(look.model, seat.a) : meeting.first;
    const std::string second = alike ? occurrence_feature(look.model, seat.b) : meeting.second;
    text += fmt::format(
        "\n# gap {}{}: {} and {}\n# [[wants]]\n# between = [{}, {}]\n# gap = [least, greatest]  "
        "# or kind = \"touch\" and within = ...\n",
        length_text(Length::mm(seat.gap), unit), times_text(meeting), size(seat.a), size(seat.b),
        toml_text(first), toml_text(second));
  }
  return text.empty() ? text : "\n# Faces that look at each other.\n" + text;
}

std::string fouls(const Look& look, LengthUnit unit) {
  std::string text;
  const Model& model = look.model;
  for (const Foul& foul : look.fouls.found) {
    text += fmt::format(
        "\n# [[allow]]\n# parts = [{}, {}]\n# reason = \"why it is meant\"\n# depth = {}\n",
        toml_text(model.occurrences.at(foul.a).id), toml_text(model.occurrences.at(foul.b).id),
        format_length(Length::mm(foul.depth), unit, unit == LengthUnit::mm ? 3 : 5));
  }
  return text.empty() ? text
                      : "\n# Parts that overlap. Only what is meant to belongs here.\n" + text;
}

}  // namespace

std::string draft_job(const Look& look, const std::string& model_path, LengthUnit unit) {
  std::string text = head(model_path, unit) + not_looked_at(look) + parts(look.model);
  if (!look.seats.radial.empty()) {
    const RadialSeat& seat = look.seats.radial.front();
    text += measured(product_feature(look.model, seat.hole), seat.hole_diameter, unit);
  }
  return text + fits(look, unit) + tapers(look) + threads(look) + wants(look, unit) +
         fouls(look, unit);
}

}  // namespace spotblue
