#include "geometry/tree/outside_files.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <system_error>
#include <utility>

#include "geometry/occt/shape_store.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/tree/occurrence_ids.hpp"

namespace spotblue {
namespace {

UniqueNames names_of(const auto& all) {
  UniqueNames names;
  for (const auto& one : all) {
    (void)names.take(one.id);
  }
  return names;
}

// "Bolt" or "Bolt/Head", whose first name all occurrences have, becomes "Press/Bolt" or
// "Press/Bolt/Head"; a file with several roots goes below the place as it is.
std::string path_below(const std::string& place, const std::string& path, bool one_root) {
  if (!one_root) {
    return place + "/" + path;
  }
  const std::size_t slash = path.find('/');
  return slash == std::string::npos ? place : place + path.substr(slash);
}

}  // namespace

FileBeside file_beside(const std::filesystem::path& file, const std::string& name) {
  if (name.find_first_of("/\\:") != std::string::npos || name == "." || name == "..") {
    return {{}, "names another folder, and only files beside this one are read"};
  }
  const std::filesystem::path path = file.parent_path() / name;
  std::error_code trouble;
  const auto status = std::filesystem::symlink_status(path, trouble);
  if (trouble || status.type() == std::filesystem::file_type::not_found) {
    return {{}, "is not beside this file"};
  }
  if (status.type() != std::filesystem::file_type::regular) {
    return {{}, "is no plain file, and may lead elsewhere"};
  }
  return {path, ""};
}

void take_in(Model& model, const std::filesystem::path& folder, const Model& other,
             const std::vector<OutsidePlace>& places) {
  if (other.shapes != nullptr) {
    append_shapes(folder, other.shapes->folder());
  }
  const std::size_t first = model.products.size();
  UniqueNames ids = names_of(model.products);
  std::string part;  // of the other model, whose bodies are being taken
  std::string new_part;
  for (const Product& product : other.products) {
    Product taken = product;
    if (!product.body) {
      taken.id = ids.take(product.id);
    } else {
      if (product.part != part || product.body == 1) {
        part = product.part;
        new_part = ids.take(part);
      }
      taken.part = new_part;
      taken.id = ids.take(fmt::format("{}#{}", new_part, *product.body));
    }
    model.products.push_back(std::move(taken));
  }
  const bool one_root = has_one_root(other.occurrences);
  for (const OutsidePlace& place : places) {
    for (const Occurrence& one : other.occurrences) {
      Occurrence placed = one;
      placed.product = ProductId(first + one.product);
      placed.frame = compose(place.frame, one.frame);
      placed.mirrored = is_mirror(placed.frame);
      placed.path = path_below(place.path, one.path, one_root);
      const std::optional<int> body = model.products[placed.product].body;
      if (body && one_root && one.path.find('/') == std::string::npos) {
        placed.path += fmt::format("#{}", *body);
      }
      placed.box = place_box(placed.frame, model.products[placed.product].box);
      model.occurrences.push_back(std::move(placed));
    }
  }
  name_occurrences(model);
  for (SemanticSize size : other.semantic_sizes) {
    if (size.product) {
      size.product = ProductId(first + *size.product);
    }
    model.semantic_sizes.push_back(std::move(size));
  }
  model.notes.insert(model.notes.end(), other.notes.begin(), other.notes.end());
  model.not_compared.insert(model.not_compared.end(), other.not_compared.begin(),
                            other.not_compared.end());
}

}  // namespace spotblue
