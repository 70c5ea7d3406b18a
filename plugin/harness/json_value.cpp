#include "plugin/harness/json_value.hpp"

#include <nlohmann/json.hpp>
#include <variant>

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

Json json_of(const Value::List& list) {
  Json all = Json::array();
  for (const Value& one : list) {
    all.push_back(json_of(one));
  }
  return all;
}

namespace {

struct AsJson {
  template <typename Plain>
  Json operator()(const Plain& value) const {
    return value;
  }
  Json operator()(const Value::List& list) const { return json_of(list); }
  Json operator()(const Value::Object& object) const {
    Json all = Json::object();
    for (const Member& one : object) {
      all[one.key] = json_of(one.value);
    }
    return all;
  }
};

}  // namespace

Json json_of(const Value& value) { return std::visit(AsJson(), value.held); }

}  // namespace spotblue::plugin
