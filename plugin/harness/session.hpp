#pragma once
// What the plug-in knows of the documents and shapes that the harness holds.

#include <TDocStd_Document.hxx>
#include <string>

#include "plugin/harness/command.hpp"
#include "plugin/subject/subject.hpp"

namespace spotblue::plugin {

/// The subject of that name: an XDE document, or a Tcl list of names of shapes. Looks at it when
/// that was not done yet, or when its shapes have changed since or another document has the name;
/// what was checked is forgotten when the sizes have changed.
/// @throws Error bad_input when the name is neither.
Subject& subject(const std::string& name);

/// The same, looked at anew: for what has changed since.
Subject& look_anew(const std::string& name, const LookSettings& settings);

/// What -seconds and -memory of a command say.
/// @throws Error bad_input for what is no number.
[[nodiscard]] LookBounds bounds_in(const Arguments& arguments);

/// subject() for what only a document can hold.
/// @throws Error bad_input also when the name is that of shapes.
Subject& document_subject(const std::string& name);

/// The XDE document of that name, without a look at it.
/// @throws Error bad_input when there is none.
[[nodiscard]] Handle(TDocStd_Document) document_named(const std::string& name);

/// @throws Error bad_input naming the nearest feature.
[[nodiscard]] FoundFeature feature_named(const Subject& subject, const std::string& id);

}  // namespace spotblue::plugin
