#pragma once
/// @file
/// Writing the same assembly as Open CASCADE's own files.

#include <TopoDS_Shape.hxx>
#include <filesystem>
#include <string>

namespace spotblue::test {

enum class BrepKind { text, binary };

/// A STEP file's assembly as a document with names, in .xbf.
void step_to_xbf(const std::filesystem::path& step, const std::filesystem::path& xbf);

/// A STEP file's assembly written anew by Open CASCADE from what it reads and heals, in mm.
void step_to_step(const std::filesystem::path& step, const std::filesystem::path& again);

/// A STEP file's assembly as one compound, nested as the file is.
void step_to_brep(const std::filesystem::path& step, const std::filesystem::path& brep,
                  BrepKind kind);

/// One shape as a document of lengths in `metres_per_unit`, in .xbf.
void shape_to_xbf(const TopoDS_Shape& shape, const std::string& name, double metres_per_unit,
                  const std::filesystem::path& xbf);

}  // namespace spotblue::test
