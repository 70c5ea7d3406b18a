#include "group/axial/part_setting.hpp"

#include <algorithm>

#include "group/words/said_lengths.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

std::optional<Length> pitch_of(const DeclaredJob& declared, const SetPart& part) {
  if (part.adjust->pitch) {
    return part.adjust->pitch;
  }
  const std::string& size = part.adjust->thread ? *part.adjust->thread
                            : part.thread       ? declared.screw_threads[*part.thread].size
                                                : std::string();
  const auto thread = find_thread(size);
  return thread ? std::optional(thread->pitch) : std::nullopt;
}

// Where a thread ends at larger metal its last pitch is not cut full, unless a groove lies between:
// choice of this program, no source.
constexpr double kRunOutPitches = 1.0;

// As far as the job says, or as half the thread's diameter stays engaged; and as metal lets it.
std::optional<Limits> range_of(const PartSetting& setting) {
  std::optional<Limits> range = setting.part.adjust->range;
  if (!range && setting.thread) {
    const double least = std::min(least_thread(setting).in_mm(), setting.thread->engaged(0.0));
    const Interval room = setting.thread->room(least);
    range = Limits{std::max(Length(), setting.modelled + Length::mm(room.low)),
                   setting.modelled + Length::mm(room.high)};
  }
  if (!range) {
    return std::nullopt;
  }
  if (setting.room.shorter) {
    range->lower = std::max(range->lower, setting.room.shorter->at.upper);
  }
  if (setting.room.longer) {
    range->upper = std::min(range->upper, setting.room.longer->at.lower);
  }
  return range;
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
                       const StopNet& net, const SettingRoom& room,
                       std::span<const SettingWant> wants) {
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
  setting.room = room;
  setting.range = range_of(setting);
  if (!setting.range || setting.range->upper < setting.range->lower) {
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

std::vector<MetalEnd> ends_of_range(const PartSetting& setting) {
  std::vector<MetalEnd> ends;
  if (setting.range && setting.room.shorter &&
      setting.room.shorter->at.upper >= setting.range->lower) {
    ends.push_back(*setting.room.shorter);
  }
  if (setting.range && setting.room.longer &&
      setting.room.longer->at.lower <= setting.range->upper) {
    ends.push_back(*setting.room.longer);
  }
  return ends;
}

bool into_run_out(const PartSetting& setting, Limits window) {
  if (!setting.pitch || !setting.thread) {
    return false;
  }
  const double run_out = kRunOutPitches * setting.pitch->in_mm();
  const auto runs_out = [&](Length at, Length off_metal, int towards) {
    const double left = setting.thread->to_end((at - setting.modelled).in_mm(), towards);
    return left < run_out && off_metal.in_mm() < left + run_out;
  };
  const SettingRoom& room = setting.room;
  return (room.shorter && runs_out(window.lower, window.lower - room.shorter->at.lower, -1)) ||
         (room.longer && runs_out(window.upper, room.longer->at.upper - window.upper, 1));
}

Length least_thread(const PartSetting& setting) { return setting.thread->least; }

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
