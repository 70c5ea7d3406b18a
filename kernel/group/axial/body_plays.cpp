#include "group/axial/body_plays.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "group/axial/standing.hpp"
#include "group/axial/stop_lines.hpp"

namespace spotblue {
namespace {

// Pairs of gears of one mesh, beyond which it is not looked how they go along each other.
constexpr std::size_t kMostMeshes = 256;

std::set<OccurrenceId> held_of(const std::vector<SetPart>& set) {
  std::set<OccurrenceId> held;
  for (const SetPart& part : set) {
    if (part.held) {
      held.insert(part.part);
    }
  }
  return held;
}

class Finder {
 public:
  Finder(const DeclaredJob& declared, const Groups& groups, const Turns& turns)
      : declared_(declared),
        groups_(groups),
        set_(find_set_parts(declared, groups)),
        lengths_(declared),
        paths_(declared, groups, lengths_, held_of(set_)),
        standing_(declared, groups, turns),
        lines_(declared, groups, paths_, set_) {
    for (const EndPlayWant& want : declared.job->end_play) {
      const Entry of{"wants", "of", want.line};
      const Entry on{"wants", "on", want.line};
      wants_.push_back({&want, groups_named(want.of, of),
                        want.on ? groups_named(*want.on, on) : std::set<std::size_t>{}});
    }
  }

  BodyPlays find() {
    const List<CentreLine>& lines = declared_.look->seats.centre_lines;
    for (CentreLineId line; line < lines.size(); ++line) {
      std::set<std::size_t> on_line;
      for (const OccurrenceId part : lines[line].occurrences) {
        on_line.insert(groups_.moves_with[part]);
      }
      if (on_line.size() < 2) {
        continue;
      }
      const std::size_t ground = standing_.of(on_line);
      for (const std::size_t group : on_line) {
        if (group != ground) {
          add(line, group, ground);
        }
        add_wanted(line, group, on_line);
      }
    }
    add_meshes();
    add_settings();
    return result();
  }

 private:
  struct Want {
    const EndPlayWant* want = nullptr;
    std::set<std::size_t> of, on;  // groups; `on` is empty for what stands still
  };
  // Of one group, direction and what it plays on: its own where that is not asked for.
  using Key = std::tuple<std::size_t, std::size_t, std::optional<std::size_t>>;

  [[nodiscard]] std::set<std::size_t> groups_named(const std::string& part,
                                                   const Entry& entry) const {
    std::set<std::size_t> named;
    for (const OccurrenceId one : declared_.names.part(part, entry).occurrences) {
      named.insert(groups_.moves_with.at(one));
    }
    return named;
  }

  void add(CentreLineId line, std::size_t of, std::size_t on) {
    if (!tried_.insert({of, lines_.direction_of(line), on}).second) {
      return;
    }
    std::optional<BodyPlay> play = play_of(line, of, on);
    if (!play) {
      return;
    }
    for (const Want& want : wants_) {
      if (want.on.empty() && want.of.contains(of)) {
        play->wants.push_back({want.want->gap, want.want->line});
      }
    }
    play->carrier = carrier_of(*play);
    if (const auto carrier = play->carrier; carrier && play->wants.empty()) {
      if (auto on_carrier = play_of(line, of, *carrier)) {
        play = std::move(on_carrier);
        play->on_stands = false;
      }
    }
    add_face_wants(*play);
    keep(std::nullopt, std::move(*play));
  }

  void add_wanted(CentreLineId line, std::size_t of, const std::set<std::size_t>& on_line) {
    for (const Want& want : wants_) {
      for (const std::size_t on : want.on) {
        if (!want.of.contains(of) || of == on || !on_line.contains(on)) {
          continue;
        }
        const Key key{of, lines_.direction_of(line), on};
        if (const auto known = captured_.find(key); known != captured_.end()) {
          const bool told =
              std::any_of(known->second.wants.begin(), known->second.wants.end(),
                          [&want](const PlayWanted& one) { return one.line == want.want->line; });
          if (!told) {
            known->second.wants.push_back({want.want->gap, want.want->line});
          }
        } else if (auto play = play_of(line, of, on)) {
          play->wants.push_back({want.want->gap, want.want->line});
          play->on_stands = false;
          keep(on, std::move(*play));
        }
      }
    }
  }

  // How two gears that run together go along each other.
  void add_meshes() {
    for (const Mesh& mesh : declared_.job->meshes) {
      const Entry entry{"meshes", "part", mesh.line};
      const auto a = declared_.names.part(mesh.a.part, entry).occurrences;
      const auto b = groups_named(mesh.b.part, entry);
      if (a.size() * b.size() > kMostMeshes) {
        continue;
      }
      const List<CentreLine>& lines = declared_.look->seats.centre_lines;
      for (CentreLineId line; line < lines.size(); ++line) {
        for (const OccurrenceId gear : lines[line].occurrences) {
          if (std::binary_search(a.begin(), a.end(), gear)) {
            add_mesh(line, groups_.moves_with[gear], b);
          }
        }
      }
    }
  }

  void add_mesh(CentreLineId line, std::size_t of, const std::set<std::size_t>& mates) {
    for (const std::size_t on : mates) {
      if (of == on || captured_.contains({of, lines_.direction_of(line), on})) {
        continue;
      }
      if (auto play = play_of(line, of, on)) {
        play->of_mesh = true;
        keep(on, std::move(*play));
      }
    }
  }

  // A want between two faces is one of the group that has the face, not of what it pushes on.
  void add_face_wants(BodyPlay& play) const {
    std::set<const AxialWant*> taken;
    for (const AxialStop* stop : {&play.back.front(), &play.ahead.front()}) {
      const AxialWant* want = stop->seat ? declared_.axial_wants.at(*stop->seat) : nullptr;
      if (want == nullptr || want->kind != AxialWantKind::end_play || !taken.insert(want).second) {
        continue;
      }
      // The same said twice, of the part and of its faces, is one thing to decide.
      const Limits limits{want->least, want->greatest};
      if (std::none_of(play.wants.begin(), play.wants.end(),
                       [&limits](const PlayWanted& known) { return known.limits == limits; })) {
        play.wants.push_back({limits, want->line});
      }
    }
  }

  // The one other that moves and stops the group both ways.
  [[nodiscard]] std::optional<std::size_t> carrier_of(const BodyPlay& play) const {
    const std::size_t ahead = groups_.moves_with[play.ahead.front().b.occurrence];
    const std::size_t back = groups_.moves_with[play.back.front().a.occurrence];
    return ahead == back && ahead != play.on ? std::optional(ahead) : std::nullopt;
  }

  // Nothing where it is not captured, which is noted.
  std::optional<BodyPlay> play_of(CentreLineId line, std::size_t of, std::size_t on) {
    BodyPlay play;
    play.of = of;
    play.on = on;
    play.centre_line = line;
    const BodyPair pair{of, on};
    play.net = lines_.between(lines_.direction_of(line), std::span(&pair, 1));
    if (!play.net) {
      open_.push_back({of, on, line, false, false});
      return std::nullopt;
    }
    work_out_play(declared_, play);
    if (!find_modelled_stops(play)) {
      open_.push_back({of, on, line, play.play.stopped_back, play.play.stopped_ahead});
      return std::nullopt;
    }
    return play;
  }

  // Of one group and direction the play that is closed first stays.
  void keep(std::optional<std::size_t> on, BodyPlay play) {
    const auto total = [](const BodyPlay& of) { return travel_mm(of.back) + travel_mm(of.ahead); };
    const Key key{play.of, lines_.direction_of(play.centre_line), on};
    const auto [known, fresh] = captured_.try_emplace(key, play);
    if (!fresh && total(play) < total(known->second)) {
      known->second = std::move(play);
    }
  }

  void add_settings() {
    for (std::size_t direction = 0; direction < lines_.directions(); ++direction) {
      for (std::size_t number = 0; number < set_.size(); ++number) {
        add_setting(direction, number);
      }
    }
  }

  [[nodiscard]] SettingRoom room_of(std::size_t number, const StopNet& net) const {
    return set_[number].held
               ? setting_room(declared_, groups_, lengths_, paths_, set_,
                              net.lengths[*set_length_of(net, number)], net.stops.front().line)
               : SettingRoom{};
  }

  void add_setting(std::size_t direction, std::size_t number) {
    std::vector<SettingWant> wants;
    std::vector<BodyPair> pairs;
    for (const auto& [key, play] : captured_) {
      if (std::get<1>(key) == direction && set_length_of(*play.net, number)) {
        pairs.push_back({play.of, play.on});
        for (const PlayWanted& want : play.wants) {
          wants.push_back({play.of, play.on, want.limits, want.line});
        }
      }
    }
    const auto net = lines_.between(direction, pairs);
    if (!net || !set_length_of(*net, number)) {
      return;
    }
    settings_.push_back(
        setting_of(declared_, set_[number], number, *net, room_of(number, *net), wants));
    const auto window = widest_window(settings_.back().setting);
    if (!window) {
      return;
    }
    for (auto& [key, play] : captured_) {
      if (std::get<1>(key) == direction && set_length_of(*play.net, number)) {
        play.net = set_within(*play.net, number, *window);
        work_out_play(declared_, play);
      }
    }
  }

  BodyPlays result() {
    BodyPlays plays;
    plays.heaviest = standing_.heaviest();
    plays.settings = std::move(settings_);
    plays.stops = lines_.all_stops();
    std::set<std::pair<std::size_t, std::size_t>> captured;
    for (auto& [key, play] : captured_) {
      captured.insert({play.of, play.on});
      plays.captured.push_back(std::move(play));
    }
    for (const Uncaptured& open : open_) {
      if (!captured.contains({open.of, open.on})) {
        plays.open.push_back(open);
      }
    }
    return plays;
  }

  const DeclaredJob& declared_;
  const Groups& groups_;
  std::vector<SetPart> set_;
  PartLengths lengths_;
  FacePaths paths_;
  Standing standing_;
  StopLines lines_;
  std::vector<Want> wants_;
  std::set<std::tuple<std::size_t, std::size_t, std::size_t>> tried_;  // of, direction, on
  std::map<Key, BodyPlay> captured_;
  std::vector<Uncaptured> open_;
  std::vector<PartSetting> settings_;
};

}  // namespace

BodyPlays find_body_plays(const DeclaredJob& declared, const Groups& groups, const Turns& turns) {
  return Finder(declared, groups, turns).find();
}

}  // namespace spotblue
