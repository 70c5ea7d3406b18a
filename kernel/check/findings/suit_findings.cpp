#include "check/findings/suit_findings.hpp"

#include <cmath>
#include <cstddef>
#include <set>
#include <tuple>
#include <utility>

#include "check/fits/reasons.hpp"
#include "check/press/suit_problem.hpp"
#include "check/words/words.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_making.hpp"
#include "group/words/said_suit.hpp"
#include "spotblue/mechanics/press_fit.hpp"

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
  [[nodiscard]] Reference name(std::size_t size) const {
    return declared_.names.reference(job_.features[size]);
  }
  [[nodiscard]] const Saying& want(const std::string& named) const { return job_.wants.at(named); }

  // Every fit that speaks of the size, in the order of the job.
  [[nodiscard]] Saying demands_on(std::size_t size) const {
    Saying all;
    Saying last;
    for (std::size_t i = 0; i < job_.problem.demands.size(); ++i) {
      for (const SuitTerm& term : job_.problem.demands[i].terms) {
        const bool speaks = term.of == SuitOf::to_make && term.index == size;
        if (speaks && job_.asked[i] != last) {
          all += last = job_.asked[i];
        }
      }
    }
    if (const auto& own = job_.problem.sizes[size].own) {
      all += say(said::kWantedWithin, want(job_.problem.sizes[size].own_by), *own);
    }
    return all;
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
    finding.wanted = {{"one", want(conflict.first)}, {"other", want(conflict.second)}};
    finding.found = {{"apart", measure(conflict.short_by)}};
    finding.margin = {{"apart", measure(-conflict.short_by)}};
    Saying through;
    for (const std::string& named : conflict.through) {
      through = through.empty() ? want(named) : say(said::kAndWant, through, want(named));
    }
    finding.advice =
        (through.empty()
             ? say(said::kSuitsNotBoth, name(conflict.size), want(conflict.first),
                   want(conflict.second), conflict.short_by)
             : say(said::kSuitsNotBothThrough, name(conflict.size), want(conflict.first),
                   want(conflict.second), through, conflict.short_by)) +
        said::kWidenOne;
    finding.basis = said::kOneBelowOther;
    return finding;
  }

  [[nodiscard]] Finding unclear_mate(const SuitConflict& conflict) const {
    Finding finding = start(conflict.size);
    finding.outcome = Outcome::undecided;
    finding.wanted = {{"one", want(conflict.first)}};
    finding.found = {{"apart", measure(conflict.short_by)}};
    finding.margin = {{"apart", measure(-conflict.short_by)}};
    finding.advice =
        say(said::kKnowMatesCloser, name(conflict.size), want(conflict.first), conflict.short_by);
    finding.basis = said::kMatesVary;
    return finding;
  }

  void add_pressed(Finding& finding, const PressedBore& pressed) const {
    if (pressed.after && pressed.after->lower <= pressed.after->upper) {
      add_range(finding.found, "pressed_in", *pressed.after);
    }
    finding.caution = said::kPressCaution;
    const CloseIn& close_in = pressed.close_in;
    const RadialSeat& press = declared_.look->seats.radial.at(close_in.press_seat);
    const Reference where = declared_.names.reference(press.hole);
    if (!close_in.unknown.empty()) {
      finding.basis += say(said::kClosesNotKnown, where, close_in.unknown);
      return;
    }
    finding.found.push_back({"close_in", percent(100.0 * close_in.least), RangeEnd::least});
    finding.found.push_back({"close_in", percent(100.0 * close_in.greatest), RangeEnd::greatest});
    finding.basis += say(said::kClosesBy, where, Figure{close_in.least, 3},
                         Figure{close_in.greatest, 3}, close_in.flattened) +
                     say(said::kClosesByRings, plain_number(kSmallRoughnessLoss),
                         plain_number(kGreatRoughnessLoss));
  }

  static Saying when(const SuitWindow& window) {
    if (window.of < 2) {
      return {};
    }
    return window.turn == 1 && window.first ? say(said::kMakeFirst, *window.first)
                                            : say(said::kMakeAsNumber, window.turn, window.of,
                                                  window.last.width(), window.hold.width());
  }

  // An assembly may show a bore as it is made or as it is once pressed in.
  [[nodiscard]] Limits drawn_against(const SuitWindow& window) const {
    const Length drawn = job_.problem.sizes[window.size].drawn;
    const auto& pressed = job_.pressed[window.size];
    const auto off = [&](Limits limits) { return margin({drawn, drawn}, limits); };
    const bool in_place = pressed && pressed->after && off(*pressed->after) > off(window.hold);
    return in_place ? *pressed->after : window.hold;
  }

  static bool within(Length size, Limits limits) {
    return size >= limits.lower && size <= limits.upper;
  }

  [[nodiscard]] const Said& how_to_make(const FeatureRef& feature) const {
    const Model& model = declared_.look->model;
    const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
    if (feature.kind == FeatureKind::width) {
      return said::kCutWidth;
    }
    return product.cylinders.at(feature.index).side == Side::internal ? said::kBore : said::kTurn;
  }

  [[nodiscard]] Saying making(const SuitWindow& window) const {
    const FeatureRef& feature = job_.features[window.size];
    const auto& pressed = job_.pressed[window.size];
    const Saying make = say(how_to_make(feature), declared_.names.reference(feature.occurrence),
                            window.hold, DrawnSize{job_.problem.sizes[window.size].drawn});
    if (!pressed || !pressed->close_in.unknown.empty()) {
      return say(said::kAimAt, make, window.target);
    }
    return pressed->after ? say(said::kAimThen, make, window.target, *pressed->after)
                          : say(said::kAimBeforePressing, make, window.target);
  }

  void judge(Finding& finding, const SuitWindow& window) const {
    const SuitSize& size = job_.problem.sizes[window.size];
    const FeatureRef& feature = job_.features[window.size];
    const auto& pressed = job_.pressed[window.size];
    const bool finished_in_place = pressed && !pressed->close_in.unknown.empty();
    if (const Saying& open = job_.open[window.size]; !open.empty() && !finished_in_place) {
      // Limits that forget what pressing does would spoil a part.
      finding.outcome = Outcome::undecided;
      finding.advice = say(said::kPressingMovesIt, open);
      return;
    }
    Reasons reasons;
    if (!window.accept) {
      reasons.add(Outcome::undecided, say(said::kCannotProve, size.uncertainty));
    }
    if (finished_in_place) {
      reasons.add(Outcome::undecided, say(said::kFinishInPlace, pressed->close_in.unknown));
    }
    const bool actual = drawn_at(declared_, feature.occurrence) == Drawn::at_the_size_wanted;
    if (actual && !within(size.drawn, drawn_against(window))) {
      const bool first = window.first && within(size.drawn, *window.first);
      reasons.add(first ? Outcome::undecided : Outcome::nonconforming,
                  say(first ? said::kSuitsIfRestDoes : said::kSuitsNothing, size.drawn));
    }
    finding.outcome = reasons.outcome();
    finding.advice = making(window) + reasons.advice({}) + when(window);
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
      finding.found.push_back({"order", say(said::kNumberOf, window.turn, window.of)});
      add_range(finding.found, "made_last", window.last);
      if (window.first) {
        add_range(finding.found, "made_first", *window.first);
      }
    }
    finding.margin = {{"size", measure(margin({size.drawn, size.drawn}, drawn_against(window)))}};
    finding.basis = demands_on(window.size) + say(said::kAsItIs, kIso14253);
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
