// The command that colours what was found.

#include <nlohmann/json.hpp>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/session.hpp"
#include "plugin/subject/document_marks.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

Json mark_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 1);
  const Subject& found = session.document_subject(arguments.words()[0]);
  const std::size_t cleared = clear_marks(found.document);
  return arguments.has("-off") ? Json{{"cleared", cleared}} : set_marks(found);
}

}  // namespace spotblue::plugin
