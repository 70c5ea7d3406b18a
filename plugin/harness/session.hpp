#pragma once
// What the plug-in knows of the documents and shapes that the harness holds.

#include <TDocStd_Document.hxx>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "plugin/harness/command.hpp"
#include "plugin/subject/subject.hpp"

class Draw_Interpretor;

namespace spotblue::plugin {

/// What was looked at in one interpreter, and what the viewer shows of it. Names are those of XDE
/// documents, or Tcl lists of names of shapes.
class Session {
 public:
  /// The subject of that name. Looks at it when that was not done yet, or when its shapes have
  /// changed since or another document has the name; what was checked is forgotten when the sizes
  /// have changed.
  /// @throws Error bad_input when the name is neither.
  const Subject& subject(const std::string& name);

  /// The same, looked at anew: for what has changed since.
  const Subject& look_anew(const std::string& name, const LookSettings& settings);

  /// The same, looked at anew and judged by the job, or by the sizes that the document states.
  /// @throws Error bad_input also for shapes without a job, and a document that states no size.
  const Subject& check_anew(const std::string& name, const std::optional<Job>& job,
                            const LookBounds& bounds);

  /// subject() for what only a document can hold.
  /// @throws Error bad_input also when the name is that of shapes.
  const Subject& document_subject(const std::string& name);

  std::vector<std::string> displayed;  ///< names in the viewer of what sbshow put there

 private:
  std::map<std::string, Subject> subjects_;
};

/// The interpreter's own, which ends with it.
[[nodiscard]] Session& session_of(Draw_Interpretor& interpreter);

/// What -seconds and -memory of a command say.
/// @throws Error bad_input for what is no number.
[[nodiscard]] LookBounds bounds_in(const Arguments& arguments);

/// The XDE document of that name, without a look at it.
/// @throws Error bad_input when there is none.
[[nodiscard]] Handle(TDocStd_Document) document_named(const std::string& name);

/// @throws Error bad_input naming the nearest feature.
[[nodiscard]] FoundFeature feature_named(const Subject& subject, const std::string& id);

}  // namespace spotblue::plugin
