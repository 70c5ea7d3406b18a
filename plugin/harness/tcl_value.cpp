#include "plugin/harness/tcl_value.hpp"

#include <nlohmann/json.hpp>

namespace spotblue::plugin {
namespace {

Tcl_Obj* text_value(const std::string& text) {
  return Tcl_NewStringObj(text.c_str(), static_cast<int>(text.size()));
}

}  // namespace

Tcl_Obj* tcl_from(const nlohmann::ordered_json& value) {
  using Kind = nlohmann::json::value_t;
  Tcl_Obj* list = nullptr;
  switch (value.type()) {
    case Kind::object:
      list = Tcl_NewListObj(0, nullptr);
      for (const auto& [key, item] : value.items()) {
        Tcl_ListObjAppendElement(nullptr, list, text_value(key));
        Tcl_ListObjAppendElement(nullptr, list, tcl_from(item));
      }
      return list;
    case Kind::array:
      list = Tcl_NewListObj(0, nullptr);
      for (const auto& item : value) {
        Tcl_ListObjAppendElement(nullptr, list, tcl_from(item));
      }
      return list;
    case Kind::string:
      return text_value(value.get<std::string>());
    case Kind::boolean:
      return Tcl_NewIntObj(value.get<bool>() ? 1 : 0);
    case Kind::number_integer:
    case Kind::number_unsigned:
      return Tcl_NewWideIntObj(value.get<Tcl_WideInt>());
    case Kind::number_float:
      return Tcl_NewDoubleObj(value.get<double>());
    default:
      return Tcl_NewStringObj("", 0);
  }
}

std::vector<std::string> words_of(const std::string& list) {
  int count = 0;
  const char** found = nullptr;
  if (Tcl_SplitList(nullptr, list.c_str(), &count, &found) != TCL_OK) {
    return {list};
  }
  std::vector<std::string> words(found, found + count);
  Tcl_Free(reinterpret_cast<char*>(found));
  return words;
}

}  // namespace spotblue::plugin
