#include "group/axial/stop_net.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

#include "group/axial/body_faces.hpp"
#include "group/axial/implied_stops.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_lengths.hpp"

namespace spotblue {
namespace {

// By two faces, in either order.
template <typename Value>
using FacesOf = std::map<std::pair<Subject, Subject>, Value>;

std::pair<Subject, Subject> faces_key(const FeatureRef& a, const FeatureRef& b) {
  return std::minmax({subject_of(a), subject_of(b)});
}

class NetMaker {
 public:
  NetMaker(const DeclaredJob& declared, const Groups& groups, const FacePaths& paths,
           std::span<const SetPart> set, std::vector<LineStop> stops)
      : declared_(declared), groups_(groups), paths_(paths), set_(set) {
    net_.stops = std::move(stops);
    for (const LineStop& one : net_.stops) {
      net_.groups.push_back(group_of(one.stop.a));
      net_.groups.push_back(group_of(one.stop.b));
    }
    std::sort(net_.groups.begin(), net_.groups.end());
    net_.groups.erase(std::unique(net_.groups.begin(), net_.groups.end()), net_.groups.end());
  }

  StopNet make() && {
    for (const std::size_t group : net_.groups) {
      net_.bench.bodies.push_back(fmt::format("group {}", group));
      place_faces(group);
    }
    for (const LineStop& one : net_.stops) {
      LengthSum gap = place_of_[subject_of(one.stop.b)];
      add_to(gap, place_of_[subject_of(one.stop.a)], -1);
      gaps_.push_back(std::move(gap));
    }
    const std::vector<LengthSum> drawn = gaps_;
    std::vector<std::pair<std::size_t, std::size_t>> measured;  // stop, and the one against it
    for (std::size_t i = 0; i < net_.stops.size(); ++i) {
      if (const auto other = measured_against(i)) {
        measured.emplace_back(i, *other);
      }
    }
    for (const auto& [stop, other] : measured) {
      measure(stop, other, drawn);
    }
    finish(measured, drawn);
    leave_out_implied(net_);
    return std::move(net_);
  }

 private:
  [[nodiscard]] std::size_t group_of(const FeatureRef& face) const {
    return groups_.moves_with[face.occurrence];
  }

  [[nodiscard]] double station(const StopFace& of) const {
    return station_of_face(declared_.look->model, of.face, *of.line);
  }

  // Where each face of the body that stops something stands, from the first of those that hang
  // together.
  void place_faces(std::size_t group) {
    BodyFaces body = faces_of(group);
    note_shims(body);
    for (const FacePair& pair : body.pairs) {
      const StopFace& first = body.faces[pair.first];
      const StopFace& second = body.faces[pair.second];
      if (held_set(first.face) == held_set(second.face) && !body.is_joined(pair)) {
        if (const auto along = step_between(first, second)) {
          body.join(pair.first, pair.second, *along);
        }
      }
    }
    join_set_parts(body);
    for (std::size_t face = 1; face < body.faces.size(); ++face) {
      if (!body.is_joined({0, face})) {
        const auto along = held_set(body.faces[0].face) == held_set(body.faces[face].face)
                               ? step_between(body.faces[0], body.faces[face])
                               : std::nullopt;
        body.join(0, face, along ? *along : not_closed(body.faces[0], body.faces[face]));
      }
    }
    for (auto& [face, place] : body.places()) {
      place_of_[face] = std::move(place);
    }
  }

  [[nodiscard]] BodyFaces faces_of(std::size_t group) {
    BodyFaces body;
    for (const LineStop& one : net_.stops) {
      for (const FeatureRef& face : {one.stop.a, one.stop.b}) {
        if (group_of(face) == group) {
          body.add({face, &one.line});
        }
      }
    }
    body.pairs = face_pairs(group, body.number_of);
    return body;
  }

  // Of a part that is set on others: its number; parts of a body that are not have one place.
  [[nodiscard]] std::optional<std::size_t> held_set(const FeatureRef& face) const {
    for (std::size_t i = 0; i < set_.size(); ++i) {
      if (set_[i].held && set_[i].part == face.occurrence) {
        return i;
      }
    }
    return std::nullopt;
  }

  // The faces whose distance is a shim's thickness: those given, else those that stop others.
  void note_shims(const BodyFaces& body) {
    for (std::size_t i = 0; i < set_.size(); ++i) {
      const SetPart& part = set_[i];
      if (part.held) {
        continue;
      }
      if (part.from && part.to) {
        shims_[faces_key(*part.from, *part.to)] = i;
        continue;
      }
      const auto own =
          std::find_if(body.pairs.begin(), body.pairs.end(), [&](const FacePair& pair) {
            return body.faces[pair.first].face.occurrence == part.part &&
                   body.faces[pair.second].face.occurrence == part.part;
          });
      if (own != body.pairs.end()) {
        shims_[faces_key(body.faces[own->first].face, body.faces[own->second].face)] = i;
      }
    }
  }

  // Each part that is set hangs on the rest by the length that it is set to.
  void join_set_parts(BodyFaces& body) {
    for (std::size_t i = 0; i < set_.size(); ++i) {
      const auto across =
          std::find_if(body.pairs.begin(), body.pairs.end(), [&](const FacePair& pair) {
            return (held_set(body.faces[pair.first].face) == i) !=
                   (held_set(body.faces[pair.second].face) == i);
          });
      if (across == body.pairs.end()) {
        continue;
      }
      const bool second = held_set(body.faces[across->second].face) == i;
      std::size_t from = second ? across->first : across->second;
      std::size_t to = second ? across->second : across->first;
      if (set_[i].from && set_[i].to) {
        from = with_face(body, *set_[i].from, from);
        to = with_face(body, *set_[i].to, to);
      }
      if (!body.is_joined({from, to})) {
        body.join(from, to, set_length(i, body.faces[from], body.faces[to]));
      }
    }
  }

  // The number of a face that need not stop anything, which hangs on one that does.
  std::size_t with_face(BodyFaces& body, const FeatureRef& face, std::size_t near) {
    const std::size_t number = body.add({face, body.faces[near].line});
    if (!body.is_joined({near, number})) {
      const auto along = step_between(body.faces[near], body.faces[number]);
      body.join(near, number, along ? *along : not_closed(body.faces[near], body.faces[number]));
    }
    return number;
  }

  LengthSum set_length(std::size_t set, const StopFace& from, const StopFace& to) {
    const double apart = station(to) - station(from);
    const bool outward = apart >= 0.0;
    PathLength path{from.face, to.face, apart, paths_.as_set(Length::mm(std::abs(apart)))};
    path.known.how = say(said::kLengthIsSet, at_line(set_[set].adjust->line));
    const std::size_t number = length_of(path);
    net_.lengths[number].set_part = set;
    net_.lengths[number].outward = outward;
    net_.lengths[number].part = set_[set].part;
    net_.lengths[number].from = from.face;
    net_.lengths[number].to = to.face;
    return {{number, outward ? 1 : -1}};
  }

  // By the loop that the two faces close, the tightest first: a drawing would dimension them from
  // each other.
  [[nodiscard]] std::vector<FacePair> face_pairs(std::size_t group,
                                                 const std::map<Subject, std::size_t>& number_of) {
    std::vector<const AxialStop*> ahead, back;
    for (const LineStop& one : net_.stops) {
      if (group_of(one.stop.a) == group) {
        ahead.push_back(&one.stop);
      } else if (group_of(one.stop.b) == group) {
        back.push_back(&one.stop);
      }
    }
    std::vector<FacePair> pairs;
    for (const AxialStop* one : back) {
      const std::vector<double>& onward = ways_from(net_.body_of(group_of(one->a)));
      for (const AxialStop* other : ahead) {
        pairs.push_back(
            {number_of.at(subject_of(one->b)), number_of.at(subject_of(other->a)),
             modelled(*one) + modelled(*other) + onward[net_.body_of(group_of(other->b))],
             one->b.occurrence != other->a.occurrence});
      }
    }
    // Of loops alike the one over a part's own length: how parts were set on each other is looser.
    std::stable_sort(pairs.begin(), pairs.end(), [](const FacePair& a, const FacePair& b) {
      return std::pair(a.play_mm, a.of_two_parts) < std::pair(b.play_mm, b.of_two_parts);
    });
    return pairs;
  }

  // Parts that overlap as modelled touch.
  static double modelled(const AxialStop& stop) { return std::max(stop.gap, 0.0); }

  // How far one body can push each other back before all that lies between is met, as modelled.
  const std::vector<double>& ways_from(std::size_t body) {
    const auto [known, fresh] = ways_from_.try_emplace(body);
    if (!fresh) {
      return known->second;
    }
    std::vector<double>& ways = known->second;
    ways.assign(net_.groups.size(), std::numeric_limits<double>::infinity());
    ways[body] = 0.0;
    for (bool changed = true; changed;) {
      changed = false;
      for (const LineStop& one : net_.stops) {
        double& end = ways[net_.body_of(group_of(one.stop.a))];
        const double further = ways[net_.body_of(group_of(one.stop.b))] + modelled(one.stop);
        changed = changed || further < end;
        end = std::min(end, further);
      }
    }
    return ways;
  }

  // Lengths are told from the lower face to the upper one.
  [[nodiscard]] std::optional<LengthSum> step_between(const StopFace& first,
                                                      const StopFace& second) {
    const bool upward = station(first) <= station(second);
    const StopFace& low = upward ? first : second;
    const StopFace& high = upward ? second : first;
    const auto path = paths_.path(low.face, high.face, *low.line);
    if (!path) {
      return std::nullopt;
    }
    LengthSum along;
    for (const PathLength& length : *path) {
      along[length_of(length)] += ((length.step_mm >= 0.0) == upward) ? 1 : -1;
    }
    return along;
  }

  // The number of a length, one however often it is come by.
  std::size_t length_of(const PathLength& path) {
    const auto key = faces_key(path.from, path.to);
    const auto [known, fresh] = number_of_.try_emplace(key, net_.lengths.size());
    if (fresh) {
      StackLength length = step_length(declared_, path);
      if (const auto shim = shims_.find(key); shim != shims_.end()) {
        length.set_part = shim->second;
      }
      net_.lengths.push_back(std::move(length));
    }
    return known->second;
  }

  std::size_t add_length(StackLength length) {
    net_.lengths.push_back(std::move(length));
    return net_.lengths.size() - 1;
  }

  LengthSum not_closed(const StopFace& first, const StopFace& second) {
    const double apart = station(second) - station(first);
    const Length length = Length::mm(std::abs(apart));
    return {{add_length(not_closed_length(declared_, first.face, second.face, length)),
             apart < 0.0 ? -1 : 1}};
  }

  [[nodiscard]] const MeasuredGap* gap_of(std::size_t stop) const {
    const auto& seat = net_.stops[stop].stop.seat;
    return seat ? declared_.axial_gaps.at(*seat) : nullptr;
  }

  // The stop the other way round between the same two, where a gap taken with a feeler says what
  // the two leave together: that one is closed as modelled, or taken too.
  [[nodiscard]] std::optional<std::size_t> measured_against(std::size_t stop) const {
    if (gap_of(stop) == nullptr) {
      return std::nullopt;
    }
    const AxialStop& own = net_.stops[stop].stop;
    std::optional<std::size_t> other;
    for (std::size_t i = 0; i < net_.stops.size(); ++i) {
      const AxialStop& one = net_.stops[i].stop;
      if (group_of(one.a) == group_of(own.b) && group_of(one.b) == group_of(own.a) &&
          (!other || one.gap < net_.stops[*other].stop.gap)) {
        other = i;
      }
    }
    const double same_mm = declared_.look->settings.seats.same_length_mm;
    if (!other || (std::abs(net_.stops[*other].stop.gap) > same_mm && gap_of(*other) == nullptr)) {
      return std::nullopt;
    }
    return gap_of(*other) != nullptr && *other < stop ? std::nullopt : other;
  }

  // The two stops leave together what was measured, whatever the lengths are.
  void measure(std::size_t stop, std::size_t other, const std::vector<LengthSum>& drawn) {
    LengthSum gap;
    add_to(gap, drawn[other], -1);
    gap[add_length(gap_length(declared_, net_.stops[stop].stop, *gap_of(stop)))] += 1;
    if (gap_of(other) != nullptr) {
      gap[add_length(gap_length(declared_, net_.stops[other].stop, *gap_of(other)))] += 1;
    }
    gaps_[stop] = std::move(gap);
  }

  [[nodiscard]] Length grown(const LengthSum& sum, const std::vector<StackDimension>& warm) const {
    Length grown;
    for (const auto& [length, count] : sum) {
      const Length more = warm[length].nominal - net_.lengths[length].dimension.nominal;
      grown = grown + static_cast<double>(count) * more;
    }
    return grown;
  }

  void finish(const std::vector<std::pair<std::size_t, std::size_t>>& measured,
              const std::vector<LengthSum>& drawn) {
    for (const StackLength& length : net_.lengths) {
      net_.bench.lengths.push_back(length.dimension);
    }
    for (std::size_t i = 0; i < gaps_.size(); ++i) {
      net_.bench.stops.push_back({net_.body_of(group_of(net_.stops[i].stop.a)),
                                  net_.body_of(group_of(net_.stops[i].stop.b)),
                                  play_terms(gaps_[i])});
    }
    if (std::none_of(net_.lengths.begin(), net_.lengths.end(), [](const StackLength& length) {
          return length.dimension.warmer_by_k != 0.0;
        })) {
      return;
    }
    net_.warm = net_.bench;
    net_.warm->lengths =
        net_.bench.lengths.empty() ? std::vector<StackDimension>{} : warmed(net_.bench.lengths);
    // What was measured at the bench grows by what the lengths do that it stands for.
    for (const auto& [stop, other] : measured) {
      LengthSum loop = drawn[stop];
      add_to(loop, drawn[other], 1);
      const Length more = grown(loop, net_.warm->lengths);
      StackDimension growth;
      growth.name =
          "growth of " + net_.lengths[net_.bench.stops[stop].gap.back().length].dimension.name;
      growth.nominal = more;
      growth.limits = {more, more};
      net_.warm->stops[stop].gap.push_back({net_.warm->lengths.size(), 1});
      net_.warm->lengths.push_back(std::move(growth));
    }
  }

  const DeclaredJob& declared_;
  const Groups& groups_;
  const FacePaths& paths_;
  std::span<const SetPart> set_;
  StopNet net_;
  FacesOf<std::size_t> number_of_;                        // lengths by their two faces
  std::map<std::size_t, std::vector<double>> ways_from_;  // by body
  FacesOf<std::size_t> shims_;             // set parts by the two faces of their thickness
  std::map<Subject, LengthSum> place_of_;  // of faces, in their body
  std::vector<LengthSum> gaps_;            // by stop
};

}  // namespace

std::size_t StopNet::body_of(std::size_t group) const {
  return static_cast<std::size_t>(std::lower_bound(groups.begin(), groups.end(), group) -
                                  groups.begin());
}

StopNet make_stop_net(const DeclaredJob& declared, const Groups& groups, const FacePaths& paths,
                      std::span<const SetPart> set, std::vector<LineStop> stops) {
  return NetMaker(declared, groups, paths, set, std::move(stops)).make();
}

}  // namespace spotblue
