#include "group/axial/part_setting.hpp"

#include <algorithm>

#include "group/words/said_lengths.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

// Less thread than half its diameter is not enough to hold by: common practice, no source.
constexpr double kLeastThread = 0.5;

std::optional<Length> pitch_of(const DeclaredJob& declared, const SetPart& part) {
  if (part.adjust->pitch) {
    return part.adjust->pitch;
  }
  const std::string& size = part.adjust->thread ? *part.adjust->thread
                            : part.thread       ? declared.look->seats.threads[*part.thread].size
                                                : std::string();
  const auto thread = find_thread(size);
  return thread ? std::optional(thread->pitch) : std::nullopt;
}

// As far as the job says, or as half the thread's diameter stays engaged.
std::optional<Limits> range_of(const PartSetting& setting) {
  if (setting.part.adjust->range) {
    return setting.part.adjust->range;
  }
  if (!setting.thread) {
    return std::nullopt;
  }
  const double least = std::min(least_thread(setting).in_mm(), setting.thread->engaged(0.0));
  const Interval room = setting.thread->room(least);
  return Limits{std::max(Length(), setting.modelled + Length::mm(room.low)),
                setting.modelled + Length::mm(room.high)};
}

// Whether the length has a part in the play, as far as is known.
bool counts(const RelativePlay& play, std::size_t length) {
  if (!play.settled) {
    return true;
  }
  const auto has = [length](const PlayLoop& loop) {
    return std::any_of(loop.lengths.begin(), loop.lengths.end(),
                       [length](const PlayTerm& term) { return term.length == length; });
  };
  return has(play.least) || has(play.greatest) || has(play.governing);
}

}  // namespace

std::optional<std::size_t> set_length_of(const StopNet& net, std::size_t set_part) {
  const auto found =
      std::find_if(net.lengths.begin(), net.lengths.end(),
                   [set_part](const StackLength& length) { return length.set_part == set_part; });
  return found == net.lengths.end()
             ? std::nullopt
             : std::optional(static_cast<std::size_t>(found - net.lengths.begin()));
}

PartSetting setting_of(const DeclaredJob& declared, const SetPart& part, std::size_t number,
                       const StopNet& net, std::span<const SettingWant> wants) {
  const std::size_t length = *set_length_of(net, number);
  const StackLength& own = net.lengths[length];
  PartSetting setting;
  setting.part = part;
  setting.centre_line = net.stops.front().centre_line;
  setting.length = own.dimension.name;
  setting.modelled = own.dimension.nominal;
  setting.pitch = pitch_of(declared, part);
  if (part.held && part.thread) {
    setting.thread = reach_of(declared, part, net.stops.front().line, own.outward);
  }
  setting.range = range_of(setting);
  if (!setting.range) {
    setting.wants.assign(wants.begin(), wants.end());
    return setting;
  }
  PlayNet free = net.bench;
  free.lengths[length].limits = *setting.range;
  std::vector<PlayWant> asked;
  for (const SettingWant& want : wants) {
    const PlayWant one{net.body_of(want.of), net.body_of(want.on), want.wanted};
    if (counts(relative_play(free, one.of, one.on), length)) {
      asked.push_back(one);
      setting.wants.push_back(want);
    }
  }
  if (!asked.empty()) {
    setting.setting = setting_windows(free, length, asked);
  }
  return setting;
}

std::optional<Limits> widest_window(const PlaySetting& setting) {
  const auto widest =
      std::max_element(setting.windows.begin(), setting.windows.end(),
                       [](const Limits& a, const Limits& b) { return a.width() < b.width(); });
  return widest == setting.windows.end() ? std::nullopt : std::optional(*widest);
}

Length least_thread(const PartSetting& setting) {
  return Length::mm(kLeastThread * setting.thread->diameter);
}

std::optional<double> thread_left(const PartSetting& setting, Length at) {
  return setting.thread ? std::optional(setting.thread->engaged((at - setting.modelled).in_mm()))
                        : std::nullopt;
}

std::shared_ptr<const StopNet> set_within(const StopNet& net, std::size_t set_part, Limits window) {
  auto set = std::make_shared<StopNet>(net);
  const std::size_t length = *set_length_of(net, set_part);
  const auto give = [&window](StackDimension& dimension) {
    dimension.limits = window;
    dimension.nominal = 0.5 * (window.lower + window.upper);
    dimension.spread = StackSpread::uniform;
  };
  give(set->lengths[length].dimension);
  give(set->bench.lengths[length]);
  set->lengths[length].how = said::kLengthToBeSet;
  if (set->warm) {
    std::vector<StackDimension> one{set->lengths[length].dimension};
    set->warm->lengths[length] = warmed(one).front();
  }
  return set;
}

}  // namespace spotblue
