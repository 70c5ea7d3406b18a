#include <dlfcn.h>

#include <filesystem>
#include <string>
#include <string_view>

#include "command/beside.hpp"
#include "command/module.hpp"
#include "command/verbs.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/version.hpp"

namespace spotblue::command {
namespace {

constexpr const char* kLibrary = "spotblue_verbs.so";
constexpr const char* kCure = "build the whole of spotblue, or install it again";

[[noreturn]] void refuse(const std::filesystem::path& library, const std::string& what) {
  throw Error(ErrorCode::file_access, {shown_name(library), ""}, what, kCure);
}

template <class F>
F* function_of(void* library, const char* name, const std::filesystem::path& path) {
  void* const found = ::dlsym(library, name);
  if (found == nullptr) {
    refuse(path, std::string("has no ") + name);
  }
  return reinterpret_cast<F*>(found);
}

}  // namespace

ExitCode run_in_module(const Given& given) {
  const std::filesystem::path path =
      folder_beside_program({"../lib/spotblue", SPOTBLUE_LIBRARIES_FROM_PROGRAM}, kLibrary, kCure) /
      kLibrary;
  void* const library = ::dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL);
  if (library == nullptr) {
    refuse(path, std::string("cannot be loaded: ") + ::dlerror());
  }
  const std::string_view version =
      function_of<decltype(spotblue_verbs_version)>(library, "spotblue_verbs_version", path)();
  if (version != kVersion) {
    refuse(path, "is of version " + std::string(version) + ", the program of " + kVersion);
  }
  return static_cast<ExitCode>(
      function_of<decltype(spotblue_verbs_run)>(library, "spotblue_verbs_run", path)(given));
}

}  // namespace spotblue::command
