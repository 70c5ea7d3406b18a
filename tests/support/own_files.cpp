// own_files MODEL.step OUT.xbf|OUT.brep: the same assembly as Open CASCADE's own file.

#include <cstdio>
#include <exception>
#include <filesystem>

#include "support/shape_out.hpp"

int main(int argc, char** argv) {
  try {
    const std::filesystem::path step = argc == 3 ? argv[1] : "";
    const std::filesystem::path out = argc == 3 ? argv[2] : "";
    if (out.extension() == ".xbf") {
      spotblue::test::step_to_xbf(step, out);
    } else {
      spotblue::test::step_to_brep(step, out, spotblue::test::BrepKind::text);
    }
    return 0;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "own_files: %s\n", error.what());
    return 2;
  }
}
