#pragma once
// What is looked for in the text of a .brep file before Open CASCADE reads it.

#include <string_view>

namespace spotblue {

// Open CASCADE's reader takes of "10,01" what it understands, 10, and goes on with what is left.
// Throws Error unreadable, with the line, for a word that is neither a number nor one of the
// format's own, and for a version of the format that Open CASCADE does not know. In one pass.
void check_brep_text(std::string_view text);

}  // namespace spotblue
