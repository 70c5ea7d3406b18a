#include "check/findings/unsound.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <string_view>

#include "check/findings/unseen_findings.hpp"

namespace spotblue {
namespace {

struct UnsoundPart {
  std::string id;
  std::string why;
};

// Why not all of the product may be known; empty where it is. Of a part that did not arrive whole,
// what is left may go by another's name.
std::string flaw_of(const Model& model, const Product& product) {
  if (!product.unsound.empty()) {
    return product.unsound;
  }
  for (const Note& note : model.not_compared) {
    for (const std::string& name : {product.name, product.part}) {
      if (!name.empty() && note.about.find("'" + name + "'") != std::string::npos) {
        return note.about + " " + note.text;
      }
    }
  }
  return {};
}

std::vector<UnsoundPart> unsound_parts(const DeclaredJob& declared) {
  const Model& model = declared.look->model;
  std::vector<UnsoundPart> found;
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    const Product& product = model.products[model.occurrences[i].product];
    if (const std::string why = flaw_of(model, product); !why.empty()) {
      found.push_back({declared.names.id_of(i), why});
      found.push_back({product.id, why});
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

void leave_open(Finding& finding, std::string_view part, std::string_view why) {
  finding.outcome = Outcome::undecided;
  finding.advice = fmt::format("put {} right where it was drawn first, and judge again", part);
  finding.found.push_back({"unsound", fmt::format("{}: {}", part, why)});
}

// Whether it did. What is about the part itself is left to leave_unsound_open.
bool leave_part_open(const DeclaredJob& declared, OccurrenceId occurrence, Finding& finding) {
  const Model& model = declared.look->model;
  const std::string why = flaw_of(model, model.products[model.occurrences[occurrence].product]);
  const std::string& id = declared.names.id_of(occurrence);
  if (why.empty() || is_about(finding, id)) {
    return false;
  }
  leave_open(finding, id, why);
  return true;
}

}  // namespace

void leave_unsound_open(const DeclaredJob& declared, std::vector<Finding>& findings) {
  const std::vector<UnsoundPart> parts = unsound_parts(declared);
  for (Finding& finding : findings) {
    const auto part = std::find_if(parts.begin(), parts.end(), [&](const UnsoundPart& one) {
      return is_about(finding, one.id);
    });
    if (part != parts.end() && finding.kind != kUnseen) {
      leave_open(finding, part->id, part->why);
    }
  }
}

void leave_parts_open(const DeclaredJob& declared, std::span<const OccurrenceId> occurrences,
                      Finding& finding) {
  for (const OccurrenceId occurrence : occurrences) {
    if (leave_part_open(declared, occurrence, finding)) {
      return;
    }
  }
}

void leave_neighbours_open(const DeclaredJob& declared, std::span<const OccurrenceId> occurrences,
                           Finding& finding) {
  const List<Occurrence>& all = declared.look->model.occurrences;
  for (OccurrenceId other{}; other < all.size(); ++other) {
    const bool near = std::any_of(occurrences.begin(), occurrences.end(), [&](OccurrenceId one) {
      return one == other || overlap(all[one].box, all[other].box);
    });
    if (near && leave_part_open(declared, other, finding)) {
      return;
    }
  }
}

void leave_missing_open(const DeclaredJob& declared, Finding& finding) {
  const std::vector<Note>& missing = declared.look->model.not_compared;
  if (missing.empty()) {
    return;
  }
  const std::string more =
      missing.size() == 1 ? std::string() : fmt::format("; and {} more", missing.size() - 1);
  finding.found.push_back(
      {"not_compared", fmt::format("{}: {}{}", missing.front().about, missing.front().text, more)});
  if (finding.outcome != Outcome::undecided) {
    finding.outcome = Outcome::undecided;
    finding.advice =
        "what did not arrive may stand here too and change this: export the model whole, and judge "
        "again";
  }
}

}  // namespace spotblue
