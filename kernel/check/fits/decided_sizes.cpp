#include "spotblue/check/decided_sizes.hpp"

#include <fmt/format.h>

#include <map>
#include <tuple>
#include <utility>

#include "group/match/declared.hpp"
#include "group/sizes/nominal.hpp"
#include "group/sizes/wanted_fit.hpp"

namespace spotblue {
namespace {

using FeatureKey = std::tuple<std::size_t, int, std::size_t>;  // product, kind, index

struct Decision {
  std::vector<SizeToWrite> sizes;  // asked for by the places of the feature, each once
  std::string open;                // why a fit leaves it open; empty when none does
};

bool alike(const SizeToWrite& a, const SizeToWrite& b) {
  return a.nominal_mm == b.nominal_mm && a.tolerance_class == b.tolerance_class &&
         a.deviations == b.deviations;
}

std::string decided_text(const SizeToWrite& size) {
  SemanticSize stated;
  stated.characteristic = SizeCharacteristic::diameter;
  stated.nominal_mm = size.nominal_mm;
  stated.tolerance_class = size.tolerance_class;
  stated.deviations = size.deviations;
  return semantic_size_text(stated);
}

class Decisions {
 public:
  explicit Decisions(const DeclaredJob& declared) : declared_(declared) {}

  DecidedSizes made() {
    const Seats& seats = declared_.look->seats;
    for (std::size_t i = 0; i < seats.radial.size(); ++i) {
      const RadialSeat& seat = seats.radial[i];
      add_fit(declared_.radial_fits.at(i), seat.hole, seat.shaft, Length::mm(seat.hole_diameter),
              Length::mm(seat.shaft_diameter));
    }
    for (std::size_t i = 0; i < seats.width.size(); ++i) {
      const WidthSeat& seat = seats.width[i];
      add_fit(declared_.width_fits.at(i), seat.slot, seat.key, Length::mm(seat.slot_width),
              Length::mm(seat.key_width));
    }
    for (const auto& [subject, want] : declared_.sizes) {
      add_size({subject.occurrence, *subject.kind, subject.index}, *want);
    }
    return gathered();
  }

 private:
  [[nodiscard]] FeatureKey key_of(const FeatureRef& feature) const {
    return {declared_.look->model.occurrences.at(feature.occurrence).product,
            static_cast<int>(feature.kind), feature.index};
  }

  // What a feature's own entry says is kept apart: it wins over the fits the feature is in.
  void decide(std::map<FeatureKey, Decision>& book, const FeatureRef& feature, SizeToWrite size) {
    const Model& model = declared_.look->model;
    size.product = model.products.at(model.occurrences.at(feature.occurrence).product).id;
    size.feature = feature_name(model, feature);
    std::vector<SizeToWrite>& sizes = book[key_of(feature)].sizes;
    for (const SizeToWrite& known : sizes) {
      if (alike(known, size)) {
        return;
      }
    }
    sizes.push_back(std::move(size));
  }

  void add_fit(const FitWant* want, const FeatureRef& hole, const FeatureRef& shaft,
               Length hole_size, Length shaft_size) {
    if (want == nullptr || std::holds_alternative<LimitsOfBoth>(want->rule)) {
      return;  // the model states those itself
    }
    const WantedFit wanted =
        wanted_fit(*declared_.job, *want,
                   {hole_size, shaft_size, drawn_at(declared_, hole.occurrence),
                    drawn_at(declared_, shaft.occurrence)});
    if (!wanted.hole || !wanted.shaft || !wanted.nominal) {
      const std::string why = "since its fit asks for a clearance and leaves the two sizes open";
      by_fit_[key_of(hole)].open = why;
      by_fit_[key_of(shaft)].open = why;
      return;
    }
    const auto* by_class = std::get_if<ClassFit>(&want->rule);
    const bool iso = by_class != nullptr && by_class->system == FitSystem::iso_286;
    const auto stroke = wanted.text.find('/');
    const auto without_blanks = [](std::string text) {
      std::erase(text, ' ');
      return text;
    };
    const auto side = [&](const Limits& limits, const std::string& tolerance_class) {
      SizeToWrite size = by_limits(*wanted.nominal, limits);
      if (iso) {
        size.tolerance_class = without_blanks(tolerance_class);
        size.deviations.reset();
      }
      return size;
    };
    decide(by_fit_, hole, side(*wanted.hole, wanted.text.substr(0, stroke)));
    decide(by_fit_, shaft, side(*wanted.shaft, iso ? wanted.text.substr(stroke + 1) : ""));
  }

  void add_size(const FeatureRef& feature, const SizeWant& want) {
    const Model& model = declared_.look->model;
    const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
    const Length modelled = Length::mm(feature.kind == FeatureKind::width
                                           ? product.widths.at(feature.index).width
                                           : product.cylinders.at(feature.index).diameter);
    const WantedSize wanted =
        wanted_size(*declared_.job, want, modelled, drawn_at(declared_, feature.occurrence));
    SizeToWrite size =
        by_limits(wanted.nominal.value_or(nominal_of_basic(modelled)), wanted.limits);
    if (const auto* tolerance_class = std::get_if<std::string>(&want.rule)) {
      size.tolerance_class = *tolerance_class;
      size.deviations.reset();
    }
    decide(by_size_, feature, std::move(size));
  }

  static SizeToWrite by_limits(Length nominal, const Limits& limits) {
    SizeToWrite size;
    size.nominal_mm = nominal.in_mm();
    size.deviations = {(limits.lower - nominal).in_mm(), (limits.upper - nominal).in_mm()};
    return size;
  }

  DecidedSizes gathered() {
    for (auto& [key, decision] : by_size_) {
      by_fit_[key] = std::move(decision);
    }
    DecidedSizes result;
    for (auto& [key, decision] : by_fit_) {
      const auto& [product, kind, index] = key;
      if (decision.sizes.size() == 1) {
        result.sizes.push_back(std::move(decision.sizes.front()));
        continue;
      }
      const std::string name = declared_.look->model.products.at(product).id + ": " +
                               feature_name_of(product, static_cast<FeatureKind>(kind), index);
      if (decision.sizes.empty()) {
        result.left_out.push_back({name, decision.open});
      } else {
        result.left_out.push_back(
            {name,
             fmt::format("since its places are to have different sizes, {} and {}; the model has "
                         "but one face for them",
                         decided_text(decision.sizes[0]), decided_text(decision.sizes[1]))});
      }
    }
    return result;
  }

  [[nodiscard]] const std::string& feature_name_of(std::size_t product, FeatureKind kind,
                                                   std::size_t index) const {
    const Product& one = declared_.look->model.products.at(product);
    return kind == FeatureKind::width ? one.widths.at(index).name : one.cylinders.at(index).name;
  }

  const DeclaredJob& declared_;
  std::map<FeatureKey, Decision> by_fit_, by_size_;
};

}  // namespace

DecidedSizes decided_sizes(const Job& job, const Look& look) {
  const DeclaredJob declared = declare(job, look);
  DecidedSizes decided = Decisions(declared).made();
  for (const LostName& lost : declared.lost) {
    decided.left_out.push_back({lost.name, "is not in what arrived of the model; " + lost.why});
  }
  return decided;
}

}  // namespace spotblue
