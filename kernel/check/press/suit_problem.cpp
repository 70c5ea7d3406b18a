#include "check/press/suit_problem.hpp"

#include <fmt/format.h>

#include <map>
#include <utility>

#include "group/rings/assembled_clearance.hpp"
#include "group/sizes/seat_sizes.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_suit.hpp"

namespace spotblue {
namespace {

// Ratios of a hub with steps count as one up to here.
constexpr double kSameRatio = 0.02;

struct Part {
  FeatureRef feature;
  SizeRange range;
};

// A size, or what is left of a bore: their sum.
using Form = std::vector<SuitTerm>;

class Builder {
 public:
  explicit Builder(const WorkedGroup& worked) : worked_(worked), declared_(worked.declared) {}

  SuitJob build() {
    const Seats& seats = declared_.look->seats;
    for (std::size_t i = 0; i < seats.radial.size(); ++i) {
      if (declared_.radial_fits.at(i) != nullptr) {
        add_fit({seats.radial[i].hole, {}}, {seats.radial[i].shaft, {}}, worked_.surfaces[i].sizes,
                *declared_.radial_fits[i], alone_in_its_hub(close_in_of(worked_, i)), moving(i));
      }
    }
    for (std::size_t i = 0; i < seats.width.size(); ++i) {
      if (declared_.width_fits.at(i) != nullptr) {
        add_fit({seats.width[i].slot, {}}, {seats.width[i].key, {}}, width_seat_sizes(declared_, i),
                *declared_.width_fits[i], std::nullopt, nullptr);
      }
    }
    return std::move(job_);
  }

 private:
  [[nodiscard]] bool open(const FeatureRef& feature) const {
    return state_of(declared_, feature.occurrence) == PartState::to_make &&
           !declared_.measured.contains(subject_of(feature));
  }

  [[nodiscard]] Length drawn(const FeatureRef& feature) const {
    const Model& model = declared_.look->model;
    const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
    return Length::mm(feature.kind == FeatureKind::width
                          ? product.widths.at(feature.index).width
                          : product.cylinders.at(feature.index).diameter);
  }

  // A name of its own, which errors show.
  std::string want_named(const std::string& feature, const Saying& want) {
    std::string name = fmt::format("{}, want {}", feature, job_.wants.size() + 1);
    job_.wants.emplace(name, want);
    return name;
  }

  SuitTerm term(const Part& part, double factor) {
    return open(part.feature) ? SuitTerm{SuitOf::to_make, size_of(part.feature), factor}
                              : as_it_is(part, factor);
  }

  SuitTerm as_it_is(const Part& part, double factor) {
    const auto [known, fresh] =
        known_.try_emplace(subject_of(part.feature), job_.problem.known.size());
    if (fresh) {
      job_.problem.known.push_back({declared_.names.id_of(part.feature), part.range.limits});
    }
    return {SuitOf::known, known->second, factor};
  }

  // A size that a press hangs on of which nothing is wanted: it is made as it is drawn.
  SuitTerm pressed_term(const Part& part, double factor, bool wanted) {
    return wanted || declared_.sizes.contains(subject_of(part.feature)) ? term(part, factor)
                                                                        : as_it_is(part, factor);
  }

  std::size_t size_of(const FeatureRef& feature) {
    const auto [known, fresh] = sizes_.try_emplace(subject_of(feature), job_.problem.sizes.size());
    if (fresh) {
      SuitSize size;
      size.name = declared_.names.id_of(feature);
      size.drawn = drawn(feature);
      size.uncertainty = declared_.job->settings.default_uncertainty;
      const auto want = declared_.sizes.find(subject_of(feature));
      if (want != declared_.sizes.end()) {
        const WantedSize wanted = wanted_size(*declared_.job, *want->second, size.drawn,
                                              drawn_at(declared_, feature.occurrence));
        size.own = wanted.limits;
        size.own_by = want_named(
            size.name, say(said::kWantedSizeOf, wanted.text, declared_.names.reference(feature),
                           at_line(want->second->line)));
      }
      job_.problem.sizes.push_back(std::move(size));
      job_.features.push_back(feature);
      job_.pressed.emplace_back();
      job_.open.emplace_back();
    }
    return known->second;
  }

  // The bore as it is once pressed in; as it is made where it is not pressed, or where its close-in
  // is not known.
  Form bore_form(const Part& hole, const std::optional<CloseIn>& close_in, double ratio) {
    Form form{term(hole, 1.0)};
    if (close_in && close_in->unknown.empty()) {
      const RadialSeat& press = declared_.look->seats.radial.at(close_in->press_seat);
      const SeatSizes& sizes = worked_.surfaces[close_in->press_seat].sizes;
      const bool wanted = declared_.radial_fits.at(close_in->press_seat) != nullptr;
      form.push_back(pressed_term({press.shaft, sizes.found.shaft}, -ratio, wanted));
      form.push_back(pressed_term({press.hole, sizes.found.hole}, ratio, wanted));
      // How much roughness takes is known no closer than its two practices.
      form.push_back({SuitOf::known, job_.problem.known.size(), ratio});
      job_.problem.known.push_back({"interference lost to roughness", close_in->flattened});
    }
    return form;
  }

  // The sizes that a pair which runs meets with; a pair that is pressed is made to its own.
  [[nodiscard]] const SurfaceSizes* moving(std::size_t seat) const {
    const SurfaceSizes& surface = worked_.surfaces[seat];
    return surface.pressing == Pressing::none ? &surface : nullptr;
  }

  // A bush whose hub is itself pressed into something closes by more than its own press: the group
  // says by how much.
  [[nodiscard]] std::optional<CloseIn> alone_in_its_hub(std::optional<CloseIn> close_in) const {
    const std::vector<RadialSeat>& seats = declared_.look->seats.radial;
    for (std::size_t i = 0; close_in && i < seats.size(); ++i) {
      if (worked_.surfaces[i].pressing != Pressing::none &&
          seats[i].shaft.occurrence == seats[close_in->press_seat].hole.occurrence) {
        return std::nullopt;
      }
    }
    return close_in;
  }

  // What pressing moves of a size, in any way that it may.
  void add_move(Form& form, const SizeStates& size, double factor) {
    if (!size.assembled || size.assembled == size.free) {
      return;
    }
    form.push_back({SuitOf::known, job_.problem.known.size(), factor});
    job_.problem.known.push_back({"what pressing moves of it",
                                  {Length::mm(size.assembled->low - size.free.low),
                                   Length::mm(size.assembled->high - size.free.high)}});
  }

  void add_demand(const Form& form, Limits wanted, const std::string& name, const Saying& asked) {
    job_.problem.demands.push_back({name, form, {}, wanted});
    job_.asked.push_back(asked);
  }

  void add_fit(Part hole, Part shaft, const SeatSizes& sizes, const FitWant& want,
               const std::optional<CloseIn>& close_in, const SurfaceSizes* surface) {
    hole.range = sizes.found.hole;
    shaft.range = sizes.found.shaft;
    const bool press_open =
        close_in && close_in->unknown.empty() && pressing_open(close_in->press_seat);
    if (!open(hole.feature) && !open(shaft.feature) && !press_open) {
      return;
    }
    const WantedFit& wanted = *sizes.wanted;
    const Saying fit = say(said::kFitOf, wanted.text, declared_.names.reference(hole.feature),
                           declared_.names.reference(shaft.feature), at_line(want.line));
    const std::string name = want_named(declared_.names.id_of(hole.feature), fit);
    const bool by_class = open(hole.feature) && open(shaft.feature) && wanted.hole && wanted.shaft;
    const Saying asked = by_class ? fit : say(said::kFitWithClearance, fit, wanted.clearance);
    for (const double ratio : ratios(close_in)) {
      Form form = bore_form(hole, close_in, ratio);
      if (!close_in && surface != nullptr) {
        add_move(form, surface->hole, 1.0);
      }
      if (by_class) {
        add_demand(form, *wanted.hole, name, asked);
        continue;
      }
      form.push_back(term(shaft, -1.0));
      if (surface != nullptr) {
        add_move(form, surface->shaft, -1.0);
      }
      add_demand(form, wanted.clearance, name, asked);
    }
    if (by_class) {
      Form form{term(shaft, 1.0)};
      if (surface != nullptr) {
        add_move(form, surface->shaft, 1.0);
      }
      add_demand(form, *wanted.shaft, name, asked);
    }
    for (const Part* part : {&hole, &shaft}) {
      if (surface != nullptr && open(part->feature)) {
        Saying& why = job_.open[size_of(part->feature)];
        why = why.empty() ? Saying(why_not_assembled(*surface)) : why;
      }
    }
    if (close_in && open(hole.feature)) {
      job_.pressed[size_of(hole.feature)] = PressedBore{*close_in, after(shaft, wanted, by_class)};
    }
  }

  [[nodiscard]] bool pressing_open(std::size_t press_seat) const {
    const RadialSeat& press = declared_.look->seats.radial.at(press_seat);
    return open(press.shaft) || open(press.hole);
  }

  static std::vector<double> ratios(const std::optional<CloseIn>& close_in) {
    if (!close_in || !close_in->unknown.empty()) {
      return {0.0};
    }
    if (close_in->greatest - close_in->least <= kSameRatio * close_in->greatest) {
      return {close_in->greatest};
    }
    return {close_in->least, close_in->greatest};
  }

  [[nodiscard]] std::optional<Limits> after(const Part& shaft, const WantedFit& wanted,
                                            bool by_class) const {
    if (by_class) {
      return wanted.hole;
    }
    if (open(shaft.feature)) {
      return std::nullopt;
    }
    return Limits{shaft.range.limits.upper + wanted.clearance.lower,
                  shaft.range.limits.lower + wanted.clearance.upper};
  }

  const WorkedGroup& worked_;
  const DeclaredJob& declared_;
  SuitJob job_;
  std::map<Subject, std::size_t> sizes_, known_;
};

}  // namespace

SuitJob suit_job(const WorkedGroup& worked) { return Builder(worked).build(); }

}  // namespace spotblue
