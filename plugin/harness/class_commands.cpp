// Commands about classes, deviations and limits in the document.

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/document_sizes.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

Length modelled_size(const Subject& subject, const FoundFeature& feature, const std::string& id) {
  const Product& product = subject.result.look.model.products[feature.product];
  if (feature.kind == FeatureKind::cylinder) {
    return Length::mm(product.cylinders[feature.index].diameter);
  }
  if (feature.kind == FeatureKind::width) {
    return Length::mm(product.widths[feature.index].width);
  }
  throw mistake(fmt::format("'{}'", id), "has no size that a class could be for",
                "name a bore, an outside, a slot or a width");
}

SizeKind kind_of(const Subject& subject, const FoundFeature& feature) {
  const Product& product = subject.result.look.model.products[feature.product];
  const Side side = feature.kind == FeatureKind::cylinder ? product.cylinders[feature.index].side
                                                          : product.widths[feature.index].side;
  return side == Side::internal ? SizeKind::hole : SizeKind::shaft;
}

Json as_json(const SizeThere& there, const std::string& feature) {
  const SemanticSize& size = there.size;
  Json entry{
      {"feature", feature}, {"size", semantic_size_text(size)}, {"class", size.tolerance_class}};
  if (size.nominal_mm) {
    entry["nominal_mm"] = *size.nominal_mm;
  }
  if (size.limits) {
    entry["lower_mm"] = size.limits->lower_mm;
    entry["upper_mm"] = size.limits->upper_mm;
  }
  if (!size.doubt.empty()) {
    entry["doubt"] = size.doubt;
  }
  entry["faces"] = there.faces.size();
  return entry;
}

/// Of all features when none is named.
Json entries(const Subject& subject, const std::string& wanted) {
  Json list = Json::array();
  for (const SizeThere& there : sizes_in(subject)) {
    for (const std::string& feature : there.features) {
      if (wanted.empty() || feature == wanted) {
        list.push_back(as_json(there, feature));
      }
    }
    if (there.features.empty() && wanted.empty()) {
      list.push_back(as_json(there, ""));
    }
  }
  return list;
}

// What the standard or the feature can not have.
void refuse_wrong_class(const Subject& subject, const FoundFeature& feature,
                        const SemanticSize& size) {
  const std::string& tolerance_class = size.tolerance_class;
  if (tolerance_class.empty()) {
    return;
  }
  if (size_kind(tolerance_class) != kind_of(subject, feature)) {
    throw mistake(tolerance_class,
                  fmt::format("is no class for {}", kind_of(subject, feature) == SizeKind::hole
                                                        ? "a hole or a slot"
                                                        : "a shaft or a key"),
                  "holes have capital letters, shafts small ones");
  }
  static_cast<void>(limits(Length::mm(size.nominal_mm.value_or(0.0)), tolerance_class));
}

SemanticSize wanted_size(const Subject& subject, const FoundFeature& feature, const std::string& id,
                         const std::string& words) {
  SemanticSize size = parse_size(words, LengthUnit::mm);
  if (size.characteristic == SizeCharacteristic::radius) {
    throw mistake(fmt::format("'{}'", words), "is a radius", "write the diameter");
  }
  if (!size.nominal_mm && !size.limits) {
    size.nominal_mm = modelled_size(subject, feature, id).in_mm();
  }
  refuse_wrong_class(subject, feature, size);
  size.characteristic =
      feature.kind == FeatureKind::width ? SizeCharacteristic::width : SizeCharacteristic::diameter;
  size.product = feature.product;
  size.features = {{feature.kind, feature.index}};
  if (const std::string doubt = doubt_about(subject.result.look.model, size); !doubt.empty()) {
    throw mistake(fmt::format("'{}'", words),
                  fmt::format("can not be the size of '{}': {}", id, doubt),
                  "see sbfeatures for what the model has");
  }
  return size;
}

}  // namespace

Json class_command(Session& session, const Arguments& arguments) {
  arguments.expect(2, 3);
  const Subject& found = session.document_subject(arguments.words()[0]);
  const FoundFeature feature = feature_named(found, arguments.words()[1]);
  const std::string id = id_of(found.result.look.model, feature);
  if (arguments.has("-remove")) {
    arguments.expect(2, 2);
    return {{"removed", remove_sizes(found, id)}};
  }
  if (arguments.words().size() == 3) {
    set_size(found, {id}, wanted_size(found, feature, id, arguments.words()[2]));
  } else {
    static_cast<void>(modelled_size(found, feature, id));
  }
  const Json list = entries(found, id);
  return list.empty() ? Json::object() : list.front();
}

Json classes_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 1);
  return entries(session.document_subject(arguments.words()[0]), {});
}

}  // namespace spotblue::plugin
