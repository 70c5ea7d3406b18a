#pragma once
// Colours in a document: of the faces of seats, and of parts that foul.

#include <TDocStd_Document.hxx>
#include <cstddef>
#include <nlohmann/json_fwd.hpp>

#include "plugin/subject/subject.hpp"

namespace spotblue::plugin {

/// Gives what carries a colour of ours the colour back that it had, unless it was coloured anew
/// since; colours that the table has for marks only go.
/// @return how many faces and parts were marked.
/// @throws Error bad_input when the document may not be changed.
std::size_t clear_marks(const Handle(TDocStd_Document) & document);

/// Colours what marks_of() says. Throws as clear_marks.
/// @return what was marked as what, with the entries of its labels.
nlohmann::ordered_json set_marks(const Subject& subject);

}  // namespace spotblue::plugin
