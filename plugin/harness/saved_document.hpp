#pragma once
// What a document was written to STEP as, read back before it takes a file's place.

#include <cstddef>
#include <filesystem>

#include "spotblue/geometry/model.hpp"

namespace spotblue::plugin {

/// @param sizes  how many the draft was to state at least on faces.
/// @throws Error open_cascade_failed, naming `target`, unless the draft can be read and has the
/// parts,
///         each of the same volume and where it was, of the model that was to be written.
void require_as_meant(const std::filesystem::path& draft, const Model& meant, std::size_t sizes,
                      const std::filesystem::path& target);

}  // namespace spotblue::plugin
