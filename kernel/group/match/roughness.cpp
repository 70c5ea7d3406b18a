#include "group/match/roughness.hpp"

#include <algorithm>

namespace spotblue {

double rz_um_of(const DeclaredJob& declared, const FeatureRef& feature) {
  for (const Surface& surface : declared.job->surfaces) {
    const NamedFeature named =
        declared.names.feature(surface.feature, {"surfaces", "feature", surface.line});
    if (std::find(named.refs.begin(), named.refs.end(), feature) != named.refs.end()) {
      return surface.rz_um;
    }
  }
  return declared.job->conditions.rz_um;
}

}  // namespace spotblue
