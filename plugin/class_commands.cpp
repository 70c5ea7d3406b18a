// Commands about tolerance classes in the document.

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "commands.hpp"
#include "document_sizes.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

struct SizedClass {
  Length nominal;
  std::string tolerance_class;
};

/// "H7" on the size that was modelled, or "38 H7".
SizedClass parse_class(const std::string& text, Length modelled) {
  const std::size_t blank = text.find_last_of(' ');
  if (blank == std::string::npos) {
    return {modelled, text};
  }
  return {parse_length(text.substr(0, blank), LengthUnit::mm), text.substr(blank + 1)};
}

Length modelled_size(const Subject& subject, const FoundFeature& feature, const std::string& id) {
  const Product& product = subject.look.model.products[feature.product];
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
  const Product& product = subject.look.model.products[feature.product];
  const Side side = feature.kind == FeatureKind::cylinder ? product.cylinders[feature.index].side
                                                          : product.widths[feature.index].side;
  return side == Side::internal ? SizeKind::hole : SizeKind::shaft;
}

Json as_json(const DocumentSize& size) {
  Json entry{{"feature", size.feature},
             {"class", size.tolerance_class},
             {"nominal_mm", size.nominal.in_mm()}};
  if (!size.tolerance_class.empty()) {
    try {
      const Limits allowed = limits(size.nominal, size.tolerance_class);
      entry["lower_mm"] = allowed.lower.in_mm();
      entry["upper_mm"] = allowed.upper.in_mm();
    } catch (const Error& error) {
      entry["trouble"] = error.what();  // a class that someone else wrote and no standard has
    }
  }
  entry["faces"] = size.faces.size();
  return entry;
}

Json entries(const Subject& subject, const std::string& feature) {
  Json list = Json::array();
  for (const DocumentSize& size : sizes_in(subject)) {
    if (feature.empty() || size.feature == feature) {
      list.push_back(as_json(size));
    }
  }
  return list;
}

/// As sbfeatures writes it, whichever name of the part it was asked by.
std::string full_name(const Subject& subject, const FoundFeature& feature, const std::string& id) {
  return subject.look.model.products[feature.product].id + id.substr(id.rfind(": "));
}

}  // namespace

Json class_command(const Arguments& arguments) {
  arguments.expect(2, 3);
  const Subject& found = document_subject(arguments.words()[0]);
  const FoundFeature feature = feature_named(found, arguments.words()[1]);
  const std::string id = full_name(found, feature, arguments.words()[1]);
  if (arguments.has("-remove")) {
    return {{"removed", remove_classes(found, id)}};
  }
  const Length modelled = modelled_size(found, feature, id);
  if (arguments.words().size() == 3) {
    const SizedClass wanted = parse_class(arguments.words()[2], modelled);
    if (size_kind(wanted.tolerance_class) != kind_of(found, feature)) {
      throw mistake(wanted.tolerance_class,
                    fmt::format("is no class for {}", kind_of(found, feature) == SizeKind::hole
                                                          ? "a hole or a slot"
                                                          : "a shaft or a key"),
                    "holes have capital letters, shafts small ones");
    }
    static_cast<void>(limits(wanted.nominal, wanted.tolerance_class));  // refuses what none has
    set_class(found, id, wanted.nominal, wanted.tolerance_class);
  }
  const Json list = entries(found, id);
  return list.empty() ? Json::object() : list.front();
}

Json classes_command(const Arguments& arguments) {
  arguments.expect(1, 1);
  return entries(document_subject(arguments.words()[0]), {});
}

}  // namespace spotblue::plugin
