// Products that stand in another's shape by MAPPED_ITEM, with no usage to say so.

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "geometry/part21/step_text.hpp"
#include "geometry/read/written_step.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::test::mapped_parts_test {

struct Edit {
  std::size_t begin = 0, end = 0;
  std::string text;
};

// The stand with each usage written as a mapped item in the assembly's representation.
std::string stand_by_mapped_items(const std::string& step) {
  const StepText text(step, "stand.step", {});
  std::vector<Edit> edits;
  std::map<int, std::string> more_items;  // of an assembly's representation
  int next = 90'000;
  std::string lines;
  const auto remove = [&](const StepText::Entity& entity) {
    const std::size_t begin = step.rfind('#', entity.begin);
    edits.push_back({begin, step.find(';', entity.begin) + 1, ""});
  };
  for (const StepText::Entity& entity : text.entities()) {
    const auto placing = text.arguments(entity, "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION");
    if (!placing) {
      continue;
    }
    const StepText::Entity& relation = *text.find(*reference((*placing)[0]));
    const StepText::Entity& shape = *text.find(*reference((*placing)[1]));
    const StepText::Entity& usage = *text.find(*reference((*text.arguments(shape))[2]));
    const auto ends = *text.arguments(relation, "REPRESENTATION_RELATIONSHIP");
    const StepText::Entity& pair = *text.find(*reference(
        (*text.arguments(relation, "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION"))[0]));
    const auto axes = *text.arguments(pair);
    // The component's representation and axes, then the assembly's.
    lines += fmt::format("#{}=REPRESENTATION_MAP({},{});\n", next, axes[2], ends[2]);
    lines += fmt::format("#{}=MAPPED_ITEM('',#{},{});\n", next + 1, next, axes[3]);
    more_items[*reference(ends[3])] += fmt::format(",#{}", next + 1);
    next += 2;
    for (const StepText::Entity* gone : {&entity, &relation, &shape, &usage, &pair}) {
      remove(*gone);
    }
  }
  for (const auto& [representation, items] : more_items) {
    const StepText::Entity& entity = *text.find(representation);
    const std::size_t list = step.find('(', step.find('(', entity.begin) + 1);
    const std::size_t close = step.find(')', list);
    edits.push_back({close, close, items});
  }
  std::sort(edits.begin(), edits.end(),
            [](const Edit& a, const Edit& b) { return a.begin > b.begin; });
  std::string changed = step;
  for (const Edit& edit : edits) {
    changed.replace(edit.begin, edit.end - edit.begin, edit.text);
  }
  return with_lines(changed, lines);
}

std::multiset<std::string> places(const Model& model) {
  std::multiset<std::string> all;
  for (const Occurrence& one : model.occurrences) {
    std::string text = model.products[one.product].id;
    for (const auto& row : one.frame.rows) {
      for (const double value : row) {
        text += fmt::format(" {:.6f}", value + 0.0 == 0.0 ? 0.0 : value);
      }
    }
    all.insert(text);
  }
  return all;
}

TEST(MappedParts, StandWhereUsagesWouldPutThem) {
  for (const char* const unit : {"MM", "INCH"}) {
    const Folder folder;
    const std::string step = stand_step(unit, "AP214IS");
    const std::string mapped = stand_by_mapped_items(step);
    ASSERT_EQ(mapped.find("NEXT_ASSEMBLY_USAGE_OCCURRENCE"), std::string::npos);
    const Model wanted =
        read_step(folder.write("stand.step", step), {}, Completeness::all_or_error);
    const Model found =
        read_step(folder.write("mapped.step", mapped), {}, Completeness::all_or_error);
    EXPECT_EQ(found.occurrences.size(), 7U) << "the stand has 7 bodies at their places";
    EXPECT_EQ(places(found), places(wanted)) << unit;
    EXPECT_TRUE(std::all_of(found.occurrences.begin(), found.occurrences.end(),
                            [](const Occurrence& one) { return one.path.starts_with("Stand/"); }));
  }
}

}  // namespace spotblue::test::mapped_parts_test
