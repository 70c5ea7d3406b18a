#include "group/axial/body_faces.hpp"

#include <utility>

namespace spotblue {

void add_to(LengthSum& sum, const LengthSum& other, int times) {
  for (const auto& [length, count] : other) {
    sum[length] += times * count;
  }
}

std::vector<PlayTerm> play_terms(const LengthSum& sum) {
  std::vector<PlayTerm> terms;
  for (const auto& [length, count] : sum) {
    if (count != 0) {
      terms.push_back({length, count});
    }
  }
  return terms;
}

std::size_t BodyFaces::add(const StopFace& face) {
  const auto [known, fresh] = number_of.try_emplace(subject_of(face.face), faces.size());
  if (fresh) {
    faces.push_back(face);
    steps_.emplace_back();
    into_.push_back(into_.size());
  }
  return known->second;
}

bool BodyFaces::is_joined(const FacePair& pair) const {
  return find(pair.first) == find(pair.second);
}

void BodyFaces::join(std::size_t first, std::size_t second, const LengthSum& along) {
  LengthSum back;
  add_to(back, along, -1);
  steps_[first].push_back({second, along});
  steps_[second].push_back({first, back});
  into_[find(first)] = find(second);
}

std::size_t BodyFaces::find(std::size_t face) const {
  while (into_[face] != face) {
    face = into_[face];
  }
  return face;
}

std::map<Subject, LengthSum> BodyFaces::places() const {
  std::map<Subject, LengthSum> places{{subject_of(faces[0].face), {}}};
  std::vector<std::size_t> open{0};
  while (!open.empty()) {
    const std::size_t from = open.back();
    open.pop_back();
    for (const Step& step : steps_[from]) {
      LengthSum place = places.at(subject_of(faces[from].face));
      add_to(place, step.along, 1);
      if (places.try_emplace(subject_of(faces[step.to].face), std::move(place)).second) {
        open.push_back(step.to);
      }
    }
  }
  return places;
}

}  // namespace spotblue
