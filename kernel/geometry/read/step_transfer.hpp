#pragma once
// What the reading process does with a STEP file: Open CASCADE's parse and transfer, and the walk
// over the result.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/tree/product_tree.hpp"
#include "geometry/tree/step_reader.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// A solid entity of the file and the faces its shape has; 0 faces when no shape arrived.
struct ArrivedSolid {
  int entity = 0;  // 12 for #12
  int faces = 0;
  bool placed = false;  // whether it is found in a product of the model
};

// A face entity whose shape has fewer bounds or edges than it declares: a hole in it was lost.
struct ArrivedFace {
  int entity = 0;
  int bounds = 0, declared_bounds = 0;
  int edges = 0, declared_edges = 0;
};

// The product definition that a solid is of.
struct ArrivedProduct {
  int entity = 0;
};

// What came out of the file, to be compared with what its text declares.
struct Arrival {
  Model model;                           // without file info and shapes
  std::vector<ArrivedProduct> products;  // one for each of the model's, in its order
  std::vector<ArrivedSolid> solids;
  std::vector<ArrivedFace> lame_faces;
  std::vector<int> unplaced;  // usage entities whose component has solids but came without a shape
  std::vector<Note> not_looked_at;      // parts: see add_products
  std::vector<OutsidePlace> elsewhere;  // of parts whose shapes are in other files
};

// What else is wanted while the parsed file is there.
using AlsoLook = std::function<void(const StepReader&, const Tree&, const Model&)>;

// Parses the text with Open CASCADE, without healing, and stores every product's shape in `folder`.
//
// Changes the process's settings of Open CASCADE: only for a contained child or a process that
// reads one file after another (ReadIn::this_process). The parsed file is put into `parsed`: in a
// child that is the parent's, which the child ends without freeing, since to free every entity
// costs a tenth of a parse. Throws Error unreadable when Open CASCADE refuses the text or an entity
// of it; exceptions of Open CASCADE pass through.
[[nodiscard]] Arrival transfer_step(std::string_view text, const std::filesystem::path& folder,
                                    Completeness completeness, std::optional<StepReader>& parsed,
                                    const AlsoLook& also = {});

}  // namespace spotblue
