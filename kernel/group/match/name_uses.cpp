#include "group/match/name_uses.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {
namespace {

// What a name may stand for.
enum class NameMeans { part, feature, part_or_feature };

// A name in an entry of a job.
struct NameUse {
  Entry entry;
  const std::string* name = nullptr;
  NameMeans means = NameMeans::part;
  std::span<const FeatureWord> words{};  // of a feature, what it may be; none: anything
};

constexpr std::array kHoles{FeatureWord::bore, FeatureWord::slot};
constexpr std::array kShafts{FeatureWord::outside, FeatureWord::width};
constexpr std::array kSizes{FeatureWord::bore, FeatureWord::outside, FeatureWord::slot,
                            FeatureWord::width};
constexpr std::array kFaces{FeatureWord::face};
constexpr std::array kTaperHoles{FeatureWord::taper_bore};
constexpr std::array kTaperShafts{FeatureWord::taper};
constexpr std::array kBores{FeatureWord::bore};
constexpr std::array kOutsides{FeatureWord::outside};
constexpr std::array kTurned{FeatureWord::bore, FeatureWord::outside};
constexpr std::array kCut{FeatureWord::outside, FeatureWord::bore, FeatureWord::face};

class Uses {
 public:
  void part(std::string_view list, std::string_view key, const std::optional<JobLine>& line,
            const std::string& name) {
    all_.push_back({{list, key, line}, &name, NameMeans::part});
  }
  void feature(std::string_view list, std::string_view key, const std::optional<JobLine>& line,
               const std::string& name, std::span<const FeatureWord> words) {
    all_.push_back({{list, key, line}, &name, NameMeans::feature, words});
  }
  void part_or_face(std::string_view list, std::string_view key, const std::optional<JobLine>& line,
                    const std::string& name) {
    all_.push_back({{list, key, line}, &name, NameMeans::part_or_feature, kFaces});
  }
  [[nodiscard]] std::vector<NameUse> take() { return std::move(all_); }

 private:
  std::vector<NameUse> all_;
};

void add_sizes(const Job& job, Uses& uses) {
  for (const FitWant& want : job.fits) {
    uses.feature("fits", "hole", want.line, want.hole, kHoles);
    uses.feature("fits", "shaft", want.line, want.shaft, kShafts);
  }
  for (const SizeWant& want : job.sizes) {
    uses.feature("sizes", "feature", want.line, want.feature, kSizes);
  }
  for (const MeasuredSize& size : job.measured) {
    uses.feature("measured", "feature", size.line, size.feature, kSizes);
  }
  for (const TaperWant& want : job.tapers) {
    uses.feature("tapers", "hole", want.line, want.hole, kTaperHoles);
    uses.feature("tapers", "shaft", want.line, want.shaft, kTaperShafts);
  }
  for (const ThreadWant& thread : job.threads) {
    uses.feature("threads", "hole", thread.line, thread.hole, kBores);
    uses.feature("threads", "screw", thread.line, thread.screw, kOutsides);
  }
  for (const Surface& surface : job.surfaces) {
    uses.feature("surfaces", "feature", surface.line, surface.feature, kTurned);
  }
  for (const Cut& cut : job.cuts) {
    uses.feature("cuts", "feature", cut.line, cut.feature, kCut);
  }
}

void add_lengths(const Job& job, Uses& uses) {
  for (const MeasuredGap& gap : job.measured_gaps) {
    uses.part_or_face("measured", "between", gap.line, gap.a);
    uses.part_or_face("measured", "between", gap.line, gap.b);
  }
  for (const AxialWant& want : job.axial) {
    uses.part_or_face("wants", "between", want.line, want.a);
    uses.part_or_face("wants", "between", want.line, want.b);
  }
  for (const EndPlayWant& want : job.end_play) {
    uses.part("wants", "of", want.line, want.of);
    if (want.on) {
      uses.part("wants", "on", want.line, *want.on);
    }
  }
  for (const PartLength& length : job.lengths) {
    uses.feature("lengths", "between", length.line, length.a, kFaces);
    uses.feature("lengths", "between", length.line, length.b, kFaces);
  }
  for (const Adjust& adjust : job.adjust) {
    uses.part("adjust", "part", adjust.line, adjust.part);
    for (const auto* face : {&adjust.from, &adjust.to}) {
      if (*face) {
        uses.feature("adjust", "between", adjust.line, **face, kFaces);
      }
    }
  }
}

void add_parts(const Job& job, Uses& uses) {
  for (const JobPart& part : job.parts) {
    uses.part("parts", "part", part.line, part.part);
  }
  for (const SharedStock& stock : job.stock) {
    for (const std::string& part : stock.parts) {
      uses.part("stock", "parts", stock.line, part);
    }
  }
  for (const AllowedOverlap& allowed : job.allowed) {
    uses.part("allow", "parts", allowed.line, allowed.a);
    uses.part("allow", "parts", allowed.line, allowed.b);
  }
  for (const Turning& turning : job.turning) {
    uses.part("turning", "part", turning.line, turning.part);
    if (!turning.at.empty()) {
      uses.feature("turning", "at", turning.line, turning.at, {});
    }
  }
  for (const Fixing& join : job.fixed) {
    uses.part("fixed", "parts", join.line, join.a);
    uses.part("fixed", "parts", join.line, join.b);
  }
  for (const KeepOff& apart : job.keep_off) {
    uses.part("keep_off", "parts", apart.line, apart.a);
    uses.part("keep_off", "parts", apart.line, apart.b);
  }
  for (const Mesh& mesh : job.meshes) {
    uses.part("meshes", "part", mesh.line, mesh.a.part);
    uses.part("meshes", "part", mesh.line, mesh.b.part);
  }
}

// Every name of the job.
std::vector<NameUse> names_in(const Job& job) {
  Uses uses;
  add_parts(job, uses);
  add_sizes(job, uses);
  add_lengths(job, uses);
  return uses.take();
}

class Mistakes {
 public:
  void note(const std::function<void()>& look_up) {
    try {
      look_up();
    } catch (const Error& error) {
      const bool known = std::ranges::any_of(all_, [&](const Error& one) {
        return one.place() == error.place() && one.rule() == error.rule();
      });
      if (!known) {
        all_.push_back(error);
      }
    }
  }

  void raise() const {
    if (all_.empty()) {
      return;
    }
    const Error& first = all_.front();
    if (all_.size() == 1) {
      throw first;
    }
    std::string cure = first.cure();
    for (std::size_t i = 1; i < all_.size(); ++i) {
      const std::string file = all_[i].file() == first.file() ? "" : all_[i].file() + ", ";
      cure += fmt::format(" | {}{}: {}; {}", file, all_[i].place(), all_[i].rule(), all_[i].cure());
    }
    throw Error(first.code(), {first.file(), first.place()},
                fmt::format("{} (the first of {} mistakes)", first.rule(), all_.size()), cure);
  }

 private:
  std::vector<Error> all_;
};

FeatureWord word_in(const Model& model, const FeatureRef& feature) {
  const Product& product = model.products[model.occurrences[feature.occurrence].product];
  switch (feature.kind) {
    case FeatureKind::cylinder:
      return product.cylinders[feature.index].side == Side::internal ? FeatureWord::bore
                                                                     : FeatureWord::outside;
    case FeatureKind::cone:
      return product.cones[feature.index].side == Side::internal ? FeatureWord::taper_bore
                                                                 : FeatureWord::taper;
    case FeatureKind::width:
      return product.widths[feature.index].side == Side::internal ? FeatureWord::slot
                                                                  : FeatureWord::width;
    case FeatureKind::plane:
      break;
  }
  return FeatureWord::face;
}

void require_name(const Model& model, const Names& names, const NameUse& use) {
  const bool part = use.means == NameMeans::part ||
                    (use.means == NameMeans::part_or_feature &&
                     (names.is_part(*use.name) || part_of_feature(*use.name).empty()));
  if (part) {
    (void)names.part(*use.name, use.entry);
    return;
  }
  const NamedFeature found = names.feature(*use.name, use.entry);
  const FeatureWord word = word_in(model, found.refs.front());
  if (!use.words.empty() && std::ranges::find(use.words, word) == use.words.end()) {
    std::vector<std::string_view> wanted;
    for (const FeatureWord one : use.words) {
      wanted.push_back(feature_word_name(one));
    }
    throw names.error(use.entry, fmt::format("\"{}\" is a {}", *use.name, feature_word_name(word)),
                      fmt::format("name a feature that is a {} here", fmt::join(wanted, " or ")));
  }
}

void require_pair(const Model& model, const Names& names, const FitWant& want) {
  const Entry entry{"fits", "shaft", want.line};
  const FeatureWord hole = word_in(model, names.feature(want.hole, entry).refs.front());
  const FeatureWord shaft = word_in(model, names.feature(want.shaft, entry).refs.front());
  if ((hole == FeatureWord::bore) != (shaft == FeatureWord::outside)) {
    throw names.error(
        entry,
        fmt::format("a {} does not fit a {}", feature_word_name(shaft), feature_word_name(hole)),
        "pair a bore with an outside, and a slot with a width");
  }
}

void require_metal(const Job& job, const Model& model, const Names& names, const Cut& cut) {
  const NameUse use{{"cuts", "feature", cut.line}, &cut.feature};
  const FeatureRef feature = names.feature(cut.feature, use.entry).refs.front();
  const FeatureWord word = word_in(model, feature);
  if ((word == FeatureWord::face) != cut.depth.has_value()) {
    throw names.error(use.entry,
                      fmt::format("\"{}\" is a {}", cut.feature, feature_word_name(word)),
                      word == FeatureWord::face ? "say how much is faced off it: depth"
                                                : "say what diameter it had before: before");
  }
  const bool turned_down = cut.fillet || cut.mate_corner || cut.torque_nm || cut.bending_nm;
  if (turned_down && word != FeatureWord::outside) {
    throw names.error(use.entry,
                      fmt::format("\"{}\" is a {}", cut.feature, feature_word_name(word)),
                      "fillet, mate_corner, torque and bending are said only of an outside");
  }
  if (!cut.before) {
    return;
  }
  const Product& product = model.products[model.occurrences[feature.occurrence].product];
  const Length after = Length::mm(product.cylinders[feature.index].diameter);
  const bool shaft = word == FeatureWord::outside;
  if (shaft ? *cut.before <= after : *cut.before >= after) {
    throw names.error({"cuts", "before", cut.line},
                      fmt::format("{} is not {} than the {} that shall be left",
                                  format_size(*cut.before, job.unit), shaft ? "more" : "less",
                                  format_size(after, job.unit)),
                      "the model has the size after the cut, before is what it is now");
  }
}

}  // namespace

void require_names(const Job& job, const Model& model, const Names& names) {
  Mistakes mistakes;
  for (const NameUse& use : names_in(job)) {
    mistakes.note([&] { require_name(model, names, use); });
  }
  mistakes.raise();
  for (const FitWant& want : job.fits) {
    mistakes.note([&] { require_pair(model, names, want); });
  }
  for (const Cut& cut : job.cuts) {
    mistakes.note([&] { require_metal(job, model, names, cut); });
  }
  const auto two = [&](std::string_view list, const auto& entries) {
    for (const auto& entry : entries) {
      mistakes.note([&] { (void)names.two_parts(entry.a, entry.b, {list, "parts", entry.line}); });
    }
  };
  two("allow", job.allowed);
  two("fixed", job.fixed);
  two("keep_off", job.keep_off);
  mistakes.raise();
}

}  // namespace spotblue
