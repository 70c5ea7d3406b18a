#include "geometry/sizes/semantic_settle.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "geometry/model/tolerances.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

constexpr double kSameLimit_mm = 1e-6;
const std::vector<ProductFeatureRef> kNoFeatures;

void doubt(SemanticSize& size, const std::string& why) {
  if (size.doubt.empty()) {
    size.doubt = why;
  }
}

// Features of one kind, ascending.
std::vector<std::size_t> of_kind(const std::vector<ProductFeatureRef>& all, FeatureKind kind) {
  std::set<std::size_t> found;
  for (const ProductFeatureRef& one : all) {
    if (one.kind == kind) {
      found.insert(one.index);
    }
  }
  return {found.begin(), found.end()};
}

// Widths with a face among the one and a face among the other.
std::vector<ProductFeatureRef> widths_between(const Product& product,
                                              const std::vector<std::size_t>& ones,
                                              const std::vector<std::size_t>& others) {
  std::vector<ProductFeatureRef> widths;
  const auto has = [](const std::vector<std::size_t>& planes, std::size_t plane) {
    return std::binary_search(planes.begin(), planes.end(), plane);
  };
  for (std::size_t i = 0; i < product.widths.size(); ++i) {
    const Width& width = product.widths[i];
    if ((has(ones, width.first) && has(others, width.second)) ||
        (has(ones, width.second) && has(others, width.first))) {
      widths.push_back({FeatureKind::width, i});
    }
  }
  return widths;
}

// The parts that have all of the faces (copies of one solid have the same), and those that have
// any.
struct Owners {
  std::set<ProductId> of_all, of_any;
};

Owners owners_of(const StatedSize& stated, const FaceBook& book) {
  Owners owners;
  bool first = true;
  for (const std::vector<TopoDS_Shape>* faces : {&stated.faces, &stated.far_faces}) {
    for (const TopoDS_Shape& face : *faces) {
      std::set<ProductId> parts;
      for (const FaceBook::Place& place : book.places(face)) {
        parts.insert(place.part);
      }
      if (parts.empty()) {
        continue;
      }
      owners.of_any.insert(parts.begin(), parts.end());
      std::erase_if(owners.of_all, [&](ProductId part) { return !parts.contains(part); });
      owners.of_all = first ? parts : owners.of_all;
      first = false;
    }
  }
  return owners;
}

// The part's features that the faces belong to.
std::vector<ProductFeatureRef> touched_by(const std::vector<TopoDS_Shape>& faces, FaceBook& book,
                                          ProductId part) {
  std::vector<ProductFeatureRef> touched;
  for (const TopoDS_Shape& face : faces) {
    for (const FaceBook::Place& place : book.places(face)) {
      if (const ProductFeatureRef* feature = place.part == part ? book.feature(place) : nullptr) {
        touched.push_back(*feature);
      }
    }
  }
  return touched;
}

std::string why_not_of_one(const StatedSize& stated, const Owners& owners, const Model& model) {
  if (owners.of_any.empty()) {
    return stated.faces.empty() && stated.other_items > 0
               ? "it is stated for edges or points, not for faces"
               : "it is stated for no face of a part";
  }
  const std::string& part = model.products[*owners.of_any.begin()].part;
  const bool one_part = std::ranges::all_of(owners.of_any, [&](ProductId one) {
    return !part.empty() && model.products[one].part == part;
  });
  return one_part ? "its faces belong to two solids of the part" : "its faces belong to two parts";
}

void tie(const StatedSize& stated, FaceBook& book, const Model& model, SemanticSize& size) {
  const std::vector<ProductFeatureRef> touched = touched_by(stated.faces, book, *size.product);
  const std::vector<ProductFeatureRef> far = touched_by(stated.far_faces, book, *size.product);
  if (size.characteristic == SizeCharacteristic::width) {
    const std::vector<std::size_t> planes = of_kind(touched, FeatureKind::plane);
    size.features = widths_between(model.products[*size.product], planes,
                                   stated.is_distance ? of_kind(far, FeatureKind::plane) : planes);
    if (size.features.empty()) {
      doubt(size, "its faces are no two planes that face each other next to each other");
    }
  } else if (size.characteristic == SizeCharacteristic::other) {
    doubt(size, fmt::format("a '{}' is not a size that is judged", size.name));
  } else {
    for (const std::size_t index : of_kind(touched, FeatureKind::cylinder)) {
      size.features.push_back({FeatureKind::cylinder, index});
    }
    if (size.features.empty()) {
      doubt(size, "none of its faces is a cylinder");
    }
  }
}

void add_class_limits(SemanticSize& size) {
  if (size.tolerance_class.empty()) {
    return;
  }
  if (!size.nominal_mm || size.characteristic == SizeCharacteristic::radius) {
    doubt(size, size.nominal_mm ? "it gives a class to a radius" : "it has a class and no size");
    return;
  }
  try {
    const Limits by_class = limits(Length::mm(*size.nominal_mm), size.tolerance_class);
    const SizeLimits made{by_class.lower.in_mm(), by_class.upper.in_mm()};
    constexpr double kRounded_mm = 0.0006;  // limits stated beside a class are rounded to a micron
    if (size.limits && (std::abs(size.limits->lower_mm - made.lower_mm) > kRounded_mm ||
                        std::abs(size.limits->upper_mm - made.upper_mm) > kRounded_mm)) {
      doubt(size, fmt::format("its limits {:.6g} to {:.6g} mm are not those of {}",
                              size.limits->lower_mm, size.limits->upper_mm, size.tolerance_class));
      return;
    }
    size.limits = made;
  } catch (const Error& problem) {
    doubt(size, problem.rule());
  }
}

void add_limits(SemanticSize& size, std::string& remark) {
  if (size.deviations) {
    const double lower = size.deviations->lower_mm;
    if (lower > 0.0 && std::abs(lower + size.deviations->upper_mm) < kNoLength) {
      size.deviations = {-lower, lower};
      remark = fmt::format(
          "its deviations are written the wrong way round, {:+.6g} as the lower "
          "and {:+.6g} as the upper; they can only mean +-{:.6g}",
          lower, -lower, lower);
    }
    if (size.deviations->lower_mm > size.deviations->upper_mm + kSameLimit_mm) {
      doubt(size, fmt::format("its lower deviation {:+.6g} mm is above its upper {:+.6g} mm",
                              size.deviations->lower_mm, size.deviations->upper_mm));
    } else if (size.nominal_mm) {
      size.limits = {*size.nominal_mm + size.deviations->lower_mm,
                     *size.nominal_mm + size.deviations->upper_mm};
    } else {
      doubt(size, "it has deviations and no size");
    }
  }
  add_class_limits(size);
  if (size.limits && size.limits->lower_mm > size.limits->upper_mm + kSameLimit_mm) {
    doubt(size, fmt::format("its lower limit {:.6g} mm is above its upper {:.6g} mm",
                            size.limits->lower_mm, size.limits->upper_mm));
  }
  const bool positive =
      (!size.nominal_mm || *size.nominal_mm > 0.0) && (!size.limits || size.limits->upper_mm > 0.0);
  if (!positive) {
    doubt(size, "its size is not above zero");
  }
}

double modelled_size(const Product& product, const SemanticSize& size,
                     const ProductFeatureRef& feature) {
  if (feature.kind == FeatureKind::width) {
    return product.widths[feature.index].width;
  }
  const double diameter = product.cylinders[feature.index].diameter;
  return size.characteristic == SizeCharacteristic::radius ? 0.5 * diameter : diameter;
}

Side side_of(const Product& product, const ProductFeatureRef& feature) {
  return feature.kind == FeatureKind::width ? product.widths[feature.index].side
                                            : product.cylinders[feature.index].side;
}

// A size that the model plainly does not have belongs to something else.
void compare_with_model(const Model& model, SemanticSize& size) {
  if (!size.product || size.features.empty() || (!size.nominal_mm && !size.limits)) {
    return;
  }
  const Product& product = model.products[*size.product];
  const double stated =
      size.nominal_mm ? *size.nominal_mm : 0.5 * (size.limits->lower_mm + size.limits->upper_mm);
  const double width = size.limits ? size.limits->upper_mm - size.limits->lower_mm : 0.0;
  const double allowed = std::max({0.1, 0.02 * stated, 2.0 * width});
  for (const ProductFeatureRef& feature : size.features) {
    const double modelled = modelled_size(product, size, feature);
    if (std::abs(modelled - stated) > allowed) {
      doubt(size,
            fmt::format("it states {:.6g} mm where the model has {:.6g} mm", stated, modelled));
      return;
    }
    if (!size.tolerance_class.empty() && size.doubt.empty()) {
      const bool hole_class = size_kind(size.tolerance_class) == SizeKind::hole;
      const bool hole = side_of(product, feature) == Side::internal;
      if (hole_class != hole) {
        doubt(size,
              fmt::format("{} is a class of {} and its face is that of a {}", size.tolerance_class,
                          hole_class ? "holes" : "shafts", hole ? "hole" : "shaft"));
        return;
      }
    }
  }
}

bool same_limits(const SizeLimits& a, const SizeLimits& b) {
  return std::abs(a.lower_mm - b.lower_mm) <= kSameLimit_mm &&
         std::abs(a.upper_mm - b.upper_mm) <= kSameLimit_mm;
}

// The limits of the size as a diameter or a width.
SizeLimits across(const SemanticSize& size) {
  const double k = size.characteristic == SizeCharacteristic::radius ? 2.0 : 1.0;
  return {k * size.limits->lower_mm, k * size.limits->upper_mm};
}

std::string by_name(const SemanticSize& size) {
  return size.entity ? fmt::format("#{}", *size.entity) : "another size";
}

// Two different sizes for one feature leave it open which is meant.
void compare_with_each_other(std::vector<SemanticSize>& sizes) {
  // By feature, one size for each different pair of limits.
  std::map<std::tuple<ProductId, FeatureKind, std::size_t>, std::vector<std::size_t>> stated;
  const auto entry_of = [&](const SemanticSize& size, const ProductFeatureRef& one) -> auto& {
    return stated[{*size.product, one.kind, one.index}];
  };
  const auto unlike = [&](const std::vector<std::size_t>& known, const SemanticSize& size) {
    return std::find_if(known.begin(), known.end(), [&](std::size_t other) {
      return !same_limits(across(sizes[other]), across(size));
    });
  };
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    for (const ProductFeatureRef& one : is_usable(sizes[i]) ? sizes[i].features : kNoFeatures) {
      std::vector<std::size_t>& known = entry_of(sizes[i], one);
      if (known.empty() || (known.size() == 1 && unlike(known, sizes[i]) != known.end())) {
        known.push_back(i);
      }
    }
  }
  std::vector<std::pair<std::size_t, std::string>> found;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    for (const ProductFeatureRef& one : is_usable(sizes[i]) ? sizes[i].features : kNoFeatures) {
      const std::vector<std::size_t>& known = entry_of(sizes[i], one);
      const auto other = unlike(known, sizes[i]);
      if (other != known.end()) {
        found.emplace_back(i, fmt::format("{} states {} for the same face", by_name(sizes[*other]),
                                          semantic_size_text(sizes[*other])));
        break;
      }
    }
  }
  for (const auto& [i, why] : found) {
    doubt(sizes[i], why);
  }
}

std::string about(const Model& model, const SemanticSize& size) {
  const std::string text = "stated size " + semantic_size_text(size) + entity_text(size);
  return size.product ? model.products[*size.product].id + ", " + text : text;
}

void note_unread(int count, const char* what, std::vector<Note>& notes) {
  if (count > 0) {
    notes.push_back(
        {"stated sizes",
         fmt::format("{} of {} are not read: only sizes of features are", count, what)});
  }
}

// The size for each part that has its faces; for none, with a doubt, where no one part has them.
std::vector<SemanticSize> tied(const StatedSize& stated, FaceBook& book, const Model& model) {
  const Owners owners = owners_of(stated, book);
  if (owners.of_all.empty()) {
    SemanticSize size = stated.size;
    if (!owners.of_any.empty()) {
      size.product = *owners.of_any.begin();
    }
    doubt(size, why_not_of_one(stated, owners, model));
    return {size};
  }
  std::vector<SemanticSize> sizes;
  for (const ProductId part : owners.of_all) {
    sizes.push_back(stated.size);
    sizes.back().product = part;
    tie(stated, book, model, sizes.back());
  }
  return sizes;
}

}  // namespace

std::string doubt_about(const Model& model, SemanticSize size) {
  std::string remark;
  add_limits(size, remark);
  compare_with_model(model, size);
  return size.doubt;
}

SettledSizes settled_sizes(StatedSizes stated, FaceBook& book, const Model& model) {
  SettledSizes settled;
  int distances = stated.distances;
  for (std::size_t i = 0; i < stated.sizes.size(); ++i) {
    const StatedSize& one = stated.sizes[i];
    std::vector<SemanticSize> sizes = tied(one, book, model);
    if (one.is_distance && std::ranges::all_of(sizes, [](const SemanticSize& size) {
          return size.features.empty();
        })) {
      ++distances;  // between two features
      continue;
    }
    for (SemanticSize& size : sizes) {
      std::string remark = one.remark;
      add_limits(size, remark);
      compare_with_model(model, size);
      if (!remark.empty()) {
        settled.notes.push_back({about(model, size), remark});
      }
      settled.sizes.push_back(std::move(size));
      settled.from.push_back(i);
    }
  }
  compare_with_each_other(settled.sizes);
  for (const SemanticSize& size : settled.sizes) {
    if (!size.doubt.empty()) {
      settled.notes.push_back({about(model, size), "is not judged by: " + size.doubt});
    }
  }
  note_unread(distances, "the distances between features", settled.notes);
  note_unread(stated.angles, "the angles", settled.notes);
  return settled;
}

}  // namespace spotblue
