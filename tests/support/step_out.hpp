#pragma once
/// @file
/// Writing a tree of placed parts as a STEP assembly through Open CASCADE's document writer.

#include <TopoDS_Shape.hxx>
#include <cstddef>
#include <filesystem>
#include <gp_Trsf.hxx>
#include <string>
#include <vector>

namespace spotblue::test {

/// A part (with a shape) or an assembly (with components), written once however often it is placed.
struct Node {
  struct Component {
    std::size_t node = 0;
    gp_Trsf at;
  };
  std::string name;
  TopoDS_Shape shape;  ///< null for an assembly
  std::vector<Component> components;
};

enum class Schema { ap203, ap214, ap242 };
enum class FileUnit { mm, inch, metre };

/// Whether faces carry their edges' curves in the surface's own parameters too, as Open CASCADE
/// writes them unless told otherwise and many other programs never do; they double the file.
enum class SurfaceCurves { written, left_out };

/// Writes nodes.back() as the root. A node must come after the nodes it places.
void write_step(const std::vector<Node>& nodes, Schema schema, FileUnit unit,
                const std::filesystem::path& file, SurfaceCurves curves = SurfaceCurves::written);

/// "NAME.step" in the temp folder, of this process alone: two runs at once share no file.
std::filesystem::path temp_step(const std::string& name);

/// Keeps Open CASCADE from printing on the test's stdout.
void silence_open_cascade();

}  // namespace spotblue::test
