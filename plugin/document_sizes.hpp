#pragma once
// Tolerance classes in a document, as the standard's semantic sizes: ISO 286 class on a feature.

#include <TDF_Label.hxx>
#include <TDocStd_Document.hxx>
#include <string>
#include <vector>

#include "session.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue::plugin {

struct DocumentSize {
  TDF_Label label;
  std::vector<TDF_Label> faces;
  std::string feature;          ///< empty when its faces are no feature of a part
  std::string tolerance_class;  ///< "H7"; empty when the size has none
  Length nominal;
};

/// Every size of the document that has one value, in its order.
[[nodiscard]] std::vector<DocumentSize> sizes_in(const Subject& subject);

/// Sets the class of a feature, in place of what its faces had.
/// @throws Error bad_input when the document can not say such a class or the feature has no faces.
void set_class(const Subject& subject, const std::string& feature, Length nominal,
               const std::string& tolerance_class);

/// Takes away all sizes of the feature; how many there were.
std::size_t remove_classes(const Subject& subject, const std::string& feature);

}  // namespace spotblue::plugin
