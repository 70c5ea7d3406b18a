#include "group/axial/face_path.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "spotblue/geometry/axial_stops.hpp"

namespace spotblue {
namespace {

// Between ways that are known alike the one with fewer lengths; a place that was set at assembly
// only where no chain of faces leads on.
constexpr double kPerLength_mm = 1e-6;
constexpr double kPerSetting_mm = 1e6;

}  // namespace

// Whether a search may step over a joint to a part that nothing touches.
enum class Settings { none, any };

// Dijkstra's shortest path over the faces of one group.
class PathSearch {
 public:
  PathSearch(const FacePaths& paths, const FeatureRef& from, const Line& line, Settings settings)
      : paths_(paths), line_(line), settings_(settings), model_(paths.declared_->look->model) {
    reach(from, 0.0, std::nullopt);
  }

  std::optional<std::vector<PathLength>> to(const FeatureRef& target) {
    while (!open_.empty()) {
      const Subject nearest = open_.begin()->second;
      open_.erase(open_.begin());
      const Node node = nodes_.at(nearest);
      if (node.face == target) {
        return trace(nearest);
      }
      expand(node);
    }
    return std::nullopt;
  }

 private:
  struct Way {
    Subject before;
    std::optional<PathLength> length;  // nothing for faces held against each other
    bool given = false;
    bool joint = false;
  };
  struct Node {
    FeatureRef face;
    double cost = 0.0;
    std::optional<Way> way;
  };

  void reach(const FeatureRef& face, double cost, std::optional<Way> way) {
    const Subject key = subject_of(face);
    const auto [known, fresh] = nodes_.try_emplace(key, Node{face, cost, way});
    if (!fresh) {
      if (cost >= known->second.cost) {
        return;
      }
      open_.erase({known->second.cost, key});
      known->second = {face, cost, std::move(way)};
    }
    open_.emplace(cost, key);
  }

  void expand(const Node& node) {
    const Subject key = subject_of(node.face);
    // One length after another within a part only where the job gives them so: a drawing would
    // dimension from face to face.
    const bool inside = node.way && node.way->length && !node.way->joint;
    if (!inside || paths_.lengths_->speaks_of(node.face.occurrence)) {
      const bool by_given = !inside || node.way->given;
      for (const FeatureRef& face : faces_of(node.face.occurrence)) {
        const bool given = paths_.lengths_->gives(node.face, face);
        if (!(face == node.face) && (by_given || given)) {
          const double step = at(face) - at(node.face);
          take(node, face, {step, given, false});
        }
      }
    }
    if (const auto touching = paths_.touching_.find(key); touching != paths_.touching_.end()) {
      for (const FeatureRef& face : touching->second) {
        if (stands_apart(face.occurrence, node.face.occurrence)) {
          continue;
        }
        reach(face, node.cost, Way{key, std::nullopt, false, false});
      }
    }
    if (settings_ == Settings::none) {
      return;
    }
    for (const OccurrenceId part : paths_.joined_[node.face.occurrence]) {
      if (stands_apart(part, node.face.occurrence) || !sets(node.face, part)) {
        continue;
      }
      for (const FeatureRef& face : faces_of(part)) {
        if (sets(face, node.face.occurrence)) {
          take(node, face, {at(face) - at(node.face), false, true});
        }
      }
    }
  }

  [[nodiscard]] bool stands_apart(OccurrenceId a, OccurrenceId b) const {
    return paths_.apart_.contains(a) || paths_.apart_.contains(b);
  }

  struct Step {
    double along = 0.0;
    bool given = false;  // by the job's own [[lengths]]
    bool joint = false;  // to another part, as set
  };

  void take(const Node& node, const FeatureRef& face, const Step& step) {
    const Length modelled = Length::mm(std::abs(step.along));
    const KnownLength known = step.joint ? as_set(node.face, face, step.along)
                                         : paths_.lengths_->between(node.face, face, modelled);
    const double half = 0.5 * known.limits.width().in_mm();
    reach(face, node.cost + half + (step.joint ? kPerSetting_mm : kPerLength_mm),
          Way{subject_of(node.face), PathLength{node.face, face, step.along, known}, step.given,
              step.joint});
  }

  [[nodiscard]] bool to_make(const FeatureRef& face) const {
    return state_of(*paths_.declared_, face.occurrence) == PartState::to_make;
  }

  // By which faces a part that is still to make may be set on another: those that are drawn level
  // with one of its faces, or else any.
  const std::vector<FeatureRef>& setting_faces(OccurrenceId part, OccurrenceId on) {
    const auto [known, fresh] = setting_faces_.try_emplace({part, on});
    if (fresh) {
      const double same = paths_.declared_->look->settings.seats.same_length_mm;
      std::vector<FeatureRef> level;
      for (const FeatureRef& face : faces_of(part)) {
        for (const FeatureRef& other : faces_of(on)) {
          if (std::abs(at(face) - at(other)) <= same) {
            level.push_back(face);
            break;
          }
        }
      }
      known->second = level.empty() ? faces_of(part) : level;
      // The first of them sets the part: by the part's own order, not by that of its seats.
      std::ranges::sort(known->second, {}, &FeatureRef::index);
    }
    return known->second;
  }

  // Its other faces stand where its lengths bring them.
  [[nodiscard]] bool sets(const FeatureRef& face, OccurrenceId on) {
    return !to_make(face) || setting_faces(face.occurrence, on).front() == face;
  }

  // Where two parts happen to stand.
  KnownLength as_set(const FeatureRef& from, const FeatureRef& to, double along) {
    bool assumed = false;
    const Limits before = off_as_set(from, to.occurrence, assumed);
    const Limits behind = off_as_set(to, from.occurrence, assumed);
    const Limits off{behind.lower - before.upper, behind.upper - before.lower};
    KnownLength known = paths_.lengths_->as_set(
        Length::mm(std::abs(along)), along >= 0.0 ? off : Limits{-off.upper, -off.lower});
    known.source = assumed ? LengthSource::assumed : known.source;
    return known;
  }

  // How far off along the line a face of a part still to make may stand where the part is set by
  // another of its faces.
  Limits off_as_set(const FeatureRef& face, OccurrenceId on, bool& assumed) {
    Limits off;
    if (!to_make(face)) {
      return off;
    }
    for (const FeatureRef& other : setting_faces(face.occurrence, on)) {
      if (other == face) {
        continue;
      }
      const double step = at(face) - at(other);
      const Length modelled = Length::mm(std::abs(step));
      const KnownLength length = paths_.lengths_->between(other, face, modelled);
      const Limits more{length.limits.lower - modelled, length.limits.upper - modelled};
      assumed = assumed || length.source == LengthSource::assumed;
      off = {std::min(off.lower, step >= 0.0 ? more.lower : -more.upper),
             std::max(off.upper, step >= 0.0 ? more.upper : -more.lower)};
    }
    return off;
  }

  std::vector<PathLength> trace(Subject key) const {
    std::vector<PathLength> lengths;
    while (const auto& way = nodes_.at(key).way) {
      if (way->length) {
        lengths.push_back(*way->length);
      }
      key = way->before;
    }
    std::reverse(lengths.begin(), lengths.end());
    return lengths;
  }

  const std::vector<FeatureRef>& faces_of(OccurrenceId occurrence) {
    const auto [known, fresh] = faces_.try_emplace(occurrence);
    if (fresh) {
      known->second =
          faces_square_to(model_, occurrence, line_, paths_.declared_->look->settings.seats);
    }
    return known->second;
  }

  double at(const FeatureRef& face) const { return station_of_face(model_, face, line_); }

  const FacePaths& paths_;
  const Line& line_;
  Settings settings_;
  const Model& model_;
  std::map<Subject, Node> nodes_;
  std::set<std::pair<double, Subject>> open_;
  std::map<OccurrenceId, std::vector<FeatureRef>> faces_;
  std::map<std::pair<OccurrenceId, OccurrenceId>, std::vector<FeatureRef>> setting_faces_;
};

FacePaths::FacePaths(const DeclaredJob& declared, const Groups& groups, const PartLengths& lengths,
                     std::set<OccurrenceId> apart)
    : declared_(&declared), lengths_(&lengths), apart_(std::move(apart)) {
  const Look& look = *declared.look;
  joined_.resize(look.model.occurrences.size());
  for (std::size_t i = 0; i < look.seats.axial.size(); ++i) {
    const AxialSeat& seat = look.seats.axial[i];
    const auto group = [&groups](const FeatureRef& face) {
      return groups.moves_with.at(face.occurrence);
    };
    if (group(seat.a) == group(seat.b) && touches(declared, i)) {
      touching_[subject_of(seat.a)].push_back(seat.b);
      touching_[subject_of(seat.b)].push_back(seat.a);
    }
  }
  for (const Joint& joint : groups.joints) {
    if (joint.along) {
      joined_[joint.a].push_back(joint.b);
      joined_[joint.b].push_back(joint.a);
    }
  }
}

std::optional<std::vector<PathLength>> FacePaths::path(const FeatureRef& from, const FeatureRef& to,
                                                       const Line& line) const {
  const auto [known, fresh] = found_.try_emplace({subject_of(from), subject_of(to)});
  if (fresh) {
    known->second = search(from, to, line);
  }
  return known->second;
}

std::optional<std::vector<PathLength>> FacePaths::search(const FeatureRef& from,
                                                         const FeatureRef& to,
                                                         const Line& line) const {
  // A group may have very many joints: they are looked at only where faces alone do not lead there.
  auto found = PathSearch(*this, from, line, Settings::none).to(to);
  return found ? found : PathSearch(*this, from, line, Settings::any).to(to);
}

}  // namespace spotblue
