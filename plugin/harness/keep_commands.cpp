// Commands that put findings into the document and read them back.

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/session.hpp"
#include "plugin/subject/document_findings.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

Json keep_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 1);
  const Subject& found = session.document_subject(arguments.words()[0]);
  if (!found.checked) {
    throw mistake(fmt::format("'{}'", found.name), "was not checked yet, or has changed since",
                  fmt::format("run sbcheck {} JOB.toml", found.name));
  }
  const std::size_t notes = keep_findings(found);
  return {{"findings", found.result.findings.size()}, {"notes", notes}};
}

Json kept_command(Session& /*session*/, const Arguments& arguments) {
  arguments.expect(1, 1);
  return kept_findings(document_named(arguments.words()[0]));
}

}  // namespace spotblue::plugin
