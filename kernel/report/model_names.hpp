#pragma once
/// @file
/// Every feature id of a model, made once however often it is written.

#include <array>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/geometry/seats.hpp"

namespace spotblue {

/// How an id is written: quoted for JSON, in inches for a text.
using Spelling = std::function<std::string(std::string_view)>;

/// Ids as they are spelt, looked up by where they stand in the model.
class ModelNames {
 public:
  ModelNames(const Model& model, const Spelling& spelling);

  [[nodiscard]] const std::string& product(ProductId id) const { return products_[id]; }
  [[nodiscard]] const std::string& occurrence(OccurrenceId id) const { return occurrences_[id]; }
  /// The id of the product that occurs there.
  [[nodiscard]] const std::string& product_of(OccurrenceId occurrence) const {
    return products_[product_index_[occurrence]];
  }
  /// That product's id where it stands once, else the occurrence's.
  [[nodiscard]] const std::string& part(OccurrenceId occurrence) const {
    return count_[product_index_[occurrence]] == 1 ? product_of(occurrence)
                                                   : occurrences_[occurrence];
  }
  [[nodiscard]] const std::string& feature(ProductId product, FeatureKind kind,
                                           std::size_t index) const {
    return features_[product][static_cast<std::size_t>(kind)][index];
  }
  [[nodiscard]] const std::string& feature(const FeatureRef& ref) const {
    return feature(product_index_[ref.occurrence], ref.kind, ref.index);
  }

 private:
  std::vector<std::string> products_;
  std::vector<std::string> occurrences_;
  std::vector<ProductId> product_index_;
  std::vector<std::size_t> count_;  // of a product's occurrences
  std::vector<std::array<std::vector<std::string>, 4>> features_;
};

}  // namespace spotblue
