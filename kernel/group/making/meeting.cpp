#include "group/making/meeting.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "group/words/said_turning.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {
namespace {

// Lengths of machined parts that are made to no limits agree within this: ISO 2768-1 class m gives
// 0.2 for lengths of 30 to 120 mm, and each side has one. Choice of this program.
constexpr double kLengthsMakeUp_mm = 0.4;
constexpr Length kSame = Length::mm(1e-6);

bool is_closed(const StopNet& net, const PlayLoop& loop) {
  return std::none_of(loop.lengths.begin(), loop.lengths.end(), [&net](const PlayTerm& term) {
    return term.length < net.lengths.size() &&
           net.lengths[term.length].source == LengthSource::not_closed;
  });
}

struct InNet {
  const StopNet* net = nullptr;
  std::size_t stop = 0;
};

// Where each axial seat stands in a net.
std::map<std::size_t, InNet> nets_of_seats(const BodyPlays& plays) {
  std::map<std::size_t, InNet> nets;
  for (const BodyPlay& play : plays.captured) {
    for (std::size_t i = 0; play.net && i < play.net->stops.size(); ++i) {
      if (const auto seat = play.net->stops[i].stop.seat) {
        nets.try_emplace(*seat, InNet{play.net.get(), i});
      }
    }
  }
  return nets;
}

// With the stop turned round, so that its faces touch or go past each other, what is left of the
// way to the next stop is the play: where it is below 0, others stop the two first.
RelativePlay play_past(PlayNet turned, std::size_t stop) {
  const PlayStop own = turned.stops.at(stop);
  PlayStop past{own.b, own.a, own.gap};
  for (PlayTerm& term : past.gap) {
    term.count = -term.count;
  }
  turned.stops[stop] = past;
  return relative_play(turned, own.a, own.b);
}

}  // namespace

std::optional<Interval> least_left(const StopNet& net, std::size_t stop) {
  std::optional<Interval> least;
  for (const PlayNet* state : {&net.bench, net.warm ? &*net.warm : nullptr}) {
    if (state == nullptr) {
      continue;
    }
    const RelativePlay play = play_past(*state, stop);
    if (!play.settled || !is_closed(net, play.greatest)) {
      return std::nullopt;
    }
    const bool free = !play.stopped_ahead || !play.worst;
    const auto left = [](Length past) { return std::max(0.0, -past.in_mm()); };
    const Interval of_state =
        free ? Interval{0.0, 0.0} : Interval{left(play.worst->upper), left(play.worst->lower)};
    least = least
                ? Interval{std::min(least->low, of_state.low), std::min(least->high, of_state.high)}
                : of_state;
  }
  return least;
}

std::optional<Meeting> meeting_of(const StopNet& net, std::size_t stop) {
  const RelativePlay play = play_past(net.warm ? *net.warm : net.bench, stop);
  if (!play.settled) {
    return std::nullopt;
  }
  if (!play.stopped_ahead || !play.worst || play.worst->lower >= -kSame) {
    return Meeting::always;
  }
  if (play.worst->upper >= -kSame) {
    return Meeting::perhaps;
  }
  return is_closed(net, play.greatest) ? std::optional(Meeting::never) : std::nullopt;
}

std::vector<ThrustFace> faces_that_meet(std::vector<ThrustFace> faces, const BodyPlays& plays) {
  const std::map<std::size_t, InNet> nets = nets_of_seats(plays);
  std::erase_if(faces, [&nets](ThrustFace& face) {
    const auto in_net = nets.find(face.seat);
    const auto meeting =
        in_net == nets.end() ? std::nullopt : meeting_of(*in_net->second.net, in_net->second.stop);
    if (!meeting) {
      return face.short_by > kLengthsMakeUp_mm;
    }
    face.certainty = *meeting == Meeting::always ? Certainty::certain : Certainty::perhaps;
    if (face.certainty == Certainty::certain) {
      face.why = Saying();
    } else if (face.why.empty()) {
      face.why = said::kOthersMayStop;
    }
    return *meeting == Meeting::never;
  });
  return faces;
}

}  // namespace spotblue
