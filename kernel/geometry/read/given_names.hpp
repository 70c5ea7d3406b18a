#pragma once
// What a file or a document calls the faces of its parts, as names of the features they make up.

#include <TDF_Label.hxx>

#include "geometry/tree/product_tree.hpp"
#include "geometry/tree/step_reader.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Names the features of the model anew where the file gives their faces names. The model's products
// are the tree's parts, analysed.
void add_given_names(const StepReader& reader, const Tree& tree, Model& model);

// Likewise by the names of the labels of faces.
void add_given_names(const TDF_Label& main, const Tree& tree, Model& model);

}  // namespace spotblue
