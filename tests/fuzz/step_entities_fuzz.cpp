// What is made of STEP text before Open CASCADE sees it: parts, solids, units, places, files beside
// and the sizes that are added to it.

#include <cmath>

#include "fuzz/fuzzing.hpp"
#include "geometry/part21/step_axes.hpp"
#include "geometry/part21/step_bare.hpp"
#include "geometry/part21/step_declared.hpp"
#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_placement.hpp"
#include "geometry/part21/step_units.hpp"
#include "geometry/write/semantic_text.hpp"

using namespace spotblue;

namespace {

const std::string kFile = "fuzzed.step";

// A class on the first solid of each part; what comes of it must be STEP text again.
void add_sizes(std::string_view text, const StepText& entities, const Declared& declared) {
  std::vector<SizeToWrite> sizes;
  for (const DeclaredPart& part : declared.parts) {
    sizes.push_back({part.name, "bore 20", 20.0, "J7", std::nullopt});
    sizes.push_back({part.name, "outside 'a'\\b", 12.0, "", SizeLimits{-0.1, 0.0}});
  }
  std::vector<PlacedSize> placed;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const DeclaredPart& part = declared.parts[i / 2];
    placed.push_back({&sizes[i], SizeCharacteristic::diameter, part.entity, *part.solid_entities,
                      *part.solid_entities});
  }
  const std::string more = with_sizes(text, entities, placed, LengthUnit::inch, kFile);
  const StepText again(more, kFile, ReadLimits{});
  fuzz::demand(placed.empty() || again.entities().size() > entities.entities().size(),
               "sizes are added");
}

void read(std::string_view text) {
  ReadLimits limits;
  limits.nesting_depth = 50;
  limits.occurrences = 10'000;
  const StepText entities(text, kFile, limits);
  for (const StepText::Entity& entity : entities.entities()) {
    const auto arguments = entities.arguments(entity);
    fuzz::demand(arguments.has_value() || text[entity.begin] == '(', "a simple entity has values");
    fuzz::demand(entities.find(entity.id) == &entity, "each entity is found");
    for (const std::string_view argument : arguments.value_or(std::vector<std::string_view>())) {
      (void)quoted(argument);
      (void)references(argument);
    }
  }
  (void)axis_faults(entities);
  const Declared declared = read_declared(entities, kFile, limits);
  double solids = 0.0;
  for (const DeclaredPart& part : declared.parts) {
    fuzz::demand(std::isfinite(part.solids * part.occurrences), "counts are numbers");
    solids += part.solids * part.occurrences;
  }
  fuzz::demand(solids <= limits.occurrences, "limits are kept");
  const RepresentationOwners owners = representation_owners(entities);
  (void)read_placements(entities, owners);
  (void)unit_faults(entities, owners);
  (void)bare_parts(entities, declared);
  add_sizes(text, entities, declared);
}

}  // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::only_clear_errors(kFile, [&] { read(fuzz::text_of(data, size)); });
  return 0;
}
