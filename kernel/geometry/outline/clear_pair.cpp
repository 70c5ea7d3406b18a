#include "geometry/outline/clear_pair.hpp"

#include "geometry/outline/hull_proof.hpp"
#include "geometry/outline/plane_proof.hpp"
#include "geometry/outline/profile_proof.hpp"

namespace spotblue::proof {

bool proved_clear(const Pair& pair) {
  if (!pair.a.solid || !pair.b.solid) {
    return true;
  }
  return boxes_apart(pair) || planes_apart(pair) || profiles_apart(pair) || hull_apart(pair);
}

}  // namespace spotblue::proof
