#include "geometry/part21/step_usage.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_name.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

struct UsageNode {
  std::vector<int> components;
  int users = 0;
  int depth = 1;
  double occurrences = 0.0;
};

using Graph = std::unordered_map<int, UsageNode>;

Graph read_graph(const StepText& text) {
  Graph graph;
  for (const StepText::Entity& entity : text.entities()) {
    const auto arguments = text.arguments(entity, "NEXT_ASSEMBLY_USAGE_OCCURRENCE");
    if (!arguments || arguments->size() < 5) {
      continue;
    }
    const auto assembly = reference((*arguments)[3]);
    const auto component = reference((*arguments)[4]);
    if (assembly && component) {
      graph[*assembly].components.push_back(*component);
      ++graph[*component].users;
    }
  }
  for (const MappedUsage& usage : mapped_usages(text)) {
    graph[usage.assembly].components.push_back(usage.component);
    ++graph[usage.component].users;
  }
  return graph;
}

std::string shown(const StepText& text, int definition) {
  const std::string name = product_name(text, definition);
  return name.empty() ? fmt::format("#{}", definition) : fmt::format("'{}'", name);
}

}  // namespace

std::unordered_map<int, Usage> read_usage(const StepText& text, const std::string& file,
                                          const ReadLimits& limits) {
  const auto refused = [&](const std::string& what, const std::string& cure) {
    return Error(ErrorCode::unreadable, {file, ""}, what, cure);
  };
  Graph graph = read_graph(text);
  std::vector<int> ready;  // all their users are done
  for (auto& [id, node] : graph) {
    if (node.users == 0) {
      node.occurrences = 1.0;
      ready.push_back(id);
    }
  }
  std::unordered_map<int, Usage> usage;
  double placed = 0.0;
  while (!ready.empty()) {
    const int id = ready.back();
    ready.pop_back();
    const UsageNode& node = graph[id];
    usage[id] = {node.occurrences, !node.components.empty()};
    placed += node.occurrences;
    if (node.depth > limits.nesting_depth) {
      throw refused(fmt::format("the assembly {} is nested deeper than {} levels", shown(text, id),
                                limits.nesting_depth),
                    "export it with fewer levels");
    }
    if (!(placed <= limits.occurrences)) {
      throw refused(
          fmt::format("the assembly unfolds to more than {:.0f} occurrences", limits.occurrences),
          "export a part of it, or raise the limit");
    }
    for (const int component : node.components) {
      UsageNode& below = graph[component];
      below.occurrences += node.occurrences;
      below.depth = std::max(below.depth, node.depth + 1);
      if (--below.users == 0) {
        ready.push_back(component);
      }
    }
  }
  if (usage.size() < graph.size()) {
    const auto caught =
        std::min_element(graph.begin(), graph.end(), [&](const auto& a, const auto& b) {
          return std::pair(usage.contains(a.first), a.first) <
                 std::pair(usage.contains(b.first), b.first);
        });
    throw refused(fmt::format("the assembly {} contains itself", shown(text, caught->first)),
                  "mend the assembly where the file was made");
  }
  return usage;
}

std::string product_name(const StepText& text, int definition) {
  const auto follow = [&](const StepText::Entity* entity,
                          std::size_t argument) -> const StepText::Entity* {
    const auto arguments = entity != nullptr ? text.arguments(*entity) : std::nullopt;
    const auto id = arguments && arguments->size() > argument ? reference((*arguments)[argument])
                                                              : std::nullopt;
    return id ? text.find(*id) : nullptr;
  };
  const StepText::Entity* product = follow(follow(text.find(definition), 2), 2);
  const auto arguments = product != nullptr ? text.arguments(*product) : std::nullopt;
  if (!arguments || arguments->size() < 2) {
    return {};
  }
  const std::string name = clean_name(quoted((*arguments)[1]));
  return name.empty() ? clean_name(quoted((*arguments)[0])) : name;
}

}  // namespace spotblue
