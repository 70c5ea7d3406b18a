#include "check/findings/suit_findings.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstddef>
#include <set>
#include <tuple>
#include <utility>

#include "check/fits/reasons.hpp"
#include "check/press/suit_problem.hpp"
#include "check/words/words.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

class Suit {
 public:
  explicit Suit(const WorkedGroup& worked)
      : declared_(worked.declared), job_(suit_job(worked)), plan_(make_to_suit(job_.problem)) {}

  [[nodiscard]] std::vector<Finding> findings() const {
    std::vector<Finding> all;
    for (const SuitConflict& conflict : plan_.conflicts) {
      all.push_back(conflict.second.empty() ? unclear_mate(conflict) : contradiction(conflict));
    }
    std::set<std::tuple<std::size_t, int, std::size_t, double, double>> told;
    for (const auto& window : plan_.windows) {
      if (!window) {
        continue;
      }
      const FeatureRef& feature = job_.features[window->size];
      const std::size_t product = declared_.look->model.occurrences[feature.occurrence].product;
      // Alike parts that must hold alike limits are one thing to make.
      const bool fresh = told.insert({product, static_cast<int>(feature.kind), feature.index,
                                      std::round(1e6 * window->hold.lower.in_mm()),
                                      std::round(1e6 * window->hold.upper.in_mm())})
                             .second;
      if (fresh) {
        all.push_back(size_to_make(*window));
      }
    }
    return all;
  }

 private:
  [[nodiscard]] LengthUnit unit() const { return declared_.job->unit; }
  [[nodiscard]] const std::string& name(std::size_t size) const {
    return job_.problem.sizes[size].name;
  }

  // Every fit that speaks of the size, in the order of the job.
  [[nodiscard]] std::string demands_on(std::size_t size) const {
    std::string text;
    std::string last;
    for (std::size_t i = 0; i < job_.problem.demands.size(); ++i) {
      for (const SuitTerm& term : job_.problem.demands[i].terms) {
        const bool speaks = term.of == SuitOf::to_make && term.index == size;
        if (speaks && job_.asked[i] != last) {
          text += (text.empty() ? "" : "; ") + job_.asked[i];
          last = job_.asked[i];
        }
      }
    }
    if (const auto& own = job_.problem.sizes[size].own) {
      text += fmt::format("; {}, {}", job_.problem.sizes[size].own_by, range_text(*own, unit()));
    }
    return text;
  }

  [[nodiscard]] Finding start(std::size_t size) const {
    Finding finding;
    finding.kind = "make to suit";
    finding.about = {name(size)};
    return finding;
  }

  [[nodiscard]] Finding contradiction(const SuitConflict& conflict) const {
    Finding finding = start(conflict.size);
    finding.outcome = Outcome::nonconforming;
    finding.wanted = {{"one", conflict.first}, {"other", conflict.second}};
    finding.found = {{"apart", measure(conflict.short_by)}};
    finding.margin = {{"apart", measure(-conflict.short_by)}};
    const std::string apart = length_text(conflict.short_by, unit());
    std::string through;
    for (const std::string& name : conflict.through) {
      through += (through.empty() ? " (by way of " : " and ") + name;
    }
    through += through.empty() ? "" : ")";
    finding.advice = fmt::format(
        "no size of {} suits both {} and {}{}: they miss each other by {}; widen or change one of "
        "them",
        name(conflict.size), conflict.first, conflict.second, through, apart);
    finding.basis = "the largest size the one allows is below the least the other needs";
    return finding;
  }

  [[nodiscard]] Finding unclear_mate(const SuitConflict& conflict) const {
    Finding finding = start(conflict.size);
    finding.outcome = Outcome::undecided;
    finding.wanted = {{"one", conflict.first}};
    finding.found = {{"apart", measure(conflict.short_by)}};
    finding.margin = {{"apart", measure(-conflict.short_by)}};
    finding.advice = fmt::format(
        "no size of {} suits every size its mates may have by {}: know the mates closer by {} in "
        "all, or widen the fit",
        name(conflict.size), conflict.first, length_text(conflict.short_by, unit()));
    finding.basis = "the sizes that exist may vary by more than the fit does";
    return finding;
  }

  void add_pressed(Finding& finding, const PressedBore& pressed) const {
    if (pressed.after && pressed.after->lower <= pressed.after->upper) {
      add_range(finding.found, "pressed_in", *pressed.after);
    }
    finding.caution = said::kPressCaution;
    const CloseIn& close_in = pressed.close_in;
    const RadialSeat& press = declared_.look->seats.radial.at(close_in.press_seat);
    const std::string where = declared_.names.id_of(press.hole);
    if (!close_in.unknown.empty()) {
      finding.basis += fmt::format(
          "; its bore closes when it is pressed into {}, by how much is not "
          "known: {}",
          where, close_in.unknown);
      return;
    }
    finding.found.push_back({"close_in", percent(100.0 * close_in.least), RangeEnd::least});
    finding.found.push_back({"close_in", percent(100.0 * close_in.greatest), RangeEnd::greatest});
    finding.basis += fmt::format(
        "; pressed into {} its bore closes by {:.3f} to {:.3f} of the interference left when "
        "roughness has taken {} (thick rings in plane stress; 0.4 to 0.8 of both Rz, DIN 7190-1)",
        where, close_in.least, close_in.greatest, range_text(close_in.flattened, unit()));
  }

  [[nodiscard]] std::string when(const SuitWindow& window) const {
    if (window.of < 2) {
      return "";
    }
    if (window.turn == 1 && window.first) {
      return fmt::format(
          "; make it first: made and measured anywhere from {}, the rest can still "
          "be made to suit",
          range_text(*window.first, unit()));
    }
    return fmt::format(
        "; make it as number {} of {}: with the others made and measured its window "
        "is {} wide instead of {}",
        window.turn, window.of, length_text(window.last.width(), unit()),
        length_text(window.hold.width(), unit()));
  }

  // An assembly may show a bore as it is made or as it is once pressed in.
  [[nodiscard]] Limits drawn_against(const SuitWindow& window) const {
    const Length drawn = job_.problem.sizes[window.size].drawn;
    const auto& pressed = job_.pressed[window.size];
    const bool in_place = pressed && pressed->after && within(drawn, *pressed->after);
    return in_place && !within(drawn, window.hold) ? *pressed->after : window.hold;
  }

  static bool within(Length size, Limits limits) {
    return size >= limits.lower && size <= limits.upper;
  }

  [[nodiscard]] std::string make_text(const SuitWindow& window) const {
    const auto& pressed = job_.pressed[window.size];
    std::string text =
        fmt::format("make {} {}, aim at {}", name(window.size), range_text(window.hold, unit()),
                    length_text(window.target, unit()));
    if (!pressed || !pressed->close_in.unknown.empty()) {
      return text;
    }
    text += ", before it is pressed in";
    if (pressed->after) {
      text += fmt::format(" (then {})", range_text(*pressed->after, unit()));
    }
    return text;
  }

  void judge(Finding& finding, const SuitWindow& window) const {
    const SuitSize& size = job_.problem.sizes[window.size];
    const FeatureRef& feature = job_.features[window.size];
    const auto& pressed = job_.pressed[window.size];
    const bool finished_in_place = pressed && !pressed->close_in.unknown.empty();
    if (const std::string& open = job_.open[window.size]; !open.empty() && !finished_in_place) {
      // Limits that forget what pressing does would spoil a part.
      finding.outcome = Outcome::undecided;
      finding.advice = "pressing moves it or its mate, by how much is not known: " + open;
      return;
    }
    const std::string make = make_text(window);
    Reasons reasons;
    if (!window.accept) {
      reasons.add(Outcome::undecided,
                  fmt::format("{}; a measurement of +- {} cannot prove it: measure closer", make,
                              length_text(size.uncertainty, unit())));
    }
    if (finished_in_place) {
      reasons.add(Outcome::undecided,
                  fmt::format("{}, once pressed in: {}, so finish the bore in place", make,
                              pressed->close_in.unknown));
    }
    const bool actual = sizes_of(declared_, feature.occurrence) == SizesMeant::actual;
    if (actual && !within(size.drawn, drawn_against(window))) {
      const bool first = window.first && within(size.drawn, *window.first);
      reasons.add(first ? Outcome::undecided : Outcome::nonconforming,
                  fmt::format("{}; drawn at {} it {}", make, length_text(size.drawn, unit()),
                              first ? "suits only if the rest is then made to suit it"
                                    : "suits nothing the rest may be"));
    }
    finding.outcome = reasons.outcome();
    finding.advice = reasons.advice(make) + when(window);
  }

  [[nodiscard]] Finding size_to_make(const SuitWindow& window) const {
    Finding finding = start(window.size);
    const SuitSize& size = job_.problem.sizes[window.size];
    add_range(finding.wanted, "size", window.hold);
    finding.wanted.push_back({"target", measure(window.target)});
    if (window.accept) {
      add_range(finding.wanted, "reading", *window.accept);
    }
    finding.found = {{"drawn", measure(size.drawn)},
                     {"uncertainty", measure(size.uncertainty)},
                     {"window_left", percent(100.0 * window.share_left)}};
    if (window.of > 1) {
      finding.found.push_back({"order", fmt::format("{} of {}", window.turn, window.of)});
      add_range(finding.found, "made_last", window.last);
      if (window.first) {
        add_range(finding.found, "made_first", *window.first);
      }
    }
    finding.margin = {{"size", measure(margin({size.drawn, size.drawn}, drawn_against(window)))}};
    finding.basis = fmt::format("{}; {}", demands_on(window.size), kIso14253);
    if (const auto& pressed = job_.pressed[window.size]) {
      add_pressed(finding, *pressed);
    }
    judge(finding, window);
    return finding;
  }

  const DeclaredJob& declared_;
  SuitJob job_;
  SuitPlan plan_;
};

}  // namespace

std::vector<Finding> suit_findings(const WorkedGroup& worked) { return Suit(worked).findings(); }

}  // namespace spotblue
