#include "geometry/occt/shape_store.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <BinTools.hxx>
#include <ShapeFix_Shape.hxx>
#include <cerrno>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

#include "base/error_kinds.hpp"
#include "geometry/occt/occt_versions.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

Error shape_lost(const std::filesystem::path& file, const std::string& why) {
  return {ErrorCode::system,
          {shown_name(file), ""},
          why,
          "check that the temp folder has room and read the model again"};
}

// Where each product's shape begins among the shapes.
using Place = std::uint64_t;

std::filesystem::path shapes_file(const std::filesystem::path& folder) {
  return folder / "shapes.bin";
}

std::filesystem::path places_file(const std::filesystem::path& folder) {
  return folder / "places.bin";
}

Place place_of(const std::filesystem::path& folder, std::size_t product) {
  Place place = 0;
  std::ifstream in(places_file(folder), std::ios::binary);
  in.seekg(static_cast<std::streamoff>(product * sizeof place));
  in.read(reinterpret_cast<char*>(&place), sizeof place);
  return in ? place : throw shape_lost(places_file(folder), "the stored shape is not listed");
}

// A TMPDIR that is set to nothing is taken for one that is not set.
std::filesystem::path temp_folder(std::error_code& trouble) {
  const char* const named = std::getenv("TMPDIR");
  return named != nullptr && *named == '\0' ? std::filesystem::path("/tmp")
                                            : std::filesystem::temp_directory_path(trouble);
}

}  // namespace

std::filesystem::path make_shape_folder() {
  std::error_code trouble;
  const std::filesystem::path temp = temp_folder(trouble);
  constexpr int kPlaces = 6;  // which mkdtemp fills where it finds so many X at the end
  std::string name = (temp / fmt::format("spotblue-{}-{:X>{}}", getpid(), "", kPlaces)).string();
  if (trouble || mkdtemp(name.data()) == nullptr) {
    const int reason = trouble ? trouble.value() : errno;
    throw Error(code_of_reason(reason), {shown_name(temp), ""},
                fmt::format("no folder for the shapes can be made: {}",
                            std::generic_category().message(reason)),
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
  const std::filesystem::path file = shapes_file(folder_);
  std::ifstream in(file, std::ios::binary);
  in.seekg(static_cast<std::streamoff>(place_of(folder_, product)));
  TopoDS_Shape shape;
  try {
    BinTools::Read(shape, in);
  } catch (const Standard_Failure& failure) {
    throw shape_lost(
        file, fmt::format("the stored shape can not be read back: {}", occt::words_of(failure)));
  }
  if (!in || shape.IsNull()) {
    throw shape_lost(file, "the stored shape can not be read back");
  }
  return shape;
}

TopoDS_Shape healed(const TopoDS_Shape& shape) {
  const Handle(ShapeFix_Shape) fix = new ShapeFix_Shape(shape);
  fix->Perform();
  return fix->Shape();
}

TopoDS_Shape ShapeStore::load_healed(std::size_t product) const {
  const TopoDS_Shape shape = load(product);
  try {
    return healed(shape);
  } catch (const Standard_Failure& failure) {
    throw Error(ErrorCode::open_cascade_failed, {shown_name(shapes_file(folder_)), ""},
                fmt::format("the shape can not be mended: {}", occt::words_of(failure)),
                "export the part again");
  }
}

void store_shapes(const std::filesystem::path& folder, std::span<const TopoDS_Shape> shapes) {
  const std::filesystem::path file = shapes_file(folder);
  std::ofstream out(file, std::ios::binary);
  std::vector<Place> places;
  for (const TopoDS_Shape& shape : shapes) {
    places.push_back(static_cast<Place>(out.tellp()));
    BinTools::Write(shape, out, Standard_False, Standard_False, BinTools_FormatVersion_CURRENT);
  }
  std::ofstream listed(places_file(folder), std::ios::binary);
  listed.write(reinterpret_cast<const char*>(places.data()),
               static_cast<std::streamsize>(places.size() * sizeof(Place)));
  out.close();
  listed.close();
  if (!out || !listed) {
    throw Error(ErrorCode::system, {shown_name(file), ""}, "the shapes can not be written",
                "make room in the temp folder, or name another in TMPDIR");
  }
}

void append_shapes(const std::filesystem::path& folder, const std::filesystem::path& from) {
  const std::filesystem::path file = shapes_file(folder);
  std::error_code none;
  const std::uintmax_t size = std::filesystem::file_size(file, none);
  const Place shift = none ? 0 : static_cast<Place>(size);
  std::ofstream out(file, std::ios::binary | std::ios::app);
  std::ifstream in(shapes_file(from), std::ios::binary);
  out << in.rdbuf();
  std::ifstream places(places_file(from), std::ios::binary);
  std::ofstream listed(places_file(folder), std::ios::binary | std::ios::app);
  Place place = 0;
  while (places.read(reinterpret_cast<char*>(&place), sizeof place)) {
    place += shift;
    listed.write(reinterpret_cast<const char*>(&place), sizeof place);
  }
  out.close();
  listed.close();
  if (!out || !listed || !in) {
    throw Error(ErrorCode::system, {shown_name(file), ""}, "the shapes can not be written",
                "make room in the temp folder, or name another in TMPDIR");
  }
}

}  // namespace spotblue
