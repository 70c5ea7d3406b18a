#include "report/json_members.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue {
namespace {

void write_part(JsonWriter& out, const JobPart& part) {
  out.open_object();
  field(out, "part", part.part);
  field(out, "material", part.material);
  field(out, "state", word_of(part.state));
  field(out, "drawn", word_of(part.drawn));
  out.key("irreplaceable");
  out.truth(part.irreplaceable);
  out.close_object();
}

}  // namespace

void quantities_field(JsonWriter& out, std::string_view key,
                      const std::vector<Quantity>& quantities) {
  if (quantities.empty()) {
    return;
  }
  out.key(key);
  out.open_object();
  for (const Quantity& quantity : quantities) {
    out.key(key_of(quantity));
    if (const double* const number = number_in(quantity)) {
      out.number(*number);
    } else {
      out.text(text_of(std::get<Saying>(quantity.value)));
    }
  }
  out.close_object();
}

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

void write_outcomes(JsonWriter& out, const std::vector<Finding>& findings) {
  out.key("outcomes");
  out.open_object();
  write_members(out, count_outcomes(findings));
  out.close_object();
}

}  // namespace spotblue
