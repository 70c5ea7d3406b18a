#pragma once
// Sizes in a document, as the standard's semantic sizes: an ISO 286 class, deviations or limits.

#include <TDF_Label.hxx>
#include <string>
#include <vector>

#include "plugin/harness/session.hpp"
#include "spotblue/geometry/semantic_size.hpp"

namespace spotblue::plugin {

struct SizeThere {
  TDF_Label label;
  std::vector<TDF_Label> faces;
  SemanticSize size;
  std::vector<std::string> features;  ///< ids; empty when its faces are no feature of a part
};

/// Every size of the document that could be one of a feature, in its order.
[[nodiscard]] std::vector<SizeThere> sizes_in(const Subject& subject);

/// How many dimensions of any kind the document has.
[[nodiscard]] std::size_t dimensions_in(const Subject& subject);

/// States a size for features of one part, in place of what their faces had.
/// @param size  with a class, deviations or limits; its characteristic is that of the features.
/// @throws Error bad_input when the document can not say it or a feature has no faces.
void set_size(const Subject& subject, const std::vector<std::string>& features, SemanticSize size);

/// Takes away what the feature has; a size that it shares with others is left to those.
/// @return how many there were.
std::size_t remove_sizes(const Subject& subject, const std::string& feature);

}  // namespace spotblue::plugin
