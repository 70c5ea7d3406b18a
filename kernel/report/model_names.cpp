#include "report/model_names.hpp"

namespace spotblue {
namespace {

template <typename Feature>
std::vector<std::string> ids(const Product& product, const std::vector<Feature>& features,
                             const Spelling& spelling) {
  std::vector<std::string> spelt;
  spelt.reserve(features.size());
  for (const Feature& feature : features) {
    spelt.push_back(spelling(product.id + ": " + feature.name));
  }
  return spelt;
}

}  // namespace

ModelNames::ModelNames(const Model& model, const Spelling& spelling) {
  for (const Product& product : model.products) {
    products_.push_back(spelling(product.id));
    auto& kinds = features_.emplace_back();
    kinds[static_cast<std::size_t>(FeatureKind::cylinder)] =
        ids(product, product.cylinders, spelling);
    kinds[static_cast<std::size_t>(FeatureKind::cone)] = ids(product, product.cones, spelling);
    kinds[static_cast<std::size_t>(FeatureKind::plane)] = ids(product, product.planes, spelling);
    kinds[static_cast<std::size_t>(FeatureKind::width)] = ids(product, product.widths, spelling);
  }
  occurrences_.reserve(model.occurrences.size());
  product_index_.reserve(model.occurrences.size());
  count_.resize(products_.size());
  for (const Occurrence& occurrence : model.occurrences) {
    occurrences_.push_back(spelling(occurrence.id));
    product_index_.push_back(occurrence.product);
    ++count_[occurrence.product];
  }
}

}  // namespace spotblue
