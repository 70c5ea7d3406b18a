#include "spotblue/report/group_text.hpp"

#include <fmt/format.h>

#include "report/model_names.hpp"
#include "report/text_paint.hpp"
#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

class GroupText {
 public:
  GroupText(const CheckResult& result, const TextStyle& style)
      : look_(result.look),
        group_(*result.group),
        style_(style),
        paint_(style.colour),
        names_(look_.model,
               [&style](std::string_view name) { return spelt_in(name, style.unit); }) {}

  [[nodiscard]] std::string text() const { return bodies() + sizes() + stops(); }

 private:
  [[nodiscard]] std::string bodies() const {
    TextTable table({{"turns"}, {"parts that are one body"}, {"held by"}});
    for (const Body& body : group_.bodies) {
      std::string parts;
      for (const OccurrenceId part : body.parts) {
        parts += (parts.empty() ? "" : ", ") + names_.part(part);
      }
      std::string holds;
      for (const std::string& hold : body.held_by) {
        holds += (holds.empty() ? "" : "; ") + shown_text(hold);
      }
      table.add({body.rpm ? fmt::format("{:g} rpm", *body.rpm) : "stands", parts, holds});
    }
    return paint_.heading("Bodies") + '\n' + table.text(kTableIndent, style_.width) + '\n';
  }

  [[nodiscard]] std::string sizes() const {
    TextTable table(
        {{"surface"}, {"with its mate"}, {"as made"}, {"assembled"}, {"running"}, {""}});
    for (const SeatStates& seat : group_.seats) {
      add_size(table, seat.hole, seat.pressing, seat.hole_size);
      add_size(table, seat.shaft, seat.pressing, seat.shaft_size);
    }
    const std::string rows = table.text(kTableIndent, style_.width);
    return rows.empty() ? ""
                        : paint_.heading(fmt::format("Sizes in {}", unit_word(style_.unit))) +
                              '\n' + rows + '\n';
  }

  [[nodiscard]] std::string stops() const {
    TextTable table({{"face"}, {"stopped by"}, {"gap now"}, {"play that it ends"}, {"running"}});
    for (const GroupStop& stop : group_.stops) {
      table.add({names_.feature(stop.a), names_.feature(stop.b), range({stop.gap, stop.gap}),
                 stop.play ? range(*stop.play) : "", stop.running ? range(*stop.running) : ""});
    }
    const std::string rows = table.text(kTableIndent, style_.width);
    return rows.empty() ? ""
                        : paint_.heading(fmt::format("Stops in {}", unit_word(style_.unit))) +
                              '\n' + rows + '\n';
  }

  void add_size(TextTable& table, const FeatureRef& surface, Pressing pressing,
                const SizeStates& size) const {
    table.add({names_.feature(surface), std::string(word_of(pressing)), range(size.free),
               size.assembled ? range(*size.assembled) : "not known",
               size.running ? range(*size.running) : "not known", shown_text(size.unknown)});
  }

  [[nodiscard]] std::string range(Interval mm) const {
    const auto one = [this](double value) {
      return format_length(Length::mm(value), style_.unit, style_.unit == LengthUnit::mm ? 3 : 5);
    };
    const std::string low = one(mm.low);
    const std::string high = one(mm.high);
    return low == high ? low : low + " to " + high;
  }

  const Look& look_;
  const Group& group_;
  const TextStyle& style_;
  Paint paint_;
  ModelNames names_;
};

}  // namespace

std::string group_text(const CheckResult& result, const TextStyle& style) {
  if (!result.group) {
    return "The model is not whole: what its parts do to each other is not worked out.\n\n";
  }
  return fitted_text(GroupText(result, style).text(), style.width);
}

}  // namespace spotblue
