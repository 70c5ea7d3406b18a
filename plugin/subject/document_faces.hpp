#pragma once
// Labels of a document for parts and for the faces of their features.

#include <TDF_Label.hxx>
#include <TDocStd_Document.hxx>
#include <string>
#include <vector>

#include "plugin/subject/subject.hpp"

namespace spotblue::plugin {

[[nodiscard]] TDF_Label label_at(const Handle(TDocStd_Document) & document,
                                 const std::string& entry);
[[nodiscard]] std::string entry_of(const TDF_Label& label);
[[nodiscard]] TDF_Label label_of_product(const Subject& subject, ProductId product);

/// The labels of the feature's faces beneath its part's; those that are not there are made.
[[nodiscard]] std::vector<TDF_Label> face_labels(const Subject& subject,
                                                 const FoundFeature& feature);

}  // namespace spotblue::plugin
