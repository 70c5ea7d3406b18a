#include "spotblue/report/group_text.hpp"

#include <fmt/format.h>

#include "group/words/at_line.hpp"
#include "report/measure_text.hpp"
#include "report/model_names.hpp"
#include "report/text_paint.hpp"
#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue {
namespace {

class GroupText {
 public:
  GroupText(const CheckResult& result, const TextStyle& style)
      : look_(result.look),
        group_(*result.group),
        style_(style),
        paint_(style.colour),
        names_(look_.model, [](std::string_view name) { return shown_text(name); }) {}

  [[nodiscard]] std::string text() const {
    return bodies() + joints() + bearings() + thrust_faces() + sizes() + stops();
  }

 private:
  [[nodiscard]] std::string bodies() const {
    TextTable table({{"turns"}, {"parts that are one body"}});
    for (const Body& body : group_.bodies) {
      std::string parts;
      for (const OccurrenceId part : body.parts) {
        parts += (parts.empty() ? "" : ", ") + names_.part(part);
      }
      table.add({body.rpm ? fmt::format("{:g} rpm", *body.rpm) : "stands", parts});
    }
    return paint_.heading("Bodies") + '\n' + table.text(kTableIndent, style_.width) + '\n';
  }

  [[nodiscard]] std::string joints() const {
    TextTable table({{"part"}, {"and part"}, {"are"}, {"turn as one"}, {"move as one"}, {"by"}});
    for (const Joint& joint : group_.joints) {
      const bool perhaps = joint.certainty == Certainty::perhaps;
      table.add({names_.part(joint.a), names_.part(joint.b),
                 (perhaps ? "perhaps " : "") + std::string(word_of(joint.kind)),
                 joint.turning ? "yes" : "no", joint.along ? "yes" : "no",
                 shown_text(joint.why) + text_of(at_line(joint.line), style_.unit)});
    }
    return section("Joints", table);
  }

  [[nodiscard]] std::string bearings() const {
    TextTable table({{"hole"}, {"shaft"}, {"turning"}, {"at"}, {"long"}, {"carries"}, {""}});
    for (const Bearing& bearing : group_.bearings) {
      const bool perhaps = bearing.certainty == Certainty::perhaps;
      table.add({names_.feature(bearing.hole), names_.feature(bearing.shaft),
                 fmt::format("{:g} rpm", bearing.rpm), length(bearing.station),
                 length(bearing.length),
                 bearing.load_n ? measure_text(newtons(*bearing.load_n), style_.unit) : "not known",
                 (perhaps ? "perhaps, it may be pressed; " : "") +
                     shown_text(text_of(bearing.how, style_.unit))});
    }
    return section(fmt::format("Bearings, lengths in {}", unit_word(style_.unit)), table);
  }

  [[nodiscard]] std::string thrust_faces() const {
    TextTable table({{"face"}, {"rubs on"}, {"turning"}, {"gap"}, {""}});
    for (const ThrustFace& face : group_.thrust_faces) {
      table.add({names_.feature(face.a), names_.feature(face.b), fmt::format("{:g} rpm", face.rpm),
                 length(face.gap),
                 face.certainty == Certainty::perhaps
                     ? "perhaps: " + shown_text(text_of(face.why, style_.unit))
                     : ""});
    }
    return section(fmt::format("Thrust faces, gaps in {}", unit_word(style_.unit)), table);
  }

  [[nodiscard]] std::string sizes() const {
    TextTable table(
        {{"surface"}, {"with its mate"}, {"as made"}, {"assembled"}, {"running"}, {""}});
    for (const SeatStates& seat : group_.seats) {
      add_size(table, seat.hole, seat.pressing, seat.hole_size);
      add_size(table, seat.shaft, seat.pressing, seat.shaft_size);
    }
    return section(fmt::format("Sizes in {}", unit_word(style_.unit)), table);
  }

  // Nothing where the table has no rows.
  [[nodiscard]] std::string section(const std::string& heading, const TextTable& table) const {
    const std::string rows = table.text(kTableIndent, style_.width);
    return rows.empty() ? "" : paint_.heading(heading) + '\n' + rows + '\n';
  }

  [[nodiscard]] std::string stops() const {
    TextTable table({{"face"}, {"stopped by"}, {"gap now"}, {"play that it ends"}, {"running"}});
    for (const GroupStop& stop : group_.stops) {
      table.add({names_.feature(stop.a), names_.feature(stop.b), range({stop.gap, stop.gap}),
                 stop.play ? range(*stop.play) : "", stop.running ? range(*stop.running) : ""});
    }
    return section(fmt::format("Stops in {}", unit_word(style_.unit)), table);
  }

  void add_size(TextTable& table, const FeatureRef& surface, Pressing pressing,
                const SizeStates& size) const {
    table.add({names_.feature(surface), std::string(word_of(pressing)), range(size.free),
               size.assembled ? range(*size.assembled) : "not known",
               size.running ? range(*size.running) : "not known",
               shown_text(text_of(size.unknown, style_.unit))});
  }

  [[nodiscard]] std::string length(double mm) const {
    return format_length(Length::mm(mm), style_.unit, style_.unit == LengthUnit::mm ? 3 : 5);
  }

  [[nodiscard]] std::string range(Interval mm) const {
    const std::string low = length(mm.low);
    const std::string high = length(mm.high);
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
