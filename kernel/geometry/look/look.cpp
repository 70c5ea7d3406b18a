#include "spotblue/geometry/look.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <utility>

#include "base/logger.hpp"
#include "base/stage_time.hpp"
#include "base/work_limit.hpp"
#include "geometry/occt/require_finished.hpp"
#include "geometry/read/read_within.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

class Stopwatch {
 public:
  [[nodiscard]] double seconds() const {
    return std::chrono::duration<double>(Clock::now() - start_).count();
  }

 private:
  using Clock = std::chrono::steady_clock;
  Clock::time_point start_ = Clock::now();
};

std::string pair_name(const Model& model, const OccurrencePair& pair) {
  return fmt::format("{} and {}", model.occurrences[pair.first].id,
                     model.occurrences[pair.second].id);
}

// Pairs that are told by name, the others by number. Choice of this program, no source.
constexpr std::size_t kMostTold = 1000;

// What there was too little of: where a heap of parts was left out, the memory for their pairs.
Bound what_lacked(const Look& look) {
  const Bound reached = limit_reached();
  const bool by_memory = reached == Bound::memory || reached == Bound::machine;
  return by_memory || look.seats.crowded.empty() ? reached : scarce_memory();
}

// What was not looked at, each thing once.
class Untold {
 public:
  Untold(Look& look, std::string why) : look_(look), why_(std::move(why)) {}

  // `name` is asked for only of what is told by name: there may be millions.
  void add(const auto& name, const char* what) {
    if (told_ < kMostTold) {
      look_.not_looked_at.push_back({name(), fmt::format("{}: {}", what, why_)});
      ++told_;
    } else {
      ++more_;
    }
  }

  void end() const {
    if (more_ > 0) {
      look_.not_looked_at.push_back(
          {look_.model.file.name,
           fmt::format("{} more of its parts and pairs of parts: {}", more_, why_)});
    }
  }

 private:
  Look& look_;
  std::string why_;
  std::size_t told_ = 0, more_ = 0;
};

// Each pair once, by what was not looked for.
void tell_pairs(Look& look) {
  Untold untold(look, reason(what_lacked(look)));
  for (const OccurrenceId part : look.seats.crowded) {
    untold.add([&] { return look.model.occurrences[part].id; },
               "what it seats on, screws into or fouls with, of all that come near it");
  }
  const auto& seats = look.seats.not_looked_at;
  for (const auto& pair : seats) {
    untold.add([&] { return pair_name(look.model, pair); }, "whether they seat, screw or foul");
  }
  auto known = seats.begin();
  for (const auto& pair : look.fouls.not_looked_at) {
    while (known != seats.end() && *known < pair) {
      ++known;
    }
    if (known == seats.end() || *known != pair) {
      untold.add([&] { return pair_name(look.model, pair); }, "whether they foul");
    }
  }
  untold.end();
}

// Fouls are looked for only where the seats are known: some of the time is kept for them. Choice
// of this program, no source.
constexpr double kSeatsShare = 0.6;

void look_for_all(Look& look) {
  const Stopwatch seat_time;
  const LookSettings& settings = look.settings;
  const TimeLimit limit(settings.limits.seconds);
  const bool paired = done_within_limits([&] {
    const TimeLimit of_seats(kSeatsShare * seconds_left());
    look.seats = find_seats(look.model, settings.seats);
  });
  look.seconds.seats = seat_time.seconds();
  const Stopwatch foul_time;
  if (!done_within_limits([&] {
        look.fouls = find_fouls(look.model, look.seats, settings.seats, settings.limits);
      })) {
    look.fouls.not_looked_at = look.seats.near_pairs;
  }
  look.seconds.fouls = foul_time.seconds();
  if (!paired) {
    look.not_looked_at.push_back(
        {look.model.file.name, "which parts come near each other: " + why_not_done()});
  }
  tell_pairs(look);
  look.memory_mb = memory_mb_taken();
  look.machine_lacked = !look.not_looked_at.empty() && what_lacked(look) == Bound::machine;
}

// Throws unless it was time that ended the reading.
void require_memory(Bound ended, const std::string& file, const ReadLimits& limits) {
  if (ended == Bound::memory) {
    throw out_of_memory(file, limits);
  }
  if (ended == Bound::machine) {
    throw lacking("the memory it takes to read " + file);
  }
}

}  // namespace

Look look_at(Model model, const LookSettings& settings) {
  return look_at([&model] { return std::move(model); }, settings);
}

bool is_whole(const Look& look) {
  return look.not_looked_at.empty() && look.model.not_compared.empty();
}

Look look_at(const std::function<Model()>& make, const LookSettings& settings) {
  const Stopwatch all;
  Look result;
  result.settings = settings;
  {
    const StageTime features;
    result.model = make();
    result.seconds.features = features.seconds();
    result.seconds.read = all.seconds() - result.seconds.features;
  }
  const TimeLimit limit(settings.seconds - all.seconds());
  const MemoryLimit memory(settings.limits.memory_mb);
  look_for_all(result);
  result.seconds.total = all.seconds();
  return result;
}

Look look(const std::filesystem::path& file, const LookSettings& settings) {
  const Stopwatch all;
  const TimeLimit limit(settings.seconds);
  const MemoryLimit memory(settings.limits.memory_mb);
  Look result;
  result.settings = settings;
  const Bound ended = ended_by([&] {
    const StageTime features;
    ModelWithin read = read_within(file, settings.limits, settings.completeness);
    result.model = std::move(read.model);
    result.not_looked_at = std::move(read.not_looked_at);
    result.seconds.features = features.seconds();
  });
  result.seconds.read = all.seconds() - result.seconds.features;
  require_memory(ended, shown_name(file), settings.limits);
  if (ended == Bound::none) {
    look_for_all(result);
  } else {
    result.model.file.name = shown_name(file);
    result.not_looked_at.push_back(
        {result.model.file.name,
         fmt::format("reading it was not done after {:.3g} s: nothing of it was looked at",
                     settings.seconds)});
  }
  result.seconds.total = all.seconds();
  logger().info("looked at {} in {:.2f} s: {} occurrences, {} radial seats, {} fouls",
                file.string(), result.seconds.total, result.model.occurrences.size(),
                result.seats.radial.size(), result.fouls.found.size());
  return result;
}

std::string feature_id(const Model& model, const FeatureRef& feature) {
  const Product& product = model.products[model.occurrences[feature.occurrence].product];
  std::string name;
  switch (feature.kind) {
    case FeatureKind::cylinder:
      name = product.cylinders[feature.index].name;
      break;
    case FeatureKind::cone:
      name = product.cones[feature.index].name;
      break;
    case FeatureKind::plane:
      name = product.planes[feature.index].name;
      break;
    case FeatureKind::width:
      name = product.widths[feature.index].name;
      break;
  }
  return product.id + ": " + name;
}

}  // namespace spotblue
