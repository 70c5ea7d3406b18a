#include "report/described_schema.hpp"

#include <algorithm>
#include <cmath>
#include <concepts>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <stdexcept>
#include <vector>

#include "report/json_members.hpp"

namespace spotblue::test {
namespace {

using Json = nlohmann::ordered_json;

Json reference_to(const char* definition) {
  return {{"$ref", std::string("#/$defs/") + definition}};
}

// How a type of member is said.
template <class M>
struct Form;
template <bool always>
struct Copied {
  static constexpr bool kAlways = always;
  static constexpr bool kNamed = false;
};
// Said in another form, or by a name in place of its number: what that means stands in the schema.
struct Named {
  static constexpr bool kAlways = true;
  static constexpr bool kNamed = true;
};
template <>
struct Form<FeatureRef> : Named {
  static Json json() { return reference_to("place_feature"); }
};
template <>
struct Form<OccurrenceId> : Named {
  static Json json() { return reference_to("place"); }
};
template <>
struct Form<ProductId> : Named {
  static Json json() { return reference_to("text"); }
};
template <>
struct Form<CentreLineId> : Named {
  static Json json() { return reference_to("text"); }
};
template <>
struct Form<double> : Copied<true> {
  static Json json() { return {{"type", "number"}}; }
};
template <>
struct Form<int> : Copied<true> {
  static Json json() { return {{"type", "integer"}}; }
};
template <>
struct Form<JobLine> : Form<int> {};
template <>
struct Form<std::size_t> : Copied<true> {
  static Json json() { return {{"type", "integer"}, {"minimum", 0}}; }
};
template <>
struct Form<bool> : Copied<true> {
  static Json json() { return {{"type", "boolean"}}; }
};
template <>
struct Form<Point> : Copied<true> {
  static Json json() { return reference_to("point"); }
};
template <>
struct Form<Direction> : Form<Point> {};
template <>
struct Form<Line> : Copied<true> {
  static Json json() { return reference_to("axis"); }
};
template <>
struct Form<Interval> : Copied<true> {
  static Json json() { return reference_to("range"); }
};
template <>
struct Form<SizeStates> : Copied<true> {
  static Json json() { return reference_to("size_states"); }
};
template <>
struct Form<std::vector<Interval>> : Copied<true> {
  static Json json() { return reference_to("intervals"); }
};
template <>
struct Form<std::vector<OccurrenceId>> : Named {
  static Json json() { return {{"type", "array"}}; }
};
template <>
struct Form<std::vector<FeatureRef>> : Copied<true> {
  static Json json() { return {{"type", "array"}, {"items", reference_to("place_feature")}}; }
};
template <>
struct Form<std::vector<DiameterAt>> : Named {
  static constexpr bool kAlways = false;
  static Json json() { return {{"type", "array"}}; }
};
template <class E>
requires std::is_enum_v<E>
struct Form<E> : Copied<true> {
  static Json json() { return {{"enum", kWordsOf<E>.all}}; }
};
template <>
struct Form<Frame> : Copied<true> {
  static Json json() { return {{"type", "array"}}; }
};
template <>
struct Form<std::vector<std::string>> : Copied<true> {
  static Json json() { return {{"type", "array"}}; }
};
template <>
struct Form<std::string> : Copied<false> {
  static Json json() { return reference_to("text"); }
};
template <>
struct Form<Saying> : Form<std::string> {};
template <>
struct Form<std::vector<Reference>> : Form<std::vector<std::string>> {};
template <>
struct Form<std::vector<Quantity>> : Copied<false> {
  static Json json() { return reference_to("quantities"); }
};
template <class M>
struct Form<std::optional<M>> : Form<M> {
  static constexpr bool kAlways = false;
};

template <class M>
inline constexpr bool kIsNumber = std::is_same_v<M, double> || std::is_same_v<M, int>;
template <class M>
inline constexpr bool kIsNumber<std::optional<M>> = kIsNumber<M>;

struct Key {
  std::string name;
  Json form;
  std::string meaning;  // none: as the schema has it
  bool always = true;
  bool text = false;
  bool number = false;
  std::optional<NumberRange> range{};
};

template <class T>
class SchemaMembers {
 public:
  SchemaMembers& value(const char* /*name*/, const char* /*document*/) { return *this; }
  template <class M>
  SchemaMembers& member(const char* name, M T::*member, const char* document) {
    last_said_ = is_said<T>(name);
    if (last_said_) {
      add(name, member, document);
    }
    return *this;
  }
  SchemaMembers& degrees(const char* name, double T::*member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  SchemaMembers& or_0(const char* name, M T::*member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  SchemaMembers& held(M /*member*/) {
    return *this;
  }
  SchemaMembers& range(const NumberRange& numbers) {
    if (last_said_) {
      keys_.back().range = numbers;
    }
    return *this;
  }
  template <class Get>
  SchemaMembers& derived(const char* /*name*/, Get /*get*/, const char* /*document*/) {
    return *this;
  }
  [[nodiscard]] const std::vector<Key>& keys() const { return keys_; }

 private:
  template <class M>
  void add(const char* name, M T::* /*member*/, const char* document) {
    if constexpr (kSaidByItsOwn<T, M>) {
      SchemaMembers<M> own;
      describe_value<M>(own);
      keys_.insert(keys_.end(), own.keys().begin(), own.keys().end());
    } else if constexpr (requires { Form<M>::json(); }) {
      const bool above_0 = is_said_above_0(name);
      const char* const unit = std::same_as<M, std::vector<DiameterAt>> ? "_mm" : "";
      keys_.push_back({std::string(name) + unit, Form<M>::json(),
                       Form<M>::kNamed || above_0 ? "" : document, Form<M>::kAlways && !above_0,
                       std::same_as<M, std::string> || std::same_as<M, Saying>, kIsNumber<M>});
    } else {
      throw std::logic_error(std::string(name) + " has no form in the schema");
    }
  }
  void add(const char* /*name*/, std::optional<ClearanceRange> T::* /*member*/,
           const char* /*document*/) {
    SchemaMembers<ClearanceRange> range;
    describe_value<ClearanceRange>(range);
    for (Key key : range.keys()) {
      key.name = "clearance_" + key.name;
      key.always = false;
      keys_.push_back(key);
    }
  }

  std::vector<Key> keys_;
  bool last_said_ = false;
};

Json shown_number(double number) {
  const auto whole = static_cast<std::int64_t>(number);
  return static_cast<double>(whole) == number ? Json(whole) : Json(number);
}

void describe_range(Json& said, const Key& key) {
  Json limits;
  if (is_said_above_0(key.name)) {
    limits[key.form["type"] == "integer" ? "minimum" : "exclusiveMinimum"] =
        key.form["type"] == "integer" ? 1 : 0;
  } else if (key.range) {
    constexpr double kRounding = 1e-7;  // of an angle, which is held in rad
    limits[key.range->least_too ? "minimum" : "exclusiveMinimum"] = shown_number(key.range->least);
    if (std::isfinite(key.range->greatest)) {
      limits["maximum"] =
          shown_number(key.range->greatest + (key.name.ends_with("_deg") ? kRounding : 0.0));
    }
  }
  for (const char* limit : {"minimum", "exclusiveMinimum", "maximum", "exclusiveMaximum"}) {
    if (limits.contains(limit)) {
      said[limit] = limits[limit];
    } else {
      said.erase(limit);
    }
  }
}

void describe_key(Json& said, const Key& key) {
  if (said.is_null() || !key.text) {
    said.update(key.form);
  }
  if (!key.meaning.empty()) {
    said["description"] = key.meaning;
  }
  if (key.number) {
    describe_range(said, key);
  }
}

// Keys that are no members, before and behind those that are.
struct ByHand {
  std::vector<std::string> first{};
  std::vector<std::string> last{};
};

template <class T>
void describe_object(Json& object, const ByHand& by_hand = {}) {
  const Json before = object["properties"];
  const Json required = object["required"];
  Json after = Json::object();
  Json always = Json::array();
  const auto was_required = [&required](const std::string& name) {
    return std::find(required.begin(), required.end(), Json(name)) != required.end();
  };
  const auto keep = [&](const std::vector<std::string>& names) {
    for (const std::string& name : names) {
      after[name] = before.at(name);
      if (was_required(name)) {
        always.push_back(name);
      }
    }
  };
  keep(by_hand.first);
  SchemaMembers<T> members;
  describe_value<T>(members);
  for (const Key& key : members.keys()) {
    after[key.name] = before.value(key.name, Json::object());
    describe_key(after[key.name], key);
    if (key.always || (key.text && was_required(key.name))) {
      always.push_back(key.name);
    }
  }
  keep(by_hand.last);
  object["properties"] = after;
  object["required"] = always;
}

void describe_lists(Json& results) {
  const auto each_of = [&results](const char* list) -> Json& { return results[list]["items"]; };
  describe_object<Product>(each_of("products"), {{}, {"features"}});
  describe_object<Occurrence>(each_of("occurrences"));
  describe_object<CentreLine>(each_of("centre_lines"));
  describe_object<RadialSeat>(each_of("radial_seats"));
  describe_object<AxialSeat>(each_of("axial_seats"));
  describe_object<TaperSeat>(each_of("taper_seats"));
  describe_object<WidthSeat>(each_of("width_seats"));
  describe_object<Thread>(each_of("threads"));
  describe_object<Foul>(each_of("fouls"));
  describe_object<Contact>(each_of("contacts"));
  describe_object<Note>(each_of("notes"));
  describe_object<Note>(each_of("not_looked_at"));
  describe_object<Body>(each_of("bodies"));
  describe_object<Joint>(each_of("joints"));
  describe_object<TurningBody>(each_of("turning"));
  describe_object<Bearing>(each_of("bearings"));
  describe_object<ThrustFace>(each_of("thrust_faces"));
  describe_object<SeatStates>(each_of("seat_states"));
  describe_object<GroupStop>(each_of("stops"));
  describe_object<Finding>(each_of("findings"));
}

// Of values that are written by hand.
void describe_words(Json& results) {
  const auto say = [](Json& list, const char* key, const Json& form) {
    list["items"]["properties"][key].update(form);
  };
  say(results["semantic_sizes"], "of", Form<SizeCharacteristic>::json());
  Json& parts = results["job"]["properties"]["parts"];
  say(parts, "state", Form<PartState>::json());
  say(parts, "drawn", Form<Drawn>::json());
}

std::string on_one_line(const Json& json) {
  if (!json.is_structured()) {
    return json.dump();
  }
  std::string text;
  for (const auto& [key, value] : json.items()) {
    text += text.empty() ? "" : ", ";
    text += json.is_object() ? Json(key).dump() + ": " : "";
    text += on_one_line(value);
  }
  return json.is_object() ? "{" + text + "}" : "[" + text + "]";
}

// On one line where it fits behind what stands before it there.
std::string laid_out(const Json& json, const std::string& before, std::size_t depth) {
  constexpr std::size_t kWidest = 116;
  const std::string line = on_one_line(json);
  if (!json.is_structured() || before.size() + line.size() < kWidest) {
    return before + line;
  }
  std::string text = before + (json.is_object() ? "{" : "[");
  const char* between = "\n";
  for (const auto& [key, value] : json.items()) {
    const std::string start = json.is_object() ? Json(key).dump() + ": " : "";
    text += between + laid_out(value, std::string(depth + 1, ' ') + start, depth + 1);
    between = ",\n";
  }
  return text + "\n" + std::string(depth, ' ') + (json.is_object() ? "}" : "]");
}

}  // namespace

std::string described_schema(const std::string& schema) {
  Json whole = Json::parse(schema);
  Json& results = whole["properties"];
  describe_object<FileInfo>(results["file"]);
  describe_object<SeatSettings>(results["settings"], {{}, {"limits", "accept_partial"}});
  describe_object<ReadLimits>(results["settings"]["properties"]["limits"]);
  describe_object<LookSeconds>(results["seconds"]);
  describe_object<OutcomeCount>(results["outcomes"]);
  describe_lists(results);
  describe_words(results);
  describe_object<Cylinder>(whole["$defs"]["cylinder"], {{"id", "kind"}, {"deviation_mm"}});
  describe_object<Cone>(
      whole["$defs"]["cone"],
      {{"id", "kind", "small_mm", "large_mm", "half_angle_deg"}, {"deviation_mm"}});
  describe_object<Plane>(whole["$defs"]["plane"],
                         {{"id", "kind", "area_mm2", "axis"}, {"deviation_mm"}});
  describe_object<Width>(whole["$defs"]["width"], {{"id", "kind"}, {"axis"}});
  describe_object<SizeStates>(whole["$defs"]["size_states"]);
  return laid_out(whole, "", 0) + "\n";
}

}  // namespace spotblue::test
