#include "geometry/shape_store.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <BinTools.hxx>
#include <ShapeFix_Shape.hxx>
#include <Standard_Failure.hxx>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <string>
#include <system_error>
#include <utility>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::filesystem::path shape_file(const std::filesystem::path& folder, std::size_t product) {
  return folder / fmt::format("{}.bin", product);
}

Error shape_lost(const std::filesystem::path& file, const std::string& why) {
  return {ErrorCode::kernel_failure,
          {file.string(), ""},
          why,
          "check that the temp folder has room and read the model again"};
}

}  // namespace

std::filesystem::path make_shape_folder() {
  std::error_code trouble;
  const std::filesystem::path temp = std::filesystem::temp_directory_path(trouble);
  constexpr int kPlaces = 6;  // which mkdtemp fills where it finds so many X at the end
  std::string name = (temp / fmt::format("spotblue-{}-{:X>{}}", getpid(), "", kPlaces)).string();
  if (trouble || mkdtemp(name.data()) == nullptr) {
    throw Error(ErrorCode::file_access, {temp.string(), ""},
                fmt::format("no folder for the shapes can be made: {}",
                            trouble ? trouble.message() : std::strerror(errno)),
                "make room there, or name another temp folder in TMPDIR");
  }
  return name;
}

ShapeStore::ShapeStore(std::filesystem::path folder) : folder_(std::move(folder)) {}

ShapeStore::~ShapeStore() {
  std::error_code ignored;
  std::filesystem::remove_all(folder_, ignored);
}

TopoDS_Shape ShapeStore::load(std::size_t product) const {
  const std::filesystem::path file = shape_file(folder_, product);
  TopoDS_Shape shape;
  try {
    if (!BinTools::Read(shape, file.c_str()) || shape.IsNull()) {
      throw shape_lost(file, "the stored shape can not be read back");
    }
  } catch (const Standard_Failure& failure) {
    throw shape_lost(
        file, fmt::format("the stored shape can not be read back: {}", failure.GetMessageString()));
  }
  return shape;
}

TopoDS_Shape ShapeStore::load_healed(std::size_t product) const {
  TopoDS_Shape shape = load(product);
  try {
    const Handle(ShapeFix_Shape) fix = new ShapeFix_Shape(shape);
    fix->Perform();
    return fix->Shape();
  } catch (const Standard_Failure& failure) {
    throw shape_lost(shape_file(folder_, product),
                     fmt::format("the shape can not be mended: {}", failure.GetMessageString()));
  }
}

void store_shape(const std::filesystem::path& folder, std::size_t product,
                 const TopoDS_Shape& shape) {
  const std::filesystem::path file = shape_file(folder, product);
  if (!BinTools::Write(shape, file.c_str(), Standard_False, Standard_False,
                       BinTools_FormatVersion_CURRENT)) {
    throw shape_lost(file, "the shape can not be written");
  }
}

}  // namespace spotblue
