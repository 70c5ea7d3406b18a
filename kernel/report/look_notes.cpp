#include "report/look_notes.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "report/text_table.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

std::string size_text(const Model& model, const FeatureRef& cylinder, LengthUnit unit) {
  const Product& product = model.products.at(model.occurrences.at(cylinder.occurrence).product);
  const Length diameter = Length::mm(product.cylinders.at(cylinder.index).diameter);
  return fmt::format("{} {}", format_size(diameter, unit), unit_name(unit));
}

Note note_of(const Model& model, const UnnamedScrew& one, LengthUnit unit) {
  const auto [first, second] = std::minmax(one.hole.occurrence, one.screw.occurrence);
  const std::string what = one.thread.empty()
                               ? "overlaps as a screw does, but is no thread of the tables"
                               : fmt::format("less than a turn of {} is engaged", one.thread);
  return {fmt::format("{} and {}", model.occurrences.at(first).id, model.occurrences.at(second).id),
          fmt::format("{} in a hole of {}: {}", size_text(model, one.screw, unit),
                      size_text(model, one.hole, unit), what)};
}

}  // namespace

std::vector<Note> look_notes(const Look& look, LengthUnit unit) {
  std::vector<Note> notes = look.model.notes;
  notes.insert(notes.end(), look.fouls.notes.begin(), look.fouls.notes.end());
  for (const UnnamedScrew& one : look.fouls.unnamed_screws) {
    notes.push_back(note_of(look.model, one, unit));
  }
  return notes;
}

std::string notes_text(const Look& look, LengthUnit unit, const Paint& paint, std::size_t width) {
  TextTable table({{"about"}, {"note"}});
  for (const Note& note : look_notes(look, unit)) {
    table.add({shown_text(note.about), shown_text(note.text)}, {shown_text(note.text)});
  }
  const std::string body = table.text(kTableIndent, width);
  return body.empty() ? "" : paint.heading("Notes") + '\n' + body + '\n';
}

}  // namespace spotblue
