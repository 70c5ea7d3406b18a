#include "group/match/names.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "group/match/flaws.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/geometry/feature_names.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {
namespace {

// A size written by hand to two decimals still means the feature.
constexpr double kSameSize_mm = 0.005;

bool near(Length a, Length b) { return std::abs(a.in_mm() - b.in_mm()) <= kSameSize_mm; }

bool means(const FeatureName& written, const FeatureName& known) {
  if (written.word != known.word || written.sizes.size() != known.sizes.size() ||
      !std::equal(written.sizes.begin(), written.sizes.end(), known.sizes.begin(), near)) {
    return false;
  }
  const bool place_fits =
      !written.position || (known.position && near(*written.position, *known.position));
  return place_fits && (!written.ordinal || written.ordinal == known.ordinal);
}

}  // namespace

std::vector<ProductFeature> features_of(const Product& product) {
  std::vector<ProductFeature> all;
  const auto add = [&all](FeatureKind kind, const auto& list) {
    for (std::size_t i = 0; i < list.size(); ++i) {
      all.push_back({kind, i, &list[i].name, &list[i].sized_name, &list[i].given});
    }
  };
  add(FeatureKind::cylinder, product.cylinders);
  add(FeatureKind::cone, product.cones);
  add(FeatureKind::plane, product.planes);
  add(FeatureKind::width, product.widths);
  return all;
}

namespace {

template <typename Take>
const std::string& of_feature(const Model& model, const FeatureRef& feature, const Take& take) {
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  switch (feature.kind) {
    case FeatureKind::cylinder:
      return take(product.cylinders.at(feature.index));
    case FeatureKind::cone:
      return take(product.cones.at(feature.index));
    case FeatureKind::plane:
      return take(product.planes.at(feature.index));
    case FeatureKind::width:
      break;
  }
  return take(product.widths.at(feature.index));
}

}  // namespace

const std::string& feature_name(const Model& model, const FeatureRef& feature) {
  return of_feature(model, feature, [](const auto& one) -> const std::string& { return one.name; });
}

const std::string& sized_feature_name(const Model& model, const FeatureRef& feature) {
  return of_feature(model, feature,
                    [](const auto& one) -> const std::string& { return one.sized_name; });
}

Names::Names(const Job& job, const Model& model)
    : job_(&job), model_(&model), flaws_(flaws_of(model)) {
  std::vector<std::vector<OccurrenceId>> of_product(model.products.size());
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    of_product.at(model.occurrences[i].product).push_back(i);
  }
  // Products go in first: a name that is both means the product.
  for (std::size_t i = 0; i < model.products.size(); ++i) {
    parts_.try_emplace(model.products[i].id, NamedPart{Meant::product, of_product[i]});
  }
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    parts_.try_emplace(model.occurrences[i].id, NamedPart{Meant::occurrence, {i}});
  }
  std::map<std::string, std::vector<OccurrenceId>> by_path;
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    by_path[model.occurrences[i].path].push_back(i);
  }
  for (const auto& [path, occurrences] : by_path) {
    if (occurrences.size() == 1) {
      parts_.try_emplace(path, NamedPart{Meant::occurrence, occurrences});
    }
  }
  add_parts_of_bodies(of_product);
}

void Names::add_parts_of_bodies(const std::vector<std::vector<OccurrenceId>>& of_product) {
  std::map<std::string, std::vector<OccurrenceId>> wholes;
  std::map<std::string, std::vector<ProductId>> own_names;
  for (ProductId i; i < model_->products.size(); ++i) {
    const Product& product = model_->products[i];
    if (product.body) {
      auto& whole = wholes[product.part];
      whole.insert(whole.end(), of_product[i].begin(), of_product[i].end());
      own_names[product.body_name].push_back(i);
    }
  }
  for (auto& [part, occurrences] : wholes) {
    std::sort(occurrences.begin(), occurrences.end());
    parts_.try_emplace(part, NamedPart{Meant::part, std::move(occurrences)});
  }
  for (const auto& [name, products] : own_names) {
    if (!name.empty() && products.size() == 1) {
      parts_.try_emplace(name, NamedPart{Meant::product, of_product[products.front()]});
    }
  }
}

Error Names::error(const Entry& entry, const std::string& rule, std::string cure) const {
  std::string place = entry.line ? fmt::format("line {}, ", entry.line->number) : std::string();
  place += fmt::format("{}, {}", entry.list, entry.key);
  const bool included = entry.line && !entry.line->file.empty();
  return {ErrorCode::bad_input,
          {included ? entry.line->file : job_->file, std::move(place)},
          rule,
          std::move(cure)};
}

const NamedPart* Names::find_part(const std::string& name) const {
  const auto found = parts_.find(name);
  return found == parts_.end() ? nullptr : &found->second;
}

bool Names::is_part(const std::string& name) const { return find_part(name) != nullptr; }

bool Names::is_placed(const std::string& name) const {
  const NamedPart* part = find_part(name);
  return part != nullptr && !part->occurrences.empty();
}

std::set<ProductId> Names::products_of(const NamedPart& part) const {
  std::set<ProductId> products;
  for (const OccurrenceId occurrence : part.occurrences) {
    products.insert(model_->occurrences[occurrence].product);
  }
  return products;
}

bool Names::is_feature(const std::string& name) const {
  const NamedPart* part = find_part(part_of_feature(name));
  return part != nullptr && std::ranges::any_of(products_of(*part), [&](ProductId product) {
           return !matches(model_->products[product], name).empty();
         });
}

const std::string& Names::flaw_of(const std::string& part) const {
  static const std::string kNone;
  if (const NamedPart* named = find_part(part); named != nullptr) {
    for (const OccurrenceId occurrence : named->occurrences) {
      if (const std::string& flaw = flaw_of(occurrence); !flaw.empty()) {
        return flaw;
      }
    }
  }
  return kNone;
}

const std::string& Names::flaw_of(OccurrenceId occurrence) const {
  return flaws_.at(model_->occurrences.at(occurrence).product);
}

NamedPart Names::part(const std::string& name, const Entry& entry) const {
  if (const NamedPart* found = find_part(name)) {
    return *found;
  }
  std::vector<std::string> known;
  for (const auto& [id, part] : parts_) {
    known.push_back(id);
  }
  throw error(entry, fmt::format("the model has no part \"{}\"", name),
              fmt::format("did you mean \"{}\"?", nearest_word(name, known)));
}

std::pair<NamedPart, NamedPart> Names::two_parts(const std::string& a, const std::string& b,
                                                 const Entry& entry) const {
  std::pair<NamedPart, NamedPart> both{part(a, entry), part(b, entry)};
  if (both.first.occurrences.size() == 1 && both.first.occurrences == both.second.occurrences) {
    throw error(entry, fmt::format("\"{}\" and \"{}\" are one part, which stands once", a, b),
                "name two parts");
  }
  return both;
}

std::vector<ProductFeature> Names::matches(const Product& product, const std::string& name) const {
  const std::vector<ProductFeature> all = features_of(product);
  const std::vector<ProductFeatureRef> called =
      features_called(product, name.substr(part_of_feature(name).size() + 2));
  // A size without a unit is the job's, or mm as look writes it.
  const auto in_mm = parse_feature_name(name, LengthUnit::mm);
  const auto in_unit = parse_feature_name(name, job_->unit);
  const auto is_meant = [&](const ProductFeature& feature) {
    const auto known = parse_feature_name("x: " + *feature.sized_name, LengthUnit::mm);
    return known && ((in_mm && means(*in_mm, *known)) || (in_unit && means(*in_unit, *known)));
  };
  const auto is_called = [&](const ProductFeature& feature) {
    return std::ranges::find(called, ProductFeatureRef{feature.kind, feature.index}) !=
           called.end();
  };
  // A name that is given is not asked for its size.
  std::vector<ProductFeature> found;
  std::ranges::copy_if(all, std::back_inserter(found), is_called);
  const bool whole = std::ranges::any_of(found, [&](const ProductFeature& feature) {
    return name.ends_with(": " + *feature.sized_name) || name.ends_with(": " + *feature.name);
  });
  if (!whole) {
    std::ranges::copy_if(all, std::back_inserter(found), [&](const ProductFeature& feature) {
      return !is_called(feature) && is_meant(feature);
    });
  }
  return found;
}

// By what it is called, or where that is what was written, by its size and place.
std::string Names::told(const ProductFeature& feature, std::string_view written) {
  return *feature.name == written ? *feature.sized_name : *feature.name;
}

Error Names::unknown_feature(const std::string& name, const Entry& entry) const {
  const std::string part = part_of_feature(name);
  std::vector<std::string> known;
  const NamedPart* named = find_part(part);
  if (named != nullptr && named->occurrences.empty()) {
    return error(entry, fmt::format("\"{}\" stands nowhere in the model", part),
                 "place it in the assembly, or drop the entry");
  }
  if (named != nullptr) {
    for (const OccurrenceId one : named->occurrences) {
      const Product& product = model_->products[model_->occurrences[one].product];
      for (const ProductFeature& feature : features_of(product)) {
        known.push_back((named->meant == Meant::part ? product.id : part) + ": " + *feature.name);
      }
    }
  }
  if (known.empty()) {
    for (const Product& product : model_->products) {
      for (const ProductFeature& feature : features_of(product)) {
        known.push_back(product.id + ": " + *feature.name);
      }
    }
  }
  const std::string nearest = nearest_word(name, known);
  return error(entry, fmt::format("the model has no feature \"{}\"", name),
               nearest.empty() ? "the model has no features to name"
                               : fmt::format("did you mean \"{}\"?", nearest));
}

NamedFeature Names::feature(const std::string& name, const Entry& entry) const {
  const NamedPart* part = find_part(part_of_feature(name));
  if (part == nullptr || part->occurrences.empty()) {
    throw unknown_feature(name, entry);
  }
  // One product, or the bodies of one part.
  std::map<ProductId, std::vector<ProductFeature>> found;
  std::vector<std::string> candidates;
  for (const OccurrenceId occurrence : part->occurrences) {
    const ProductId index = model_->occurrences[occurrence].product;
    if (const auto [place, fresh] = found.try_emplace(index); fresh) {
      const Product& product = model_->products[index];
      place->second = matches(product, name);
      for (const ProductFeature& feature : place->second) {
        candidates.push_back((part->meant == Meant::part ? product.id : part_of_feature(name)) +
                             ": " + told(feature, name.substr(part_of_feature(name).size() + 2)));
      }
    }
  }
  if (candidates.empty()) {
    throw unknown_feature(name, entry);
  }
  if (candidates.size() > 1) {
    throw error(entry, fmt::format("\"{}\" could be any of {} features", name, candidates.size()),
                fmt::format("write one of \"{}\"", fmt::join(candidates, "\", \"")));
  }
  NamedFeature named;
  named.meant = part->meant;
  for (const OccurrenceId occurrence : part->occurrences) {
    for (const ProductFeature& feature : found[model_->occurrences[occurrence].product]) {
      named.refs.push_back({occurrence, feature.kind, feature.index});
    }
  }
  return named;
}

const std::string& Names::id_of(OccurrenceId occurrence) const {
  const Occurrence& placed = model_->occurrences.at(occurrence);
  const std::string& product = model_->products.at(placed.product).id;
  const NamedPart* part = find_part(product);
  const bool alone = part != nullptr && part->occurrences.size() == 1;
  return alone ? product : placed.id;
}

std::string Names::id_of(const FeatureRef& feature) const {
  return id_of(feature.occurrence) + ": " + feature_name(*model_, feature);
}

}  // namespace spotblue
