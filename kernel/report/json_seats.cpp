#include "report/json_parts.hpp"

namespace spotblue {
void quoted_field(JsonWriter& out, std::string_view key, std::string_view quoted) {
  out.key(key);
  out.quoted(quoted);
}

void place_field(JsonWriter& out, std::string_view key, OccurrenceId occurrence,
                 const ModelNames& names) {
  out.key(key);
  out.open_object();
  quoted_field(out, "occurrence", names.occurrence(occurrence));
  quoted_field(out, "product", names.product_of(occurrence));
  out.close_object();
}

void feature_field(JsonWriter& out, std::string_view key, const FeatureRef& ref,
                   const ModelNames& names) {
  out.key(key);
  feature_object(out, ref, names);
}

void feature_object(JsonWriter& out, const FeatureRef& ref, const ModelNames& names) {
  out.open_object();
  quoted_field(out, "occurrence", names.occurrence(ref.occurrence));
  quoted_field(out, "product", names.product_of(ref.occurrence));
  quoted_field(out, "feature", names.feature(ref));
  out.close_object();
}

void write_stated_sizes(JsonWriter& out, const Model& model, const ModelNames& names) {
  out.key("semantic_sizes");
  out.open_array(JsonWriter::Layout::line_each);
  for (const SemanticSize& size : model.semantic_sizes) {
    out.open_object();
    if (size.entity) {
      out.key("entity");
      out.whole(*size.entity);
    }
    field(out, "name", size.name);
    field(out, "of", size_characteristic_name(size.characteristic));
    if (size.product) {
      quoted_field(out, "product", names.product(*size.product));
    }
    out.key("features");
    out.open_array();
    for (const ProductFeatureRef& feature : size.features) {
      out.quoted(names.feature(*size.product, feature.kind, feature.index));
    }
    out.close_array();
    if (size.nominal_mm) {
      field(out, "nominal_mm", *size.nominal_mm);
    }
    if (size.deviations) {
      field(out, "lower_deviation_mm", size.deviations->lower_mm);
      field(out, "upper_deviation_mm", size.deviations->upper_mm);
    }
    if (size.limits) {
      field(out, "limit_min_mm", size.limits->lower_mm);
      field(out, "limit_max_mm", size.limits->upper_mm);
    }
    field(out, "tolerance_class", size.tolerance_class);
    field(out, "doubt", size.doubt);
    out.close_object();
  }
  out.close_array();
}

}  // namespace spotblue
