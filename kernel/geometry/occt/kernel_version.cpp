#include "spotblue/geometry/kernel_version.hpp"

#include <Standard_Version.hxx>

namespace spotblue {

std::string kernel_version() { return OCC_VERSION_COMPLETE; }

}  // namespace spotblue
