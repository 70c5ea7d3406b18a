#include "geometry/model/feature_names.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <map>
#include <set>
#include <tuple>
#include <vector>

#include "geometry/model/plane_map.hpp"
#include "geometry/model/round_end.hpp"
#include "geometry/model/sized_names.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue {
namespace {

struct Feature {
  std::string* name = nullptr;
  const std::string* sized_name = nullptr;
  const std::vector<std::string>* given = nullptr;
  const char* word = "";
  Direction along;
  Point middle;
  double size = 0.0;
  const Width* width = nullptr;
  bool flat = false;
};

// Whether the slot lies in a shaft or a bore, along it and half way round at most.
bool lies_in_round(const Product& product, const Width& slot) {
  const Plane& one = product.planes[slot.first];
  const Plane& two = product.planes[slot.second];
  const Point middle = 0.5 * (one.at + two.at);
  return std::ranges::any_of(product.cylinders, [&](const Cylinder& c) {
    return slot.width <= 0.5 * c.diameter && std::abs(dot(c.axis.along, one.normal)) < kSameShare &&
           std::abs(dot(c.axis.at - middle, one.normal)) < kOnePlace &&
           !rounds_end(product, slot, c);
  });
}

bool has_round_end(const Product& product, const Width& width) {
  return std::ranges::any_of(product.cylinders,
                             [&](const Cylinder& c) { return rounds_end(product, width, c); });
}

const char* word_of_width(const Product& product, const Width& width) {
  if (width.side == Side::internal) {
    return lies_in_round(product, width) ? "keyseat" : "slot";
  }
  return has_round_end(product, width) ? "key" : "width";
}

const char* word_of_cylinder(const Product& product, const Cylinder& c) {
  for (const Width& width : product.widths) {
    if (rounds_end(product, width, c)) {
      return width.side == Side::external    ? "key end"
             : lies_in_round(product, width) ? "keyseat end"
                                             : "slot end";
    }
  }
  return c.side == Side::internal ? "bore" : "outside";
}

std::vector<Feature> features_of_product(Product& product) {
  std::vector<Feature> all;
  for (Cylinder& c : product.cylinders) {
    all.push_back({&c.name, &c.sized_name, &c.given, word_of_cylinder(product, c),
                   forward(c.axis.along), c.axis.at, c.diameter});
  }
  for (Cone& c : product.cones) {
    const double middle = 0.5 * (c.intervals.front().low + c.intervals.back().high);
    all.push_back({&c.name, &c.sized_name, &c.given,
                   c.side == Side::internal ? "taper bore" : "taper", forward(c.axis.along),
                   at_station(c.axis, middle), c.radius});
  }
  for (Plane& p : product.planes) {
    all.push_back({&p.name, &p.sized_name, &p.given, "face", forward(p.normal), face_centre(p),
                   area(p.outline), nullptr, true});
  }
  for (Width& w : product.widths) {
    const Plane& a = product.planes[w.first];
    const Point far = face_centre(product.planes[w.second]);
    const Point near = face_centre(a);
    all.push_back({&w.name, &w.sized_name, &w.given, word_of_width(product, w), forward(a.normal),
                   near + 0.5 * (far - near), w.width, &w});
  }
  return all;
}

using FeaturesByName = std::map<std::string, std::vector<Feature*>>;

// Rounded, so that the last digits of a file change no order. Where a feature lies comes before
// what it measures, so that no cut changes its place: across first for round ones and widths, of
// which one's length says nothing of another's; faces go by how far along they stand.
auto order_of(const Feature& feature) {
  const auto to = [](double value, double digits) { return std::round(value * digits) + 0.0; };
  constexpr double kOfDirection = 1e6;
  constexpr double kOfPlace = 1e4;
  const Direction d = feature.along;
  const double along = dot(feature.middle, d);
  const Point across = feature.middle - along * Point(d);
  const auto place = [&](const Point& p, bool counts) {
    return counts ? std::tuple(to(p.x, kOfPlace), to(p.y, kOfPlace), to(p.z, kOfPlace))
                  : std::tuple(0.0, 0.0, 0.0);
  };
  return std::tuple(-to(d.z(), kOfDirection), -to(d.y(), kOfDirection), -to(d.x(), kOfDirection),
                    place(across, !feature.flat), to(along, kOfPlace), place(across, feature.flat),
                    to(feature.size, kOfPlace));
}

// Numbers those that would have one name, in their order, past numbers that another has by name.
// Where a feature was long called "bore 20" by its size, the twentieth is "bore no 20".
void give(const FeaturesByName& by_name, const std::set<std::string>& sized,
          std::set<std::string>& taken) {
  for (const auto& [name, alike] : by_name) {
    if (alike.size() == 1 && taken.insert(name).second) {
      *alike.front()->name = name;
      continue;
    }
    int number = 0;
    for (const Feature* feature : alike) {
      do {
        *feature->name = fmt::format("{} {}", name, ++number);
        if (sized.contains(*feature->name)) {
          *feature->name = fmt::format("{} no {}", name, number);
        }
      } while (!taken.insert(*feature->name).second);
    }
  }
}

// A name that both faces of a width have is the width's.
void leave_to_widths(std::vector<Feature*>& alike) {
  if (alike.size() == 3 &&
      std::ranges::count_if(alike, [](const Feature* f) { return f->width != nullptr; }) == 1) {
    std::erase_if(alike, [](const Feature* f) { return f->width == nullptr; });
  }
}

// By what the file calls them, where it calls nothing else so.
FeaturesByName by_maker(std::vector<Feature>& all) {
  FeaturesByName named;
  for (Feature& feature : all) {
    for (const std::string& given : *feature.given) {
      named[given].push_back(&feature);
    }
  }
  for (auto& [name, alike] : named) {
    leave_to_widths(alike);
  }
  std::set<const Feature*> done;
  std::erase_if(named, [&](const auto& entry) {
    // One name is enough for a feature of several faces: the first.
    return entry.second.size() > 1 || !done.insert(entry.second.front()).second;
  });
  return named;
}

}  // namespace

void name_features(Product& product) {
  name_by_size(product);
  std::vector<Feature> all = features_of_product(product);
  std::ranges::stable_sort(
      all, [](const Feature& a, const Feature& b) { return order_of(a) < order_of(b); });
  const auto named = by_maker(all);
  std::set<const Feature*> done;
  for (const auto& [name, features] : named) {
    done.insert(features.front());
  }
  FeaturesByName by_kind;
  for (Feature& feature : all) {
    if (!done.contains(&feature)) {
      by_kind[feature.word].push_back(&feature);
    }
  }
  std::set<std::string> sized;
  for (const Feature& feature : all) {
    sized.insert(*feature.sized_name);
    const double inches = Length::mm(feature.size).in_inch();
    if (std::abs(inches - std::round(inches)) < kOnePlace) {
      sized.insert(fmt::format("{} {:.0f}", feature.word, inches));
    }
  }
  std::set<std::string> taken;
  give(named, sized, taken);
  give(by_kind, sized, taken);
}

std::vector<ProductFeatureRef> features_called(const Product& product, std::string_view text) {
  std::vector<ProductFeatureRef> by_name;
  std::vector<ProductFeatureRef> by_face;
  std::vector<ProductFeatureRef> by_size;
  const auto look_in = [&](const auto& features, FeatureKind kind) {
    for (std::size_t i = 0; i < features.size(); ++i) {
      if (features[i].name == text) {
        by_name.push_back({kind, i});
      } else if (std::ranges::find(features[i].given, text) != features[i].given.end()) {
        by_face.push_back({kind, i});
      } else if (features[i].sized_name == text) {
        by_size.push_back({kind, i});
      }
    }
  };
  look_in(product.cylinders, FeatureKind::cylinder);
  look_in(product.cones, FeatureKind::cone);
  look_in(product.planes, FeatureKind::plane);
  look_in(product.widths, FeatureKind::width);
  if (!by_name.empty()) {
    return by_name;
  }
  std::vector<ProductFeatureRef> called = by_face;
  called.insert(called.end(), by_size.begin(), by_size.end());
  return called;
}

std::string name_by_a_maker(std::string_view raw) {
  // A program counts to more, and nobody says so long a name. Choices of this program, no source.
  constexpr std::ptrdiff_t kMostDigits = 3;
  constexpr std::size_t kLongest = 80;
  std::string name(raw);
  std::ranges::transform(name, name.begin(), [](char c) {
    return static_cast<unsigned char>(c) < ' ' || c == '\x7F' ? ' ' : c;
  });
  const std::string_view own = trimmed(name);
  const bool has_letter = std::ranges::any_of(
      own, [](char c) { return is_ascii_letter(c) || static_cast<unsigned char>(c) >= 0x80; });
  if (!has_letter || own.size() > kLongest ||
      std::ranges::count_if(own, is_ascii_digit) > kMostDigits ||
      own.find(": ") != std::string_view::npos || same_ascii_word(own, "none") ||
      same_ascii_word(own, "unnamed") || same_ascii_word(own, "unknown")) {
    return {};
  }
  return std::string(own);
}

}  // namespace spotblue
