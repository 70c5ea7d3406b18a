#pragma once
/// @file
/// The sizes that an XDE document of Open CASCADE states. What occt.hpp says of documents holds
/// here too.

#include <string>
#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"

class TDF_Label;

namespace spotblue {

/// A size that a document states, and the entry of its label: "0:1:4:1".
struct DocumentSize {
  std::string label;
  SemanticSize size;  ///< entity is 0
};

/// The sizes (XCAFDoc_Dimension) that the document states now, on the features of the model that
/// was made of it; model_of_document puts the same into Model::semantic_sizes, with notes.
///
/// Signed deviations are taken as they are. In doubt is what Open CASCADE 7.6 can not tell: a
/// positive lower deviation that may as well lie below, and deviations that came through its STEP
/// reader, which drops signs and units; unless a description named kSizeWordsName tells, as
/// write_semantic_sizes puts it in a file.
/// @throws Error bad_input when the document has other parts than the model.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<DocumentSize> sizes_of_document(const TDF_Label& main,
                                                                          const Model& model);

/// Name of a dimension's description that holds semantic_size_text() of it.
inline constexpr std::string_view kSizeWordsName = "size in mm";

/// Puts a size's name, values, class and kSizeWordsName description into the dimension on a label
/// of a document; what else the dimension has is kept, unless it is of another characteristic.
/// @throws Error bad_input when the label has no dimension or the document can not say the class.
SPOTBLUE_EXPORT void state_size(const TDF_Label& dimension, const SemanticSize& size);

/// Why a size with product and features could not be judged by, as the notes would say it: reversed
/// limits, a size that the model does not have, a class of the other kind; empty when it could.
[[nodiscard]] SPOTBLUE_EXPORT std::string doubt_about(const Model& model, SemanticSize size);

}  // namespace spotblue
