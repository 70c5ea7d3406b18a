#pragma once
// The faces of one body that stop others, and how each comes to stand where it does from another.

#include <cstddef>
#include <map>
#include <vector>

#include "group/match/pair_book.hpp"
#include "spotblue/geometry/vector.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

/// A sum of a net's lengths: how often each counts, by its number.
using LengthSum = std::map<std::size_t, int>;
void add_to(LengthSum& sum, const LengthSum& other, int times);
/// What does not cancel.
[[nodiscard]] std::vector<PlayTerm> play_terms(const LengthSum& sum);

/// A face of a body that stops something, and the line on which that was found.
struct StopFace {
  FeatureRef face;
  const Line* line = nullptr;
};

/// Two faces of a body that would be dimensioned from each other, and how soon.
struct FacePair {
  std::size_t first = 0, second = 0;  ///< of the body's faces
  double play_mm = 0.0;               ///< that the tightest loop over the two leaves, as modelled
  bool of_two_parts = false;
};

/// The faces of one body, and the steps that lead from one to another, never two ways.
class BodyFaces {
 public:
  std::vector<StopFace> faces;
  std::map<Subject, std::size_t> number_of;
  std::vector<FacePair> pairs;  ///< the one that is dimensioned first before the others

  /// Its number, the old one where it is there.
  std::size_t add(const StopFace& face);
  [[nodiscard]] bool is_joined(const FacePair& pair) const;
  /// @pre the two are not joined
  void join(std::size_t first, std::size_t second, const LengthSum& along);
  /// From the first face.
  /// @pre all are joined
  [[nodiscard]] std::map<Subject, LengthSum> places() const;

 private:
  struct Step {
    std::size_t to = 0;
    LengthSum along;
  };
  [[nodiscard]] std::size_t find(std::size_t face) const;

  std::vector<std::vector<Step>> steps_;  // by face
  std::vector<std::size_t> into_;         // one of each that hang together stands for them
};

}  // namespace spotblue
