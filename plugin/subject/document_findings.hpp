#pragma once
// Findings in a document as Open CASCADE's standard attributes, so that they travel with the model.

#include <TDocStd_Document.hxx>
#include <nlohmann/json_fwd.hpp>

#include "plugin/subject/subject.hpp"

namespace spotblue::plugin {

/// Puts the findings in the document, in place of those that were there: each as named data on a
/// label of its own, and each that does not conform as a note on the faces or parts it is about.
/// @return how many notes were made.
/// @throws Error bad_input when the document may not be changed.
std::size_t keep_findings(const Subject& subject);

/// The findings that a document holds, as they were kept; an empty list when it holds none.
[[nodiscard]] nlohmann::ordered_json kept_findings(const Handle(TDocStd_Document) & document);

}  // namespace spotblue::plugin
