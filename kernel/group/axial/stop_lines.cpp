#include "group/axial/stop_lines.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace spotblue {
namespace {

constexpr double kSameDirection = 1.0 - 1e-6;  // cosine, as far as stops are concerned

AxialStop turned(AxialStop stop) {
  std::swap(stop.a, stop.b);
  return stop;
}

}  // namespace

StopLines::StopLines(const DeclaredJob& declared, const Groups& groups, const FacePaths& paths,
                     std::span<const SetPart> set)
    : declared_(declared), groups_(groups), paths_(paths), set_(set) {
  const Look& look = *declared.look;
  const auto stops =
      find_axial_stops(look.model, look.seats, groups.moves_with, look.settings.seats);
  for (CentreLineId line; line < stops.size(); ++line) {
    add(line, look.seats.centre_lines[line], stops[line]);
  }
  for (OneDirection& one : all_) {
    std::vector<BodyPair> pairs;
    for (const LineStop& stop : one.stops) {
      pairs.push_back({one.number_of.at(groups.moves_with[stop.stop.a.occurrence]),
                       one.number_of.at(groups.moves_with[stop.stop.b.occurrence])});
    }
    one.blocks.emplace(one.number_of.size(), pairs);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
      const std::size_t block = one.blocks->of_pair()[i];
      one.in_block.resize(std::max(one.in_block.size(), block + 1));
      one.in_block[block].push_back(i);
    }
  }
}

void StopLines::add(CentreLineId number, const CentreLine& line,
                    const std::vector<AxialStop>& stops) {
  const Direction along = line.line.along;
  auto found = std::find_if(all_.begin(), all_.end(), [&along](const OneDirection& one) {
    return std::abs(dot(one.along, along)) > kSameDirection;
  });
  if (found == all_.end()) {
    all_.push_back({along, {}, {}, {}, {}, {}});
    found = std::prev(all_.end());
  }
  direction_of_.push_back(static_cast<std::size_t>(found - all_.begin()));
  const bool same_way = dot(found->along, along) > 0.0;
  const Line turned_line{line.line.at, same_way ? along : -along};
  for (const AxialStop& stop : stops) {
    found->stops.push_back({same_way ? stop : turned(stop), number, turned_line});
    for (const FeatureRef& face : {stop.a, stop.b}) {
      found->number_of.try_emplace(groups_.moves_with[face.occurrence], found->number_of.size());
    }
  }
}

std::vector<LineStop> StopLines::all_stops() const {
  std::vector<LineStop> stops;
  for (const OneDirection& one : all_) {
    stops.insert(stops.end(), one.stops.begin(), one.stops.end());
  }
  std::stable_sort(stops.begin(), stops.end(), [](const LineStop& a, const LineStop& b) {
    return a.centre_line < b.centre_line;
  });
  return stops;
}

std::shared_ptr<const StopNet> StopLines::between(std::size_t direction,
                                                  std::span<const BodyPair> pairs) {
  OneDirection& one = all_[direction];
  std::set<std::size_t> all;
  for (const BodyPair& pair : pairs) {
    const auto a = one.number_of.find(pair.a);
    const auto b = one.number_of.find(pair.b);
    if (a != one.number_of.end() && b != one.number_of.end()) {
      const std::vector<std::size_t> way = one.blocks->between(a->second, b->second);
      all.insert(way.begin(), way.end());
    }
  }
  const std::vector<std::size_t> blocks(all.begin(), all.end());
  if (blocks.empty()) {
    return nullptr;
  }
  auto [known, fresh] = one.nets.try_emplace(blocks);
  if (fresh) {
    std::vector<LineStop> stops;
    for (const std::size_t block : blocks) {
      for (const std::size_t stop : one.in_block[block]) {
        stops.push_back(one.stops[stop]);
      }
    }
    known->second = std::make_shared<const StopNet>(
        make_stop_net(declared_, groups_, paths_, set_, std::move(stops)));
  }
  return known->second;
}

}  // namespace spotblue
