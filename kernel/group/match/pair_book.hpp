#pragma once
// Entries of a job that speak of two things, found again by the two things.

#include <compare>
#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <vector>

#include "group/match/names.hpp"

namespace spotblue {

/// A feature of an occurrence, or the occurrence as a whole.
struct Subject {
  OccurrenceId occurrence{};
  std::optional<FeatureKind> kind{};  ///< none for the whole part
  std::size_t index = 0;
  auto operator<=>(const Subject&) const = default;
};
[[nodiscard]] Subject subject_of(const FeatureRef& feature);
[[nodiscard]] Subject subject_of(OccurrenceId occurrence);

/// All that one name of an entry means, and how narrow it is: a feature before a part, one
/// occurrence before a product.
struct Subjects {
  std::vector<Subject> all;
  int narrowness = 0;
};
[[nodiscard]] Subjects subjects_of(const NamedFeature& named);
[[nodiscard]] Subjects subjects_of(const NamedPart& named);

/// Whether "A with B" also means "B with A".
enum class Order { matters, either };

class PairBook {
 public:
  explicit PairBook(Order order) : order_(order) {}

  /// The n-th entry added is number n.
  void add(const Subjects& first, const Subjects& second);

  /// Numbers of the narrowest entries that speak of the two; more than one is a contradiction.
  [[nodiscard]] std::vector<std::size_t> find(const FeatureRef& first,
                                              const FeatureRef& second) const;
  [[nodiscard]] std::vector<std::size_t> find(OccurrenceId first, OccurrenceId second) const;

 private:
  struct Pair {
    std::set<Subject> second;
    int narrowness = 0;
  };
  [[nodiscard]] std::vector<std::size_t> search(const std::vector<Subject>& first,
                                                const std::vector<Subject>& second) const;
  [[nodiscard]] std::vector<std::size_t> narrowest(const std::vector<Subject>& first,
                                                   const std::vector<Subject>& second) const;

  Order order_;
  std::vector<Pair> pairs_;
  std::map<Subject, std::vector<std::size_t>> by_first_;
};

}  // namespace spotblue
