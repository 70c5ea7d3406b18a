#include "check/findings/unsound.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "check/findings/unseen_findings.hpp"

namespace spotblue {
namespace {

struct UnsoundPart {
  std::string id;
  std::string_view why;
};

std::vector<UnsoundPart> unsound_parts(const DeclaredJob& declared) {
  const Model& model = declared.look->model;
  std::vector<UnsoundPart> found;
  for (std::size_t i = 0; i < model.occurrences.size(); ++i) {
    const Product& product = model.products[model.occurrences[i].product];
    if (!product.unsound.empty()) {
      found.push_back({declared.names.id_of(i), product.unsound});
      found.push_back({product.id, product.unsound});
    }
  }
  return found;
}

// "Bush" and "Bush: bore 20" are about the bush.
bool is_about(const Finding& finding, std::string_view part) {
  return std::any_of(finding.about.begin(), finding.about.end(), [&](std::string_view about) {
    return about.starts_with(part) &&
           (about.size() == part.size() || about.substr(part.size()).starts_with(": "));
  });
}

}  // namespace

void leave_unsound_open(const DeclaredJob& declared, std::vector<Finding>& findings) {
  const std::vector<UnsoundPart> parts = unsound_parts(declared);
  for (Finding& finding : findings) {
    const auto part = std::find_if(parts.begin(), parts.end(), [&](const UnsoundPart& one) {
      return is_about(finding, one.id);
    });
    if (part != parts.end() && finding.kind != kUnseen) {
      finding.outcome = Outcome::undecided;
      finding.advice = "put " + part->id + " right where it was drawn first, and judge again";
      finding.found.push_back({"unsound", part->id + ": " + std::string(part->why)});
    }
  }
}

}  // namespace spotblue
