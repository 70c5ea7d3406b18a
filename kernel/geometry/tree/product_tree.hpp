#pragma once
// The product tree of a file or a document: parts with solids once each, and where they occur.

#include <TopoDS_Shape.hxx>
#include <TopoDS_TShape.hxx>
#include <cstddef>
#include <filesystem>
#include <gp_Trsf.hxx>
#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

#include "geometry/tree/outside_files.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// One solid of a part; a part with several has them one behind the other.
struct TreePart {
  int entity = 0;  // of the part's product definition in a file: 12 for #12
  std::string name;
  std::optional<int> body;  // which of the part's solids, from 1; none for the only one
  std::string body_name;    // the solid's own, where the part has others
  TopoDS_Shape shape;       // rigidly placed within
};

struct NamedSolid {
  TopoDS_Shape shape;
  std::string name;  // the solid's own, empty for none
};

// The bodies of one part among a tree's parts.
struct Bodies {
  std::size_t first = 0, count = 0;
};

struct Tree {
  std::vector<TreePart> parts;   // in the order they are met from the roots down
  List<Occurrence> occurrences;  // product is an index into parts; id and box not yet set
  std::vector<int> unplaced;     // usages whose component has solids but came without a shape
  std::unordered_set<const TopoDS_TShape*>
      solids;                           // all that are in parts, as Open CASCADE made them
  std::vector<OutsidePlace> elsewhere;  // of parts whose shapes are in other files
  std::vector<Note> notes;
  std::vector<Note> not_compared;
  double uncertainty = 0.0;  // mm, as the file states it; 0 when it does not
};

[[nodiscard]] Frame frame_of(const gp_Trsf& placement);

// Adds a part by its solids, at least one.
Bodies add_part(Tree& tree, int entity, const std::string& name,
                const std::vector<NamedSolid>& solids);

// Places each body of a part: "Press/Pin" becomes "Press/Pin#1", "Press/Pin#2".
void place_part(Tree& tree, const Bodies& part, const std::string& path, const Frame& frame);

// Leaves out the faces of `own` that bound no solid, and says so when there are any.
void note_loose_faces(const std::string& part, const std::vector<TopoDS_Shape>& own, Tree& tree);

// Analyses the tree's parts, stores their shapes in `folder` for a ShapeStore, and takes over the
// tree's notes with one for each part that is not whole. Analysing is a stage (StageTime).
//
// Under a TimeLimit, parts that more than kFeaturesShare of the time left would go on have no
// features and an empty box, so that nothing is set against them; a note for each is handed back.
constexpr double kFeaturesShare = 0.6;
std::vector<Note> add_products(const Tree& tree, const std::filesystem::path& folder, Model& model);

// Moves the tree's occurrences into the model, with ids and boxes; its products must be there.
void add_occurrences(Tree& tree, Model& model);

}  // namespace spotblue
