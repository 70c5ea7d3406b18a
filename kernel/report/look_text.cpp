#include "spotblue/report/look_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/look_notes.hpp"
#include "report/look_text_seats.hpp"
#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

// Whether it is sound, and how true the volume is where its shown digits may not be.
std::string part_remark(const Product& product, LengthUnit unit) {
  constexpr double kShown = 1e-5;
  std::string remark = !product.closed ? "not closed" : product.unsound.empty() ? "" : "unsound";
  if (product.volume_error > kShown * std::abs(product.volume)) {
    remark += fmt::format("{}volume within {} {}3", remark.empty() ? "" : ", ",
                          volume_cell(product.volume_error, unit), unit_name(unit));
  }
  return remark;
}

std::string parts_text(const TextContext& c) {
  std::vector<std::size_t> places(c.look.model.products.size(), 0);
  for (const Occurrence& occurrence : c.look.model.occurrences) {
    ++places[occurrence.product];
  }
  TextTable table({{"part"},
                   {"places", Align::right},
                   {"solids", Align::right},
                   {fmt::format("volume {}3", unit_name(c.unit)), Align::right},
                   {""}});
  for (ProductId i; i < places.size(); ++i) {
    const Product& product = c.look.model.products[i];
    table.add({c.names.product(i), count_text(places[i]), std::to_string(product.solids),
               volume_cell(product.volume, c.unit), part_remark(product, c.unit)});
  }
  return c.paint.heading("Parts") + '\n' + table.text(kTableIndent, c.width) + '\n';
}

std::string fouls_text(const TextContext& c) {
  TextTable table({{"part"},
                   {"part"},
                   {fmt::format("volume {}3", unit_name(c.unit)), Align::right},
                   {"depth", Align::right},
                   {"length", Align::right},
                   {"at"},
                   {"cause"}});
  for (const Foul& foul : c.look.fouls.found) {
    const std::string volume = volume_cell(foul.volume, c.unit);
    const std::string depth = length_cell(foul.depth, c.unit);
    const std::string cause = shown_text(foul.cause) + (foul.exact ? "" : " (volume not exact)");
    const std::string length = foul.length ? place_cell(*foul.length, c.unit) : "";
    table.add(
        {c.names.occurrence(foul.a), c.names.occurrence(foul.b), volume, depth, length,
         foul.at ? point_text(*foul.at, c.unit) : "", cause},
        {c.names.product_of(foul.a), c.names.product_of(foul.b), volume, depth, length, cause});
  }
  const std::string body = table.text(kTableIndent, c.width);
  return body.empty() ? "" : c.paint.heading("Fouls") + '\n' + body + '\n';
}

std::string contacts_text(const TextContext& c) {
  TextTable table({{"part"}, {"part"}, {"gap", Align::right}, {"face"}, {"face"}, {"at"}, {""}});
  for (const Contact& contact : c.look.fouls.contacts) {
    const std::string gap = contact.gap ? length_cell(*contact.gap, c.unit) : "";
    const std::string why = shown_text(contact.why);
    table.add({c.names.occurrence(contact.a), c.names.occurrence(contact.b), gap, contact.a_face,
               contact.b_face, contact.at ? point_text(*contact.at, c.unit) : "", why},
              {c.names.product_of(contact.a), c.names.product_of(contact.b), gap, contact.a_face,
               contact.b_face, why});
  }
  const std::string body = table.text(kTableIndent, c.width);
  return body.empty() ? "" : c.paint.heading("Touching at no seat") + '\n' + body + '\n';
}

std::string stated_sizes_text(const TextContext& c) {
  TextTable table({{"stated for"},
                   {"size mm"},
                   {fmt::format("least {}", unit_name(c.unit)), Align::right},
                   {fmt::format("greatest {}", unit_name(c.unit)), Align::right},
                   {""}});
  for (const SemanticSize& size : c.look.model.semantic_sizes) {
    const std::string text = shown_text(semantic_size_text(size));
    const std::string lower = size.limits ? length_cell(size.limits->lower_mm, c.unit) : "";
    const std::string upper = size.limits ? length_cell(size.limits->upper_mm, c.unit) : "";
    const std::string remark = size.doubt.empty() ? "" : "in doubt: see the notes";
    for (const ProductFeatureRef& feature : size.features) {
      table.add({c.names.feature(*size.product, feature.kind, feature.index), text, lower, upper,
                 remark});
    }
    if (size.features.empty()) {
      table.add(
          {size.product ? c.names.product(*size.product) : "no part", text, lower, upper, remark});
    }
  }
  const std::string body = table.text(kTableIndent, c.width);
  return body.empty() ? "" : c.paint.heading("Sizes the file states") + '\n' + body + '\n';
}

std::string heading_text(const TextContext& c) {
  const Model& model = c.look.model;
  std::string text = c.paint.heading(shown_text(model.file.name));
  text += model.file.protocol.empty() ? "" : ", " + shown_text(model.file.protocol);
  text += model.file.unit.empty() ? "" : ", written in " + shown_text(model.file.unit);
  return text + fmt::format(
                    "\n{} at {}; lengths below in {}, clearance positive, interference "
                    "negative\n\n",
                    counted(model.products.size(), "part", "parts"),
                    counted(model.occurrences.size(), "place", "places"), unit_word(c.unit));
}

std::string unseen_text(const Look& look) {
  std::string text;
  const auto add = [&text](std::size_t count, std::string_view one, std::string_view many) {
    text += count == 0 ? std::string() : ", " + counted(count, one, many);
  };
  add(look.not_looked_at.size(), "thing not looked at", "things not looked at");
  add(look.model.not_compared.size(), "thing left out, which may seat or foul",
      "things left out, which may seat or foul");
  return text;
}

std::string summary_text(const TextContext& c) {
  if (c.look.model.occurrences.empty() && !unseen_text(c.look).empty()) {
    return c.paint.heading("Found") + ": nothing was compared" + unseen_text(c.look) + '\n';
  }
  const Seats& seats = c.look.seats;
  const auto pressed = static_cast<std::size_t>(
      std::count_if(seats.radial.begin(), seats.radial.end(), [&c](const RadialSeat& seat) {
        return seat.clearance < -c.look.settings.seats.same_length_mm;
      }));
  std::string text = counted(seats.radial.size(), "radial seat", "radial seats");
  if (pressed > 0) {
    text += fmt::format(" ({} with interference)", count_text(pressed));
  }
  text += ", " + counted(seats.axial.size(), "axial seat", "axial seats");
  text += ", " + counted(seats.taper.size(), "taper", "tapers");
  text += ", " + counted(seats.width.size(), "key or slot", "keys and slots");
  text += ", " + counted(seats.threads.size(), "screw in a tapped hole", "screws in tapped holes");
  const std::vector<Foul>& fouls = c.look.fouls.found;
  const auto open = static_cast<std::size_t>(std::ranges::count_if(fouls, &Foul::undecided));
  text += ", " + counted(fouls.size() - open, "foul", "fouls");
  if (open > 0) {
    text += fmt::format(", {} undecided", counted(open, "pair", "pairs"));
  }
  if (!c.look.fouls.contacts.empty()) {
    text +=
        ", " + counted(c.look.fouls.contacts.size(), "contact at no seat", "contacts at no seat");
  }
  return c.paint.heading("Found") + ": " + text + unseen_text(c.look) + '\n';
}

std::string not_looked_at_text(const TextContext& c) {
  constexpr std::size_t kShown = 20;
  const std::vector<Note>& all = c.look.not_looked_at;
  TextTable table({{"undecided"}, {"not looked at"}});
  for (std::size_t i = 0; i < std::min(kShown, all.size()); ++i) {
    table.add({shown_text(all[i].about), shown_text(all[i].text)}, {shown_text(all[i].text)});
  }
  if (all.size() > kShown) {
    table.add({fmt::format("and {} more", all.size() - kShown), "all of them are in --json"});
  }
  const std::string body = table.text(kTableIndent, c.width);
  return body.empty() ? "" : c.paint.heading("Not looked at") + '\n' + body + '\n';
}

}  // namespace

std::string look_text(const Look& look, const TextStyle& style) {
  const ModelNames names(look.model, [](std::string_view name) { return shown_text(name); });
  const TextContext context{look, names, style.unit, Paint(style.colour), style.width};
  return fitted_text(heading_text(context) + parts_text(context) + centre_lines_text(context) +
                         other_faces_text(context) + width_seats_text(context) +
                         fouls_text(context) + contacts_text(context) + stated_sizes_text(context) +
                         notes_text(context.look, context.unit, context.paint, context.width) +
                         not_looked_at_text(context) + summary_text(context),
                     style.width);
}

}  // namespace spotblue
