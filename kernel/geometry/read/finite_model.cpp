#include "geometry/read/finite_model.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <type_traits>
#include <utility>
#include <vector>

#include "geometry/model/far_places.hpp"
#include "geometry/read/completeness.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/members.hpp"

namespace spotblue {
namespace {

// Looks at every number of a value.
class Numbers {
 public:
  template <typename Field>
  void take(const Field& field) {
    if constexpr (std::is_floating_point_v<Field>) {
      all_finite_ = all_finite_ && std::isfinite(field);
    } else if constexpr (std::is_same_v<Field, Box>) {
      if (!is_unset(field)) {
        each_member(field, [this](const auto& one) { this->take(one); });
      }
    } else if constexpr (std::is_arithmetic_v<Field> || std::is_enum_v<Field> ||
                         std::is_same_v<Field, std::string>) {
      // Always finite.
    } else if constexpr (requires { field.begin(); }) {
      for (const auto& one : field) {
        take(one);
      }
    } else if constexpr (requires { field.has_value(); }) {
      if (field) {
        take(*field);
      }
    } else if constexpr (requires { typename Field::second_type; }) {
      take(field.first);
      take(field.second);
    } else {
      each_member(field, [this](const auto& one) { this->take(one); });
    }
  }
  void take(const Direction& direction) { take(Point(direction)); }
  template <typename Of>
  void take(const Id<Of>& /*always finite*/) {}
  [[nodiscard]] bool all_finite() const { return all_finite_; }

 private:
  // A part whose solids have no faces has no box.
  static bool is_unset(const Box& box) {
    const Box unset;
    return box.low == unset.low && box.high == unset.high;
  }

  bool all_finite_ = true;
};

template <typename Field>
bool is_finite(const Field& field) {
  Numbers numbers;
  numbers.take(field);
  return numbers.all_finite();
}

template <typename Features>
std::string first_spoilt(const Features& features) {
  const auto spoilt = std::find_if(features.begin(), features.end(),
                                   [](const auto& one) { return !is_finite(one); });
  return spoilt == features.end() ? std::string() : fmt::format("its {}", spoilt->name);
}

// Of a product that has a number that is none: where it is.
std::string spoilt_in(const Product& product) {
  for (const std::string& name : {first_spoilt(product.cylinders), first_spoilt(product.cones),
                                  first_spoilt(product.widths), first_spoilt(product.planes)}) {
    if (!name.empty()) {
      return name;
    }
  }
  return is_finite(product.others) ? "its volume" : "the bounds of a face";
}

class Sieve {
 public:
  explicit Sieve(Model& model) : model_(model) {}

  // What there is to say of each thing that is left out.
  std::vector<Note> run() {
    for (ProductId i; i < model_.products.size(); ++i) {
      if (const Product& product = model_.products[i]; !is_finite(product)) {
        found_.push_back(
            {fmt::format("part '{}'", product.id),
             fmt::format("{} has a number that is infinite or none", spoilt_in(product))});
        leave_out(i);
      }
    }
    erase_if(model_.occurrences, [&](const Occurrence& one) {
      const bool spoilt = !is_finite(one);
      if (spoilt) {
        found_.push_back({fmt::format("'{}'", one.path),
                          "where it is placed has a number that is infinite or none"});
      }
      return spoilt;
    });
    std::erase_if(model_.semantic_sizes, [&](const SemanticSize& one) {
      const bool spoilt = !is_finite(one);
      if (spoilt) {
        found_.push_back(
            {one.entity ? fmt::format("size #{}", *one.entity) : fmt::format("size '{}'", one.name),
             "it states a number that is infinite or none"});
      }
      return spoilt;
    });
    return std::move(found_);
  }

 private:
  void leave_out(ProductId index) {
    Product& product = model_.products[index];
    Product bare;
    bare.id = product.id;
    bare.name = product.name;
    bare.solids = product.solids;
    bare.faces = product.faces;
    bare.closed = false;
    product = std::move(bare);
    erase_if(model_.occurrences, [&](const Occurrence& one) { return one.product == index; });
    for (SemanticSize& size : model_.semantic_sizes) {
      if (size.product == index) {
        size.product.reset();
        size.features.clear();
        size.doubt = "its part has numbers that are infinite or none";
      }
    }
  }

  Model& model_;
  std::vector<Note> found_;
};

}  // namespace

void require_finite(Model& model, const std::string& file, Completeness completeness) {
  std::vector<Note> found = Sieve(model).run();
  std::ranges::move(without_far_places(model), std::back_inserter(found));
  if (found.empty()) {
    return;
  }
  const bool nothing = model.occurrences.empty();
  if (nothing || completeness == Completeness::all_or_error) {
    const Note& first = found.front();
    throw Error(ErrorCode::unreadable, {file, first.about},
                found.size() == 1
                    ? first.text
                    : fmt::format("{}, and {} more of the kind", first.text, found.size() - 1),
                file.empty() ? "make it anew, or leave it out"
                : nothing    ? "it is damaged there: make or export it again"
                             : "it is damaged there: export it again, or accept a partial model");
  }
  for (const Note& one : found) {
    leave_out({one.about, one.text + ": it is left out, and nothing is said of it"}, model);
  }
}

}  // namespace spotblue
