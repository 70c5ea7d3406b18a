#pragma once
/// @file
/// Which product, which occurrence, which centre line: numbers that can not be taken for each
/// other.

#include <compare>
#include <cstddef>
#include <type_traits>
#include <utility>
#include <vector>

namespace spotblue {

struct Product;
struct Occurrence;
struct CentreLine;

/// The number of one of a model's products, occurrences or centre lines, from 0.
///
/// Made of a bare number only where that is said. It is read as one, so that it indexes a plain
/// table, but is never made of, compared with or used in the list of another kind.
template <class Of>
class Id {
 public:
  constexpr Id() = default;
  constexpr explicit Id(std::size_t index) : index_(index) {}
  template <class Other>
  Id(Id<Other>) = delete;

  constexpr operator std::size_t() const { return index_; }  // NOLINT: see above
  constexpr Id& operator++() {
    ++index_;
    return *this;
  }
  friend constexpr bool operator==(const Id&, const Id&) = default;
  friend constexpr auto operator<=>(const Id&, const Id&) = default;
  template <class Other>
  friend bool operator==(Id, Id<Other>) = delete;
  template <class Other>
  friend auto operator<=>(Id, Id<Other>) = delete;

 private:
  std::size_t index_ = 0;
};

/// A body of a part with several solids is a product, and so has a ProductId.
using ProductId = Id<Product>;
using OccurrenceId = Id<Occurrence>;
using CentreLineId = Id<CentreLine>;

using OccurrencePair = std::pair<OccurrenceId, OccurrenceId>;

/// Whether a number opens a List: a plain one, or an id of its own kind.
template <class Of, class Index>
inline constexpr bool kOpens = std::is_integral_v<Index>;
template <class Of>
inline constexpr bool kOpens<Of, Id<Of>> = true;

/// What ids are the numbers of, in order; the id of another kind does not open it.
template <class Of>
class List : private std::vector<Of> {
  using Vector = std::vector<Of>;

 public:
  using typename Vector::const_iterator;
  using typename Vector::const_reference;
  using typename Vector::iterator;
  using typename Vector::reference;
  using typename Vector::size_type;
  using typename Vector::value_type;
  using Vector::back;
  using Vector::begin;
  using Vector::clear;
  using Vector::emplace_back;
  using Vector::empty;
  using Vector::end;
  using Vector::erase;
  using Vector::front;
  using Vector::pop_back;
  using Vector::push_back;
  using Vector::reserve;
  using Vector::resize;
  using Vector::size;
  using Vector::Vector;

  template <class Index>
  requires kOpens<Of, Index> Of& operator[](Index index) {
    return Vector::operator[](static_cast<std::size_t>(index));
  }
  template <class Index>
  requires kOpens<Of, Index>
  const Of& operator[](Index index) const {
    return Vector::operator[](static_cast<std::size_t>(index));
  }
  template <class Index>
  requires kOpens<Of, Index> Of& at(Index index) {
    return Vector::at(static_cast<std::size_t>(index));
  }
  template <class Index>
  requires kOpens<Of, Index>
  const Of& at(Index index) const { return Vector::at(static_cast<std::size_t>(index)); }

  friend std::size_t erase_if(List& list, auto which) {
    return std::erase_if(static_cast<Vector&>(list), which);
  }
};

}  // namespace spotblue
