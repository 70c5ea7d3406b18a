#pragma once
/// @file
/// Described values as JSON: a key for each member, by its name, in the order of the description.
/// A new member is said without a line here, unless kUnsaid names it.

#include <algorithm>
#include <array>
#include <concepts>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "report/json_parts.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/members.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/group/group.hpp"
#include "spotblue/job/job_line.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue {

/// Members that JSON leaves out, though Python has them.
template <class T>
inline constexpr std::array<std::string_view, 0> kUnsaid{};
template <>
inline constexpr auto kUnsaid<FileInfo> = std::to_array<std::string_view>({"files"});
template <>
inline constexpr auto kUnsaid<ReadLimits> = std::to_array<std::string_view>({"read_in"});
template <>
inline constexpr auto kUnsaid<Cylinder> = std::to_array<std::string_view>(
    {"name", "sized_name", "given", "side", "zero", "patches", "deviation_mm"});
template <>
inline constexpr auto kUnsaid<Cone> =
    std::to_array<std::string_view>({"name", "sized_name", "given", "side", "zero", "patches",
                                     "radius_mm", "half_angle_deg", "deviation_mm"});
template <>
inline constexpr auto kUnsaid<Plane> = std::to_array<std::string_view>(
    {"name", "sized_name", "given", "at", "normal", "u", "outline", "deviation_mm"});
template <>
inline constexpr auto kUnsaid<Width> =
    std::to_array<std::string_view>({"name", "sized_name", "given", "side", "first", "second"});
template <>
inline constexpr auto kUnsaid<Product> = std::to_array<std::string_view>(
    {"faces", "uncertainty_mm", "box", "cylinders", "cones", "planes", "widths", "others"});
template <>
inline constexpr auto kUnsaid<Occurrence> = std::to_array<std::string_view>({"box"});
template <>
inline constexpr auto kUnsaid<RadialSeat> =
    std::to_array<std::string_view>({"axis", "start_mm", "end_mm", "centre_line"});
template <>
inline constexpr auto kUnsaid<AxialSeat> = std::to_array<std::string_view>({"axis"});
template <>
inline constexpr auto kUnsaid<TaperSeat> = std::to_array<std::string_view>({"axis", "centre_line"});
template <>
inline constexpr auto kUnsaid<Thread> = std::to_array<std::string_view>({"offset_mm", "tilt_deg",
                                                                         "axis", "start_mm",
                                                                         "end_mm", "centre_line"});
template <>
inline constexpr auto kUnsaid<Foul> = std::to_array<std::string_view>({"cause"});

template <class T>
constexpr bool is_said(std::string_view name) {
  return std::find(kUnsaid<T>.begin(), kUnsaid<T>.end(), name) == kUnsaid<T>.end();
}

/// A value whose member of type M is said by that member's own members, in its place.
template <class T, class M>
inline constexpr bool kSaidByItsOwn = false;
template <>
inline constexpr bool kSaidByItsOwn<CentreLine, Line> = true;

/// Members that are left out where they are 0.
constexpr bool is_said_above_0(std::string_view name) {
  return name == "fouls_by_mm" || name == "body" || name == "drawn_at";
}

/// The names by which JSON says what the numbers of a look stand for.
struct LookNames {
  const ModelNames& model;
  const List<CentreLine>& centre_lines;
};

template <class T>
void write_members(JsonWriter& out, const T& value, const LookNames* names = nullptr);

/// Writes the members of one value into an open object.
template <class T>
class JsonMembers {
 public:
  /// @param names  of the look that the value is of; none for values that refer to nothing.
  JsonMembers(JsonWriter& out, const T& value, const LookNames* names)
      : out_(out), value_(value), names_(names) {}

  JsonMembers& value(const char* /*name*/, const char* /*document*/) { return *this; }
  template <class M>
  JsonMembers& member(const char* name, M T::*member, const char* /*document*/) {
    if constexpr (kSaidByItsOwn<T, M>) {
      write_members(out_, value_.*member, names_);
    } else if (is_said<T>(name)) {
      say(name, value_.*member);
    }
    return *this;
  }
  JsonMembers& degrees(const char* name, double T::*member, const char* /*document*/) {
    if (is_said<T>(name)) {
      angle_field(out_, name, value_.*member);
    }
    return *this;
  }
  template <class M>
  JsonMembers& or_0(const char* name, M T::*member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  JsonMembers& held(M /*member*/) {
    return *this;
  }
  JsonMembers& range(const NumberRange& /*numbers*/) { return *this; }
  template <class Get>
  JsonMembers& derived(const char* /*name*/, Get /*get*/, const char* /*document*/) {
    return *this;
  }

 private:
  void say(std::string_view key, double number) {
    if (number > 0.0 || !is_said_above_0(key)) {
      field(out_, key, number);
    }
  }
  template <std::integral M>
  void say(std::string_view key, const M& number) {
    if (number > 0 || !is_said_above_0(key)) {
      out_.key(key);
      out_.whole(number);
    }
  }
  void say(std::string_view key, bool truth) {
    out_.key(key);
    out_.truth(truth);
  }
  void say(std::string_view key, const std::string& text) { field(out_, key, text); }
  void say(std::string_view key, const JobLine& line) { say(key, line.number); }
  void say(std::string_view key, const Point& point) {
    if (point != Point{} || !is_said_above_0(key)) {
      point_field(out_, key, point);
    }
  }
  void say(std::string_view key, const Direction& direction) { say(key, Point(direction)); }
  void say(std::string_view key, const Line& axis) { axis_field(out_, key, axis); }
  template <class E>
  requires std::is_enum_v<E>
  void say(std::string_view key, const E& value) { field(out_, key, word_of(value)); }
  void say(std::string_view key, const Interval& range) {
    out_.key(key);
    out_.open_array();
    out_.number(range.low);
    out_.number(range.high);
    out_.close_array();
  }
  void say(std::string_view key, const SizeStates& states) {
    out_.key(key);
    out_.open_object();
    write_members(out_, states, names_);
    out_.close_object();
  }
  void say(std::string_view key, const std::vector<Interval>& stretches) {
    out_.key(key);
    out_.open_array();
    for (const auto& [from, to] : stretches) {
      out_.open_array();
      out_.number(from);
      out_.number(to);
      out_.close_array();
    }
    out_.close_array();
  }
  // Nothing of what is one size.
  void say(std::string_view key, const std::vector<DiameterAt>& sizes) {
    if (sizes.empty()) {
      return;
    }
    out_.key(std::string(key) + "_mm");
    out_.open_array();
    for (const DiameterAt& size : sizes) {
      out_.open_array();
      each_member(size, [this](double number) { out_.number(number); });
      out_.close_array();
    }
    out_.close_array();
  }
  void say(std::string_view key, const Frame& frame) { frame_field(out_, key, frame); }
  void say(std::string_view key, const std::vector<std::string>& texts) {
    out_.key(key);
    out_.open_array();
    for (const std::string& text : texts) {
      out_.text(text);
    }
    out_.close_array();
  }
  void say(std::string_view key, const std::vector<Reference>& references) {
    out_.key(key);
    out_.open_array();
    for (const Reference& reference : references) {
      out_.text(reference.name);
    }
    out_.close_array();
  }
  void say(std::string_view key, const Saying& saying) { field(out_, key, text_of(saying)); }
  void say(std::string_view key, const std::vector<Quantity>& held) {
    quantities_field(out_, key, held);
  }
  // Two keys: clearance_least_mm, clearance_most_mm.
  void say(std::string_view /*key*/, const ClearanceRange& range) {
    field(out_, "clearance_least_mm", range.least);
    field(out_, "clearance_most_mm", range.most);
  }
  template <class M>
  void say(std::string_view key, const std::optional<M>& held) {
    if (held) {
      say(key, *held);
    }
  }

  void say(std::string_view key, ProductId id) { quoted_field(out_, key, names().product(id)); }
  void say(std::string_view key, CentreLineId id) {
    field(out_, key, look_names().centre_lines[id].id);
  }
  void say(std::string_view key, OccurrenceId id) { place_field(out_, key, id, names()); }
  void say(std::string_view key, const std::vector<OccurrenceId>& ids) {
    out_.key(key);
    out_.open_array();
    for (const OccurrenceId id : ids) {
      out_.quoted(names().occurrence(id));
    }
    out_.close_array();
  }
  void say(std::string_view key, const std::vector<FeatureRef>& refs) {
    out_.key(key);
    out_.open_array();
    for (const FeatureRef& ref : refs) {
      feature_object(out_, ref, names());
    }
    out_.close_array();
  }
  void say(std::string_view key, const FeatureRef& ref) { feature_field(out_, key, ref, names()); }

  template <class M>
  void say(std::string_view key, const M& /*of no such kind*/) {
    throw std::logic_error(std::string(key) + " has no form in JSON and is not left out of it");
  }

  [[nodiscard]] const LookNames& look_names() const {
    if (names_ == nullptr) {
      throw std::logic_error("a value that refers to others is written without their names");
    }
    return *names_;
  }
  [[nodiscard]] const ModelNames& names() const { return look_names().model; }

  JsonWriter& out_;
  const T& value_;
  const LookNames* names_;
};

template <class T>
void write_members(JsonWriter& out, const T& value, const LookNames* names) {
  JsonMembers<T> members(out, value, names);
  describe_value<T>(members);
}

template <class T>
void write_object(JsonWriter& out, std::string_view key, const T& value) {
  out.key(key);
  out.open_object();
  write_members(out, value);
  out.close_object();
}

/// An array under `key` with one described value a line.
template <class Values>
void write_values(JsonWriter& out, std::string_view key, const Values& values,
                  const LookNames* names = nullptr) {
  out.key(key);
  out.open_array(JsonWriter::Layout::line_each);
  for (const auto& value : values) {
    out.open_object();
    write_members(out, value, names);
    out.close_object();
  }
  out.close_array();
}

}  // namespace spotblue
