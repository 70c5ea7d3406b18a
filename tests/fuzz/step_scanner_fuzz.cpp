// The scan of STEP text: blanks and comments between its tokens change nothing.

#include "fuzz/fuzzing.hpp"
#include "geometry/part21/step_letters.hpp"
#include "geometry/part21/step_plain.hpp"
#include "geometry/part21/step_scanner.hpp"
#include "geometry/part21/step_token.hpp"

using namespace spotblue;

namespace {

const std::string kFile = "fuzzed.step";

// The text with a comment behind each token.
std::string spaced_out(std::string_view text) {
  std::string spaced;
  for (std::size_t at = skip_blank(text, 0); at < text.size();) {
    const std::size_t next = next_token(text, at);
    fuzz::demand(next > at, "each token is at least one letter");
    spaced += text.substr(at, next - at);
    spaced += " /* ( ' , ; */\n";
    at = next;
  }
  return spaced;
}

void demand_same_entities(std::string_view text, const ScannedText& scanned,
                          const std::string& other) {
  const ScannedText again = scan_step(other, kFile, ReadLimits{});
  fuzz::demand(again.entities.size() == scanned.entities.size(), "comments hide no entity");
  for (std::size_t i = 0; i < scanned.entities.size(); ++i) {
    fuzz::demand(again.entities[i].id == scanned.entities[i].id, "comments renumber nothing");
    fuzz::demand(i == 0 || scanned.entities[i - 1].id < scanned.entities[i].id,
                 "entities are in the order of their numbers");
    fuzz::demand(scanned.entities[i].begin < text.size(), "entities are in the text");
  }
}

void read(std::string_view text) {
  const ScannedText scanned = scan_step(text, kFile, ReadLimits{});
  demand_same_entities(text, scanned, spaced_out(text));
  if (const auto plain = plain_step(text)) {
    demand_same_entities(text, scanned, *plain);
    fuzz::demand(!plain_step(*plain), "plain text is plain");
  }
}

}  // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text = fuzz::text_of(data, size);
  fuzz::only_clear_errors(kFile, [&] { read(text); });
  const std::string coded = with_coded_letters(text);
  fuzz::demand(with_coded_letters(coded) == coded, "coded letters stay as they are");
  if (const auto converted = in_utf8(text)) {
    fuzz::demand(!in_utf8(*converted), "what was put into UTF-8 is UTF-8");
  }
  (void)decoded_letters(text);
  return 0;
}
