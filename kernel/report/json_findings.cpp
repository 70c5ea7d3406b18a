#include "report/json_parts.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

void quantities_field(JsonWriter& out, std::string_view key,
                      const std::vector<Quantity>& quantities) {
  if (quantities.empty()) {
    return;
  }
  out.key(key);
  out.open_object();
  for (const Quantity& quantity : quantities) {
    out.key(quantity.key);
    if (const auto* const number = std::get_if<double>(&quantity.value)) {
      out.number(*number);
    } else {
      out.text(std::get<std::string>(quantity.value));
    }
  }
  out.close_object();
}

void write_finding(JsonWriter& out, const Finding& finding) {
  out.open_object();
  field(out, "id", finding.id);
  field(out, "kind", finding.kind);
  out.key("about");
  out.open_array();
  for (const std::string& id : finding.about) {
    out.text(id);
  }
  out.close_array();
  field(out, "outcome", outcome_name(finding.outcome));
  quantities_field(out, "wanted", finding.wanted);
  quantities_field(out, "found", finding.found);
  quantities_field(out, "margin", finding.margin);
  field(out, "basis", finding.basis);
  field(out, "advice", finding.advice);
  field(out, "caution", finding.caution);
  out.close_object();
}

void write_part(JsonWriter& out, const JobPart& part) {
  out.open_object();
  field(out, "part", part.part);
  field(out, "material", part.material);
  field(out, "state", std::string_view(part.state == PartState::as_found ? "as found" : "to make"));
  field(out, "sizes", std::string_view(part.sizes == SizesMeant::basic ? "basic" : "actual"));
  out.key("irreplaceable");
  out.truth(part.irreplaceable);
  out.close_object();
}

}  // namespace

void write_job(JsonWriter& out, const Job& job) {
  out.key("job");
  out.open_object();
  field(out, "file", job.file);
  field(out, "model", shown_name(job.model));
  field(out, "title", job.title);
  field(out, "unit", unit_name(job.unit));
  out.key("parts");
  out.open_array(JsonWriter::Layout::line_each);
  for (const JobPart& part : job.parts) {
    write_part(out, part);
  }
  out.close_array();
  out.close_object();
}

void write_findings(JsonWriter& out, const std::vector<Finding>& findings) {
  out.open_array(JsonWriter::Layout::line_each);
  for (const Finding& finding : findings) {
    write_finding(out, finding);
  }
  out.close_array();
}

void write_outcomes(JsonWriter& out, const std::vector<Finding>& findings) {
  const OutcomeCount count = count_outcomes(findings);
  out.key("outcomes");
  out.open_object();
  out.key("conforming");
  out.whole(count.conforming);
  out.key("nonconforming");
  out.whole(count.nonconforming);
  out.key("undecided");
  out.whole(count.undecided);
  out.close_object();
}

}  // namespace spotblue
