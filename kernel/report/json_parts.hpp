#pragma once
/// @file
/// The pieces a JSON result is made of; each writes one key and its value into an open object,
/// unless it says otherwise.

#include "report/json_writer.hpp"
#include "report/model_names.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// "key": 1.5
inline void field(JsonWriter& out, std::string_view key, double value) {
  out.key(key);
  out.number(value);
}
/// "key": "text", or nothing at all for an empty text.
inline void field(JsonWriter& out, std::string_view key, std::string_view text) {
  if (!text.empty()) {
    out.key(key);
    out.text(text);
  }
}
/// rad in, degrees out.
void angle_field(JsonWriter& out, std::string_view key, double rad);
void point_field(JsonWriter& out, std::string_view key, const Point& point);

void axis_field(JsonWriter& out, std::string_view key, const Line& axis);
void frame_field(JsonWriter& out, std::string_view key, const Frame& frame);
/// What is quoted already.
void quoted_field(JsonWriter& out, std::string_view key, std::string_view quoted);
/// The ids of an occurrence and its product, of a feature also that of its own.
void place_field(JsonWriter& out, std::string_view key, OccurrenceId occurrence,
                 const ModelNames& names);
void feature_field(JsonWriter& out, std::string_view key, const FeatureRef& ref,
                   const ModelNames& names);
/// The same in an array.
void feature_object(JsonWriter& out, const FeatureRef& ref, const ModelNames& names);
/// Nothing at all where there are none.
void quantities_field(JsonWriter& out, std::string_view key,
                      const std::vector<Quantity>& quantities);

void write_settings(JsonWriter& out, const LookSettings& settings);
void write_products(JsonWriter& out, const Model& model, const ModelNames& names);
/// Sizes that the file states on faces.
void write_stated_sizes(JsonWriter& out, const Model& model, const ModelNames& names);
void write_job(JsonWriter& out, const Job& job);
/// How many there are of each outcome.
void write_outcomes(JsonWriter& out, const std::vector<Finding>& findings);

}  // namespace spotblue
