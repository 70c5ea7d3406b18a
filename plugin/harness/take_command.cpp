// Sizes of a STEP file into the document that was read from it: Open CASCADE's reader makes of them
// what it can, and that is not all.

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/document_sizes.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/geometry/sizes.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

const std::string& feature_name_of(const Product& product, const ProductFeatureRef& feature) {
  return feature.kind == FeatureKind::width ? product.widths[feature.index].name
                                            : product.cylinders[feature.index].name;
}

std::vector<std::string> ids_of(const Model& model, const SemanticSize& size) {
  std::vector<std::string> ids;
  for (const ProductFeatureRef& feature : size.features) {
    const Product& product = model.products[*size.product];
    ids.push_back(product.id + ": " + feature_name_of(product, feature));
  }
  return ids;
}

// Restated where the document has it already, so that what else hangs on it stays; else set.
void take(const Subject& subject, const std::vector<std::string>& ids, const SemanticSize& size,
          std::vector<SizeThere>& there) {
  const auto known = std::ranges::find_if(there, [&](const SizeThere& one) {
    return one.features == ids && one.size.characteristic == size.characteristic &&
           (one.size.tolerance_class.empty() || !size.tolerance_class.empty());
  });
  if (known == there.end()) {
    set_size(subject, ids, size);
    return;
  }
  SemanticSize same = size;
  same.name = ids.front();
  state_size(known->label, same);
  there.erase(known);
}

}  // namespace

Json take_command(Session& session, const Arguments& arguments) {
  arguments.expect(2, 2);
  const Subject& found = session.document_subject(arguments.words()[0]);
  const Model file =
      read_step(path_of_shown(arguments.words()[1]), {}, Completeness::accept_partial);
  std::vector<SizeThere> there = sizes_in(found);
  std::size_t taken = 0;
  Json left = Json::array();
  for (const SemanticSize& size : file.semantic_sizes) {
    const std::vector<std::string> ids = ids_of(file, size);
    const bool known = std::ranges::all_of(ids, [&](const std::string& id) {
      return find_feature(found.result.look.model, id).has_value();
    });
    if (is_usable(size) && known) {
      take(found, ids, size, there);
      ++taken;
    } else {
      left.push_back({{"size", semantic_size_text(size)},
                      {"features", ids},
                      {"why", !known               ? "the document has no such feature"
                              : size.doubt.empty() ? "it has neither class nor limits"
                                                   : size.doubt}});
    }
  }
  return {{"taken", taken}, {"left", left}};
}

}  // namespace spotblue::plugin
