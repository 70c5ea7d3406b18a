#pragma once
// The product tree of a file or a document: parts with solids once each, and where they occur.

#include <TopoDS_Shape.hxx>
#include <TopoDS_TShape.hxx>
#include <cstddef>
#include <filesystem>
#include <gp_Trsf.hxx>
#include <string>
#include <unordered_set>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct TreePart {
  int entity = 0;  // of its product definition in a file: 12 for #12
  std::string name;
  TopoDS_Shape shape;  // its solids: one solid, or a compound; rigidly placed within
};

struct Tree {
  std::vector<TreePart> parts;          // in the order they are met from the roots down
  std::vector<Occurrence> occurrences;  // product is an index into parts; id and box not yet set
  std::vector<int> unplaced;  // usages whose component has solids but came without a shape
  std::unordered_set<const TopoDS_TShape*>
      solids;  // all that are in parts, as the kernel made them
  std::vector<Note> notes;
};

[[nodiscard]] Frame frame_of(const gp_Trsf& placement);

// One shape of them all: the solid itself, or a compound of several.
[[nodiscard]] TopoDS_Shape together(const std::vector<TopoDS_Shape>& solids);

// Leaves out the faces of `own` that bound no solid, with a note when there are any.
void note_loose_faces(const std::string& part, const std::vector<TopoDS_Shape>& own,
                      std::vector<Note>& notes);

// Analyses the tree's parts, stores their shapes in `folder` for a ShapeStore, and takes over the
// tree's notes with one for each part that is not whole; returns the seconds that the features
// took.
double add_products(const Tree& tree, const std::filesystem::path& folder, Model& model);

// Moves the tree's occurrences into the model, with ids and boxes; its products must be there.
void add_occurrences(Tree& tree, Model& model);

}  // namespace spotblue
