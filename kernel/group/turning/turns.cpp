#include "group/turning/turns.hpp"

#include <fmt/format.h>

#include <map>
#include <tuple>

#include "group/joints/groups.hpp"

namespace spotblue {
namespace {

[[noreturn]] void refuse(const Job& job, const Turning& entry,
                         const std::optional<JobLine>& earlier, const std::string& what) {
  throw Error(ErrorCode::bad_input, entry_place(job, "turning", entry.line),
              fmt::format("\"{}\" turns with the part of {}, which has another {}", entry.part,
                          line_text(earlier), what),
              "give both the same, or say in the wanted fits which of the two runs on the other");
}

void merge(const Job& job, const Turning& entry, Turn& into) {
  if (entry.rpm != into.rpm) {
    refuse(job, entry, into.line, "speed");
  }
  if (entry.duty != into.duty) {
    refuse(job, entry, into.line, "duty");
  }
  const auto take = [&](const std::optional<double>& value, std::optional<double>& known,
                        const char* name) {
    if (value && known && *value != *known) {
      refuse(job, entry, into.line, name);
    }
    known = known ? known : value;
  };
  const auto place = [](const Turning& of) { return std::tie(of.at, of.out, of.sharing); };
  if (entry.load_n && into.loaded != nullptr && place(entry) != place(*into.loaded)) {
    refuse(job, entry, into.line, "place of its load");
  }
  if (entry.load_n && into.loaded != nullptr && entry.part != into.loaded->part &&
      *entry.load_n > 0.0) {
    throw Error(
        ErrorCode::bad_input, entry_place(job, "turning", entry.line),
        fmt::format("\"{}\" turns with \"{}\", which has a load too, and one body is "
                    "judged by one load",
                    entry.part, into.loaded->part),
        "give one of them the sum of both loads, and with at and out the place where it acts");
  }
  take(entry.load_n, into.load_n, "load");
  take(entry.thrust_n, into.thrust_n, "thrust");
}

void add_load(const Turning& entry, OccurrenceId part, Turn& into) {
  if (!entry.load_n) {
    return;
  }
  into.loaded = into.loaded == nullptr ? &entry : into.loaded;
  if (into.loaded == &entry) {
    into.named.push_back(part);
  }
}

}  // namespace

Turns find_turns(const DeclaredJob& declared, const Groups& groups) {
  const Job& job = *declared.job;
  std::map<std::size_t, Turn> by_group;
  for (const Turning& entry : job.turning) {
    const Entry place{"turning", "part", entry.line};
    for (const OccurrenceId occurrence : declared.names.part(entry.part, place).occurrences) {
      const Turn turn{entry.rpm, entry.duty, entry.load_n, entry.thrust_n, entry.line};
      const auto [known, fresh] = by_group.try_emplace(groups.turns_with.at(occurrence), turn);
      if (!fresh) {
        merge(job, entry, known->second);
      }
      add_load(entry, occurrence, known->second);
    }
  }
  Turns turns;
  for (const std::size_t group : groups.turns_with) {
    const auto known = by_group.find(group);
    turns.of.push_back(known == by_group.end() ? std::nullopt : std::optional(known->second));
  }
  return turns;
}

}  // namespace spotblue
