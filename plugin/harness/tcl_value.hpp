#pragma once
// Values of the harness's Tcl interpreter, made from JSON: objects become dicts, arrays lists.

#include <tcl.h>

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

namespace spotblue::plugin {

/// A Tcl value that is counted for as long as this lives.
class TclValue {
 public:
  explicit TclValue(Tcl_Obj* object) : object_(object) { Tcl_IncrRefCount(object_); }
  ~TclValue() { Tcl_DecrRefCount(object_); }
  TclValue(const TclValue&) = delete;
  TclValue& operator=(const TclValue&) = delete;
  TclValue(TclValue&&) = delete;
  TclValue& operator=(TclValue&&) = delete;

  [[nodiscard]] Tcl_Obj* get() const { return object_; }

 private:
  Tcl_Obj* object_;
};

/// Numbers read back to the same double; true and false become 1 and 0, null an empty word.
[[nodiscard]] Tcl_Obj* tcl_from(const nlohmann::ordered_json& value);

/// The words of a Tcl list; the text itself as one word when it is no list.
[[nodiscard]] std::vector<std::string> words_of(const std::string& list);

}  // namespace spotblue::plugin
