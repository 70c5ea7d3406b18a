#include "spotblue/geometry/open_cascade_version.hpp"

#include <Standard_Version.hxx>

namespace spotblue {

std::string open_cascade_version() { return OCC_VERSION_COMPLETE; }

}  // namespace spotblue
