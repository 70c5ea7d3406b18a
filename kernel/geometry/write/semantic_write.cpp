#include "spotblue/geometry/semantic_write.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <StepShape_Face.hxx>
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <utility>

#include "base/error_kinds.hpp"
#include "geometry/model/plain_bytes.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/occt/contained.hpp"
#include "geometry/occt/require_finished.hpp"
#include "geometry/occt/shape_store.hpp"
#include "geometry/part21/step_declared.hpp"
#include "geometry/read/completeness.hpp"
#include "geometry/read/model_archive.hpp"
#include "geometry/read/model_format.hpp"
#include "geometry/read/step_transfer.hpp"
#include "geometry/sizes/face_book.hpp"
#include "geometry/write/semantic_proof.hpp"
#include "geometry/write/semantic_text.hpp"
#include "geometry/write/step_rewrite.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/geometry/feature_names.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

// Entities of the faces of each feature, by product, kind and index.
using FaceKey = std::tuple<ProductId, int, std::size_t>;

struct Source {
  Model model;
  std::vector<int> definitions;  // of the products
  std::map<FaceKey, std::vector<int>> faces;
};

FaceKey key_of(ProductId product, const ProductFeatureRef& feature) {
  return {product, static_cast<int>(feature.kind), feature.index};
}

// Rows of product, kind, index and face entity.
std::vector<std::size_t> face_rows(const StepReader& reader, const Tree& tree, const Model& model) {
  std::vector<std::size_t> rows;
  FaceBook book(tree, model);
  const auto& entities = reader.entities();
  for (int i = 1; i <= entities->NbEntities(); ++i) {
    const Handle(StepShape_Face) entity = Handle(StepShape_Face)::DownCast(entities->Value(i));
    const TopoDS_Shape face = entity.IsNull() ? TopoDS_Shape() : reader.shape_of(entity);
    if (face.IsNull()) {
      continue;
    }
    for (const FaceBook::Place& place : book.places(face)) {
      if (const ProductFeatureRef* feature = book.feature(place)) {
        rows.insert(rows.end(),
                    {place.part, static_cast<std::size_t>(feature->kind), feature->index,
                     static_cast<std::size_t>(reader.number_of(entity))});
      }
    }
  }
  return rows;
}

std::string child_work(const std::string& text, const std::filesystem::path& folder,
                       std::optional<StepReader>& parsed) {
  std::vector<std::size_t> rows;
  const Arrival arrival =
      transfer_step(text, folder, Completeness::all_or_error, parsed,
                    [&](const StepReader& reader, const Tree& tree, const Model& model) {
                      rows = face_rows(reader, tree, model);
                    });
  BytesOut out;
  out(rows);
  return out.take() + to_bytes(arrival);
}

Source read_source(const std::string& text, const std::string& file, const Declared& declared,
                   const ReadLimits& limits) {
  const ShapeStore store(make_shape_folder());
  std::optional<StepReader> parsed;
  const Contained run =
      run_contained([&] { return child_work(text, store.folder(), parsed); }, limits);
  require_finished(run, file, limits);
  std::vector<std::size_t> rows;
  BytesIn in(run.bytes);
  try {
    in(rows);
  } catch (const std::exception&) {
    throw Error(ErrorCode::open_cascade_failed, {file, ""},
                "what the reading process handed back is damaged", "try again");
  }
  Arrival arrival = arrival_from_bytes(in.rest());
  const std::vector<Note> missing = missing_from(arrival, declared);
  if (!missing.empty()) {
    throw Error(ErrorCode::incomplete, {file, ""}, summary_of(missing), "export the file again");
  }
  Source source{std::move(arrival.model), {}, {}};
  for (const ArrivedProduct& product : arrival.products) {
    source.definitions.push_back(product.entity);
  }
  std::set<std::pair<FaceKey, int>> taken;
  for (std::size_t i = 0; i + 3 < rows.size(); i += 4) {
    const FaceKey key{ProductId(rows[i]), static_cast<int>(rows[i + 1]), rows[i + 2]};
    const int face = static_cast<int>(rows[i + 3]);
    if (taken.emplace(key, face).second) {
      source.faces[key].push_back(face);
    }
  }
  return source;
}

std::string size_name(const SizeToWrite& size) { return size.product + ": " + size.feature; }

Error bad_size(const std::string& file, const SizeToWrite& size, const std::string& rule,
               const std::string& cure) {
  return {ErrorCode::bad_input, {file, size_name(size)}, rule, cure};
}

ProductId product_named(const Source& source, const std::string& file, const SizeToWrite& size) {
  std::vector<std::string> known;
  for (ProductId i; i < source.model.products.size(); ++i) {
    if (source.model.products[i].id == size.product) {
      return i;
    }
    known.push_back(source.model.products[i].id);
  }
  throw bad_size(file, size, "there is no such part",
                 fmt::format("did you mean \"{}\"?", nearest_word(size.product, known)));
}

ProductFeatureRef feature_named(const Product& product, const std::string& file,
                                const SizeToWrite& size) {
  std::vector<ProductFeatureRef> called = features_called(product, size.feature);
  std::erase_if(called, [](const ProductFeatureRef& one) {
    return one.kind != FeatureKind::cylinder && one.kind != FeatureKind::width;
  });
  if (called.size() == 1) {
    return called.front();
  }
  std::vector<std::string> known;
  for (const Cylinder& one : product.cylinders) {
    known.push_back(one.name);
  }
  for (const Width& one : product.widths) {
    known.push_back(one.name);
  }
  if (called.empty()) {
    throw bad_size(file, size, "the part has no bore, outside, slot or width of that name",
                   fmt::format("did you mean \"{}\"?", nearest_word(size.feature, known)));
  }
  std::vector<std::string> meant;
  for (const ProductFeatureRef& one : called) {
    const std::string& name = one.kind == FeatureKind::width ? product.widths[one.index].name
                                                             : product.cylinders[one.index].name;
    const std::string& sized = one.kind == FeatureKind::width
                                   ? product.widths[one.index].sized_name
                                   : product.cylinders[one.index].sized_name;
    meant.push_back(name == size.feature ? sized : name);
  }
  throw bad_size(file, size, "that could be any of several features",
                 fmt::format("write one of \"{}\"", fmt::join(meant, "\", \"")));
}

// The limits that the size asks for; refuses what is no size.
SizeLimits wanted_limits(const std::string& file, const SizeToWrite& size) {
  if (!(size.nominal_mm > 0.0) || !std::isfinite(size.nominal_mm)) {
    throw bad_size(file, size, fmt::format("the nominal is {} mm", size.nominal_mm),
                   "give a size above 0");
  }
  if (size.tolerance_class.empty() == !size.deviations.has_value()) {
    throw bad_size(file, size, "it has both class and deviations, or neither", "give one of them");
  }
  if (size.deviations) {
    const auto [lower, upper] = *size.deviations;
    if (!std::isfinite(lower) || !std::isfinite(upper) || lower > upper) {
      throw bad_size(file, size, "its deviations are reversed or no numbers",
                     "give the lower one first");
    }
    return {size.nominal_mm + lower, size.nominal_mm + upper};
  }
  try {
    const Limits made = limits(Length::mm(size.nominal_mm), size.tolerance_class);
    return {made.lower.in_mm(), made.upper.in_mm()};
  } catch (const Error& problem) {
    throw bad_size(file, size, problem.rule(), problem.cure());
  }
}

void check_side(const Product& product, const ProductFeatureRef& feature, const std::string& file,
                const SizeToWrite& size) {
  if (size.tolerance_class.empty()) {
    return;
  }
  const Side side = feature.kind == FeatureKind::width ? product.widths[feature.index].side
                                                       : product.cylinders[feature.index].side;
  const bool hole = side == Side::internal;
  if ((size_kind(size.tolerance_class) == SizeKind::hole) != hole) {
    throw bad_size(
        file, size,
        fmt::format("{} is a class of {}", size.tolerance_class, hole ? "shafts" : "holes"),
        hole ? "give a class in capital letters" : "give a class in small letters");
  }
}

// Whether the file states the very size already; refuses another one.
bool is_there(const Source& source, ProductId product, const ProductFeatureRef& feature,
              SizeLimits wanted, const std::string& file, const SizeToWrite& size) {
  for (const SemanticSize& known : source.model.semantic_sizes) {
    const bool same_feature =
        known.product == product &&
        std::find(known.features.begin(), known.features.end(), feature) != known.features.end();
    if (!same_feature || (!known.limits && known.doubt.empty())) {
      continue;
    }
    const double k = known.characteristic == SizeCharacteristic::radius ? 2.0 : 1.0;
    const bool same = is_usable(known) &&
                      std::abs(k * known.limits->lower_mm - wanted.lower_mm) < kOnePlace &&
                      std::abs(k * known.limits->upper_mm - wanted.upper_mm) < kOnePlace;
    if (same) {
      return true;
    }
    throw bad_size(file, size,
                   fmt::format("the file states {} for it already{}", semantic_size_text(known),
                               entity_text(known)),
                   "write onto a model without that size, or ask for the same");
  }
  return false;
}

struct Placing {
  std::vector<PlacedSize> sizes;
  std::vector<Note> notes;
};

Placing place_sizes(const Source& source, const Declared& declared, const std::string& file,
                    std::span<const SizeToWrite> sizes) {
  Placing placing;
  std::set<FaceKey> taken;
  for (const SizeToWrite& size : sizes) {
    const ProductId index = product_named(source, file, size);
    const Product& product = source.model.products[index];
    const ProductFeatureRef feature = feature_named(product, file, size);
    const SizeLimits wanted = wanted_limits(file, size);
    check_side(product, feature, file, size);
    if (!taken.insert(key_of(index, feature)).second) {
      throw bad_size(file, size, "it is given two sizes", "give it one");
    }
    if (is_there(source, index, feature, wanted, file, size)) {
      placing.notes.push_back({size_name(size), "since the file states that size already"});
      continue;
    }
    PlacedSize placed;
    placed.size = &size;
    placed.definition = source.definitions.at(index);
    const auto faces_of = [&](const ProductFeatureRef& one) {
      const auto found = source.faces.find(key_of(index, one));
      return found == source.faces.end() ? std::vector<int>() : found->second;
    };
    if (feature.kind == FeatureKind::width) {
      placed.characteristic = SizeCharacteristic::width;
      const Width& width = product.widths[feature.index];
      placed.faces = faces_of({FeatureKind::plane, width.first});
      const std::vector<int> second = faces_of({FeatureKind::plane, width.second});
      placed.faces.insert(placed.faces.end(), second.begin(), second.end());
    } else {
      placed.faces = faces_of(feature);
    }
    const auto part =
        std::find_if(declared.parts.begin(), declared.parts.end(),
                     [&](const DeclaredPart& one) { return one.entity == placed.definition; });
    if (part != declared.parts.end()) {
      placed.solids = *part->solid_entities;
    }
    if (placed.faces.empty()) {
      throw bad_size(file, size, "its faces cannot be told among the file's entities",
                     "export the part with its own faces, not as a mirrored or scaled copy");
    }
    placing.sizes.push_back(std::move(placed));
  }
  return placing;
}

// The text as it is, or as Open CASCADE writes it anew where the protocol has no stated sizes.
std::string text_to_add_to(const std::string& file, std::string text, const ReadLimits& limits) {
  if (const ModelFormat format = format_of(text, file); format != ModelFormat::step) {
    throw Error(ErrorCode::bad_input, {file, ""},
                fmt::format("sizes can be written into a STEP file only, and this is an {}",
                            format_name(format)),
                "export the model as STEP and name that file");
  }
  const StepText entities(text, file, limits);
  const std::string protocol = read_declared(entities, file, limits).protocol;
  if (protocol == "AP242" || protocol == "AP214") {
    return text;
  }
  const ShapeStore folder(make_shape_folder());
  const std::filesystem::path rewritten = folder.folder() / "ap242.step";
  const Contained run = run_contained(
      [&] {
        rewrite_as_ap242(text, rewritten);
        return std::string("done");
      },
      limits);
  require_finished(run, file, limits);
  return read_bytes(rewritten, limits.file_mb, "a STEP file");
}

// Reads a draft as any reader would and throws unless it says what was meant.
void prove(const std::filesystem::path& draft, const Source& source,
           const std::vector<PlacedSize>& sizes, const std::string& out, const ReadLimits& limits) {
  const auto refuse = [&](ErrorCode code, const std::string& why) {
    return Error(code, {out, ""}, "not written, since it does not read back as meant: " + why,
                 "what was there is as it was; report it with the model");
  };
  try {
    const std::string text = read_bytes(draft, std::numeric_limits<double>::max(), "a STEP file");
    const StepText entities(text, out, limits);
    const Declared declared = read_declared(entities, out, limits);
    const Source written = read_source(text, out, declared, limits);
    const std::string difference = first_difference(source.model, written.model, sizes);
    if (!difference.empty()) {
      throw refuse(ErrorCode::open_cascade_failed, difference);
    }
    if (!sizes.empty() && declared.protocol != "AP242") {
      throw refuse(ErrorCode::open_cascade_failed,
                   fmt::format("its header says {}", declared.protocol));
    }
  } catch (const Error& error) {
    if (error.code() == ErrorCode::open_cascade_failed || says_nothing_of_content(error.code())) {
      throw;
    }
    throw refuse(ErrorCode::open_cascade_failed, error.rule());
  }
}

}  // namespace

std::vector<Note> write_semantic_sizes(const std::filesystem::path& model,
                                       const std::filesystem::path& out,
                                       std::span<const SizeToWrite> sizes, LengthUnit unit,
                                       const ReadLimits& limits) {
  const std::string file = shown_name(model);
  refuse_overwriting(out, {model});
  std::string bytes = read_bytes(model, limits.file_mb, "a STEP file");
  drop_byte_order_mark(bytes);
  const std::string text = text_to_add_to(file, std::move(bytes), limits);
  const StepText entities(text, file, limits);
  const Declared declared = read_declared(entities, file, limits);
  const Source source = read_source(text, file, declared, limits);
  Placing placing = place_sizes(source, declared, file, sizes);
  write_whole(out, with_sizes(text, entities, placing.sizes, unit, file),
              [&](const std::filesystem::path& draft) {
                prove(draft, source, placing.sizes, shown_name(out), limits);
              });
  return std::move(placing.notes);
}

}  // namespace spotblue
