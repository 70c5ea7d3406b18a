#pragma once
// The solids of a model on disk, in Open CASCADE's own binary form, loaded only when wanted.

#include <TopoDS_Shape.hxx>
#include <cstddef>
#include <filesystem>
#include <span>

namespace spotblue {

// A new empty folder of our own under the system's temp folder.
// Throws Error file_access when none can be made.
[[nodiscard]] std::filesystem::path make_shape_folder();

// Owns the folder and removes it when it goes; loading is const and safe from any thread.
class ShapeStore {
 public:
  explicit ShapeStore(std::filesystem::path folder);
  ~ShapeStore();
  ShapeStore(const ShapeStore&) = delete;
  ShapeStore& operator=(const ShapeStore&) = delete;
  ShapeStore(ShapeStore&&) = delete;
  ShapeStore& operator=(ShapeStore&&) = delete;

  [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }

  // The product's shape as read, unhealed. Open CASCADE's algorithms fail in silence on it.
  // Throws Error open_cascade_failed when it can not be loaded.
  [[nodiscard]] TopoDS_Shape load(std::size_t product) const;

  // The product's shape mended as Open CASCADE's algorithms need it.
  [[nodiscard]] TopoDS_Shape load_healed(std::size_t product) const;

 private:
  std::filesystem::path folder_;
};

// The shape mended as Open CASCADE's algorithms need it. May throw Standard_Failure.
[[nodiscard]] TopoDS_Shape healed(const TopoDS_Shape& shape);

// Writes the shapes of all products in their order, without triangulation, where a ShapeStore of
// that folder finds them: into one file, since to make a file costs more than to write a part.
// Throws Error file_access when they can not all be written.
void store_shapes(const std::filesystem::path& folder, std::span<const TopoDS_Shape> shapes);

// Puts the shapes that `from` holds behind those that `folder` holds, in their order.
// Throws Error file_access when they can not all be written.
void append_shapes(const std::filesystem::path& folder, const std::filesystem::path& from);

}  // namespace spotblue
