// Sizes and names of faces of a STEP file into the document that was read from it: Open CASCADE's
// reader makes of sizes what it can, and that is not all, and of names nothing.

#include <TCollection_ExtendedString.hxx>
#include <TDF_Label.hxx>
#include <TDataStd_Name.hxx>
#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/document_sizes.hpp"
#include "plugin/subject/document_faces.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/geometry/sizes.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

// Where Open CASCADE's reader dropped the names of faces, sizes and places are what is left.
std::string sized_name_of(const Product& part, const ProductFeatureRef& feature) {
  return feature.kind == FeatureKind::width ? part.widths[feature.index].sized_name
                                            : part.cylinders[feature.index].sized_name;
}

// One face for each name: a name on more would be one of more faces than in the file. A width's
// faces are those of its planes.
class NameTaker {
 public:
  explicit NameTaker(const Subject& subject) : subject_(&subject) {}

  void take(const Product& part) {
    for_each_named(part, part.cylinders);
    for_each_named(part, part.cones);
    for_each_named(part, part.planes);
  }
  [[nodiscard]] std::size_t taken() const { return taken_; }
  [[nodiscard]] const Json& left() const { return left_; }

 private:
  void for_each_named(const Product& part, const auto& features) {
    for (const auto& feature : features) {
      if (feature.given.empty()) {
        continue;
      }
      const auto there = find_sized(subject_->result.look.model, part.id, feature.sized_name);
      name(part.id, feature.given, there ? face_labels(*subject_, *there) : Labels());
    }
  }

  using Labels = std::vector<TDF_Label>;
  void name(const std::string& part, const std::vector<std::string>& given, const Labels& labels) {
    for (std::size_t i = 0; i < given.size(); ++i) {
      if (i < labels.size()) {
        TDataStd_Name::Set(labels[i], TCollection_ExtendedString(given[i].c_str(), Standard_True));
        ++taken_;
      } else {
        left_.push_back({{"name", given[i]},
                         {"features", {part + ": " + given[i]}},
                         {"why", labels.empty() ? "the document has no such feature"
                                                : "the document has fewer faces there"}});
      }
    }
  }

  const Subject* subject_;
  std::size_t taken_ = 0;
  Json left_ = Json::array();
};

// By their names in the document; as the file has them where the document has not all of them.
struct Meant {
  std::vector<std::string> ids;
  bool known = true;
};

Meant meant_by(const SemanticSize& size, const Model& file, const Model& document) {
  Meant meant;
  const Product& part = file.products[*size.product];
  for (const ProductFeatureRef& feature : size.features) {
    const auto there = find_sized(document, part.id, sized_name_of(part, feature));
    meant.known = meant.known && there.has_value();
    meant.ids.push_back(there ? id_of(document, *there)
                              : id_of(file, {*size.product, feature.kind, feature.index}));
  }
  return meant;
}

// Restated where the document has it already, so that what else hangs on it stays; else set.
void take(const Subject& subject, const std::vector<std::string>& ids, const SemanticSize& size,
          std::vector<SizeThere>& there) {
  const auto known = std::ranges::find_if(there, [&](const SizeThere& one) {
    return one.features == ids && one.size.characteristic == size.characteristic &&
           (one.size.tolerance_class.empty() || !size.tolerance_class.empty());
  });
  if (known == there.end()) {
    set_size(subject, ids, size);
    return;
  }
  SemanticSize same = size;
  same.name = ids.front();
  state_size(known->label, same);
  there.erase(known);
}

}  // namespace

Json take_command(Session& session, const Arguments& arguments) {
  arguments.expect(2, 2);
  const std::string& name = arguments.words()[0];
  NameTaker names(session.document_subject(name));
  const Model file =
      read_step(path_of_shown(arguments.words()[1]), {}, Completeness::accept_partial);
  for (const Product& part : file.products) {
    names.take(part);
  }
  const Subject& found = session.document_subject(name);  // looked at again where names are new
  const Model& document = found.result.look.model;
  std::vector<SizeThere> there = sizes_in(found);
  std::size_t taken = 0;
  Json left = names.left();
  for (const SemanticSize& size : file.semantic_sizes) {
    const Meant meant = meant_by(size, file, document);
    if (is_usable(size) && meant.known) {
      take(found, meant.ids, size, there);
      ++taken;
    } else {
      left.push_back({{"size", semantic_size_text(size)},
                      {"features", meant.ids},
                      {"why", !meant.known         ? "the document has no such feature"
                              : size.doubt.empty() ? "it has neither class nor limits"
                                                   : size.doubt}});
    }
  }
  return {{"taken", taken}, {"names", names.taken()}, {"left", left}};
}

}  // namespace spotblue::plugin
